package org.stillroom.core.safety;

import org.stillroom.core.quantity.QuantityWords;

/**
 * Least and most of an amount, in the unit of whoever holds it.
 *
 * @param least zero or more
 * @param most not below least
 */
public record Range(double least, double most) {
    static final Range NOTHING = new Range(0.0, 0.0);

    public Range {
        if (!(least >= 0.0 && most >= least && most < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a range runs upwards from zero, not from " + least + " to " + most);
        }
    }

    /** Returns the middle, which stands for typical where no analysis does. */
    public double middle() {
        return 0.5 * (least + most);
    }

    Range plus(Range other) {
        return new Range(least + other.least, most + other.most);
    }

    public Range times(double factor) {
        return new Range(least * factor, most * factor);
    }

    /** Returns least times least to most times most. */
    Range times(Range other) {
        return new Range(least * other.least, most * other.most);
    }

    /** Returns it in three figures: "1.20 to 4.50", or one of them where they are the same. */
    public String told() {
        String low = figures(least);
        String high = figures(most);
        return low.equals(high) ? high : low + " to " + high;
    }

    /** Returns a number in about three figures. */
    public static String figures(double value) {
        return QuantityWords.figures(value);
    }
}
