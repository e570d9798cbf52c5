package org.stillroom.core.recipe;

/** The kinds of measure. */
public enum MeasureKind {
    SCALE("scale"),
    CYLINDER("cylinder"),
    SYRINGE("syringe"),
    JIGGER("jigger"),
    SPOON("spoon"),
    CUP("cup"),
    DROPPER("dropper");

    private final String label;

    MeasureKind(String label) {
        this.label = label;
    }

    /** Returns the name as people write it in a recipe file. */
    public String label() {
        return label;
    }
}
