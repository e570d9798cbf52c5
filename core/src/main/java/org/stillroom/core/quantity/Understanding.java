package org.stillroom.core.quantity;

import java.util.List;

/** What was made of a text that a person typed for a quantity. */
public sealed interface Understanding<Q> {
    /**
     * The text has one meaning.
     *
     * @param typed the text and what it was understood as
     * @param assumed what was taken for granted, one sentence each, to be shown beside the value; mostly empty
     */
    record Understood<Q>(Typed<Q> typed, List<String> assumed) implements Understanding<Q> {
        public Understood {
            assumed = List.copyOf(assumed);
        }

        public Understood(Typed<Q> typed) {
            this(typed, List.of());
        }
    }

    /**
     * The text has several meanings, and none is picked for the person.
     *
     * @param text as typed
     * @param question what is asked, one sentence
     * @param choices texts that would each be understood, to choose from
     */
    record Ambiguous<Q>(String text, String question, List<String> choices) implements Understanding<Q> {
        public Ambiguous {
            choices = List.copyOf(choices);
        }
    }

    /**
     * The text is no such quantity, or one that cannot be.
     *
     * @param text as typed
     * @param reason what is wrong and what to write instead, one sentence
     */
    record Refused<Q>(String text, String reason) implements Understanding<Q> {}
}
