package org.stillroom.core.liquid;

/**
 * A figure and how far it may be off.
 *
 * @param value in the unit of its {@link Figure}
 * @param doubt half-width of the central 90 % in the same unit, zero where the figure follows from the grams alone, infinite where
 *     nothing tells how far it may be off; it covers the formulas, not the weighing
 */
public record Estimate(double value, double doubt) {
    /** Returns a figure of which nothing tells how far it may be off. */
    public static Estimate inDoubtNotTold(double value) {
        return new Estimate(value, Double.POSITIVE_INFINITY);
    }

    /** Returns whether it is known how far it may be off. */
    public boolean tellsDoubt() {
        return doubt < Double.POSITIVE_INFINITY;
    }
}
