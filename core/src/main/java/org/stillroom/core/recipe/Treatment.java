package org.stillroom.core.recipe;

/** What is done so that a drink keeps. */
public enum Treatment {
    NONE("no"),
    /** Heated in closed bottles, or filled hot, so that yeasts, moulds and most bacteria are dead; spores are not. */
    PASTEURISED("yes");

    private final String label;

    Treatment(String label) {
        this.label = label;
    }

    /** Returns what a recipe says to "pasteurised". */
    public String label() {
        return label;
    }
}
