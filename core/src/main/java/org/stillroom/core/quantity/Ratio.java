package org.stillroom.core.quantity;

/**
 * A ratio as written, "1:5"; of what, mass or volume, is said where it is used.
 *
 * @param left the number before the colon, above zero
 * @param right the number after it, above zero
 */
public record Ratio(double left, double right) {
    public Ratio {
        if (!(left > 0 && left < 1e9 && right > 0 && right < 1e9)) {
            throw new IllegalArgumentException("both sides of a ratio lie above 0 and below 1e9, not "
                    + QuantityWords.plain(left) + ":" + QuantityWords.plain(right));
        }
    }

    /** Returns how many of the left there are to one of the right. */
    public double leftPerRight() {
        return left / right;
    }
}
