package org.stillroom.core.quantity;

/** Mass of a substance per mass of the whole, 0 to 1. */
public record MassFraction(double fraction) implements Share {
    public MassFraction {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException(
                    "a mass fraction lies from 0 to 1, not " + QuantityWords.plain(fraction));
        }
    }
}
