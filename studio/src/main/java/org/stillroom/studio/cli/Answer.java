package org.stillroom.studio.cli;

import org.stillroom.studio.answer.Fields;

/** What a command answers: the same figures for a script and for a person. */
public interface Answer {
    /** Returns the figures for scripts. */
    Fields fields();

    /** Prints the figures for a person. */
    void print(Page page);

    /** Stays, after the answer was shown, until there is nothing more to do; most answers have nothing. */
    default void stay() {}

    /** Returns how the run ends: done, unless the answer is that it cannot be reached or must not be. */
    default Exit exit() {
        return Exit.DONE;
    }
}
