package org.stillroom.core.quantity;

/** Refractive index at 589.3 nm against air, 1 to 2. */
public record RefractiveIndex(double value) {
    public RefractiveIndex {
        if (!(value >= 1 && value <= 2)) {
            throw new IllegalArgumentException(
                    "a refractive index lies from 1 to 2, not " + QuantityWords.plain(value));
        }
    }
}
