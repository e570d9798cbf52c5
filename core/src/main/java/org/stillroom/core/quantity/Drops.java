package org.stillroom.core.quantity;

/** A count of drops; how much a drop holds depends on the dropper and the liquid. */
public record Drops(double count) implements Amount {
    public Drops {
        if (!(count >= 0 && count < 1e9)) {
            throw new IllegalArgumentException(
                    "a count of drops lies from 0 to below 1e9, not " + QuantityWords.plain(count));
        }
    }
}
