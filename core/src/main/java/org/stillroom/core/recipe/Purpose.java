package org.stillroom.core.recipe;

/** What a recipe makes: a drink as it is, or something that is dosed by the drop into drinks. */
public enum Purpose {
    DRINK("drink"),
    /** Not for drinking as it is: what is asked of finished drinks is asked of the drink that is made with it. */
    ESSENCE("essence");

    private final String label;

    Purpose(String label) {
        this.label = label;
    }

    /** Returns what a recipe says to "makes". */
    public String label() {
        return label;
    }
}
