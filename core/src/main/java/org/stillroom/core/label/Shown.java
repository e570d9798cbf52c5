package org.stillroom.core.label;

import java.util.List;

/**
 * What a name asks of what goes in, with what the lines of a recipe show of it.
 *
 * @param what it asks for, or goes without
 * @param outcome what the lines show
 * @param why they rule it out and what gets there, in a sentence; empty where they do not
 * @param by the lines that rule it out; empty where nothing in it is what is asked for
 * @param isFar whether nothing at all of what is asked for is in it
 */
public record Shown(String what, Outcome outcome, String why, List<String> by, boolean isFar) {
    /** What lines can show. */
    public enum Outcome {
        /** What is recognised in it contradicts it. */
        RULED_OUT("ruled out"),
        /** Recognised lines show it. The name can ask more beside it. */
        MET("met"),
        /** Something in it is not recognised, or nothing of a recipe shows it. */
        NOT_KNOWN("not known");

        private final String label;

        Outcome(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public Shown {
        by = List.copyOf(by);
    }

    boolean isRuledOut() {
        return outcome == Outcome.RULED_OUT;
    }
}
