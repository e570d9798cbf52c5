package org.stillroom.core.sugar;

/**
 * Restates sugars on the invert-sugar basis in which spirit-drink law sets sweetness.
 *
 * <p>One sucrose and one water give two hexoses, so that 1 g of sucrose counts as 1.0526 g of invert sugar. Reducing sugars count
 * as they are dissolved. Source: standard atomic weights.
 */
public final class InvertSugar {
    /** Molar mass of glucose and of fructose, g/mol. */
    private static final double HEXOSE = 180.156;
    /** Molar mass of sucrose, g/mol. */
    private static final double SUCROSE = 342.297;

    private InvertSugar() {}

    /** Returns the grams of invert sugar that one gram of the sugar counts as. */
    public static double per(Sugar sugar) {
        return switch (sugar) {
            case SUCROSE -> 2.0 * HEXOSE / SUCROSE;
            case GLUCOSE, FRUCTOSE, MALTOSE, LACTOSE -> 1.0;
        };
    }
}
