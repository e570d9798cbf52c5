package org.stillroom.core.quantity;

/** Figures without the last digits that binary fractions leave, so that those decide nothing at a limit. */
public final class Rounded {
    private static final double NINTH = 1e9;

    private Rounded() {}

    /** Returns the value to the ninth decimal; what is infinite stays so. */
    public static double toNinth(double value) {
        return Double.isInfinite(value) ? value : Math.rint(value * NINTH) / NINTH;
    }
}
