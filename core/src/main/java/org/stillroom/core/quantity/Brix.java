package org.stillroom.core.quantity;

/** Degrees Brix: sucrose as a percentage of the mass of a sugar-and-water solution, 0 to 100. */
public record Brix(double degrees) {
    public Brix {
        if (!(degrees >= 0 && degrees <= 100)) {
            throw new IllegalArgumentException("degrees Brix lie from 0 to 100, not " + QuantityWords.plain(degrees));
        }
    }
}
