package org.stillroom.core.quantity;

/**
 * A wanted value: exact when both ends are the same, else anything from low to high ("27..29 %").
 *
 * @param low least value wanted, in the unit of the quantity that it belongs to
 * @param high greatest value wanted, same unit
 */
public record Span(double low, double high) {
    public Span {
        if (!(low <= high && low >= 0 && high < 1e12)) {
            throw new IllegalArgumentException("a range runs from low to high, not from " + QuantityWords.plain(low)
                    + " to " + QuantityWords.plain(high));
        }
    }

    public static Span exactly(double value) {
        return new Span(value, value);
    }

    public boolean isExact() {
        return low == high;
    }
}
