package org.stillroom.core.liquid;

/**
 * A figure whose doubt is not alike to both sides, because it cannot be less than nothing or more than all.
 *
 * @param value best estimate
 * @param low P5
 * @param high P95; infinite where nothing bounds it
 */
public record Bounded(double value, double low, double high) {
    public Bounded {
        if (!(low <= value && value <= high && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(value + " does not lie between " + low + " and " + high);
        }
    }

    /** Returns a figure within bounds that it cannot leave, such as from nothing to all. */
    public static Bounded within(Estimate estimate, double least, double most) {
        return new Bounded(
                estimate.value(),
                Math.max(least, estimate.value() - estimate.doubt()),
                Math.min(most, estimate.value() + estimate.doubt()));
    }

    /** Returns the figure in another unit, of which there are so many in one of this. */
    public Bounded times(double factor) {
        return new Bounded(factor * value, factor * low, factor * high);
    }

    /** Returns whether the doubt is alike to both sides, so that its half-width says all. */
    public boolean isEven() {
        return Math.abs((high - value) - (value - low)) <= 1e-9 * Math.abs(value);
    }

    /** Returns the value with half the width of the central 90 %, which may be infinite. */
    public Estimate toEstimate() {
        return new Estimate(value, 0.5 * (high - low));
    }
}
