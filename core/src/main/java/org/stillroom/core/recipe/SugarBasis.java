package org.stillroom.core.recipe;

/** On what basis sugar per litre is counted. */
public enum SugarBasis {
    /** All sugars by mass, as they are dissolved. */
    AS_DISSOLVED("as dissolved"),
    /** Restated as invert sugar, the basis of spirit-drink law. */
    AS_INVERT("as invert"),
    /** Restated as sucrose. */
    AS_SUCROSE("as sucrose");

    private final String label;

    SugarBasis(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
