package org.stillroom.core.quantity;

/** A mass in grams, zero or more, as a balance in vacuum would show it. */
public record Mass(double grams) implements Amount {
    /** The avoirdupois ounce, exactly. Source: international yard and pound agreement, 1959. */
    public static final double GRAMS_PER_OUNCE = 28.349523125;

    public Mass {
        if (!(grams >= 0 && grams < 1e12)) {
            throw new IllegalArgumentException(
                    "a mass lies from 0 to below 1e12 g, not " + QuantityWords.plain(grams) + " g");
        }
    }
}
