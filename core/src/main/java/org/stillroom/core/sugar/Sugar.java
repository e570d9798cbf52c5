package org.stillroom.core.sugar;

/**
 * The sugars that are told apart; invert sugar is half glucose and half fructose by mass.
 *
 * <p>One molecule of a two-ring sugar and one of water give two of a one-ring sugar, so a gram of sucrose, maltose or lactose
 * counts as 1.0526 g of invert sugar. Source: standard atomic weights.
 */
public enum Sugar {
    SUCROSE("sucrose", Sugar.INVERT_PER_SUCROSE),
    GLUCOSE("glucose", 1.0),
    FRUCTOSE("fructose", 1.0),
    MALTOSE("maltose", Sugar.INVERT_PER_SUCROSE),
    LACTOSE("lactose", Sugar.INVERT_PER_SUCROSE);

    /** Invert sugar from unit mass of sucrose, g/g: two of 180.156 g/mol from one of 342.297 g/mol. */
    public static final double INVERT_PER_SUCROSE = 2 * 180.156 / 342.297;

    private final String label;
    private final double asInvert;

    Sugar(String label, double asInvert) {
        this.label = label;
        this.asInvert = asInvert;
    }

    public String label() {
        return label;
    }

    /** Returns the grams of invert sugar that one gram counts as. */
    public double asInvert() {
        return asInvert;
    }

    /** Returns the grams of sucrose that one gram counts as. */
    public double asSucrose() {
        return asInvert / INVERT_PER_SUCROSE;
    }
}
