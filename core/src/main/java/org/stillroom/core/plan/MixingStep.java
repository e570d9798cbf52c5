package org.stillroom.core.plan;

import java.util.List;

/**
 * One thing to do when making.
 *
 * @param what what to do, one or two sentences
 * @param why the reason, one sentence, or empty
 * @param lines indices of the plan's lines that go in now
 * @param act what kind of thing it is
 */
public record MixingStep(String what, String why, List<Integer> lines, Act act) {
    public MixingStep {
        lines = List.copyOf(lines);
    }

    /** The kinds of things to do. */
    public enum Act {
        /** The empty vessel is weighed. */
        WEIGH_VESSEL,
        /** The lines go into the vessel one after the other. */
        POUR,
        /** The lines are stirred together in a second jar, cool there where they were warm, and are then poured in. */
        SECOND_JAR,
        /** Something waits until it has the room's temperature. */
        COOL,
        /** The vessel is filled up to its mark with the lines. */
        MAKE_UP,
        /** It rests for days. */
        REST,
        /** What the maker wrote. */
        OWN,
        /** The filled bottles are heated, or were filled hot. */
        PASTEURISE;

        /** Returns whether it comes after all is mixed and measured. */
        public boolean isAfterMixing() {
            return this == REST || this == OWN || this == PASTEURISE;
        }
    }
}
