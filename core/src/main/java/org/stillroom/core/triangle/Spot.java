package org.stillroom.core.triangle;

/**
 * A place in the mixing triangle: shares by mass of ethanol and sugar in ethanol, sugar and water together; the rest is water.
 *
 * @param ethanol g/g, 0 to 1
 * @param sugar all sugars as dissolved, g/g, 0 to 1
 */
public record Spot(double ethanol, double sugar) {
    public Spot {
        if (!(ethanol >= 0.0 && sugar >= 0.0 && ethanol + sugar <= 1.0 + 1e-12)) {
            throw new IllegalArgumentException(
                    "shares of ethanol and sugar are zero or more and together at most 1, not " + ethanol + " and "
                            + sugar);
        }
    }

    /** Returns the share of water, g/g. */
    public double water() {
        return Math.max(0.0, 1.0 - ethanol - sugar);
    }
}
