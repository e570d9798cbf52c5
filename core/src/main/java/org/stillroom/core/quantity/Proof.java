package org.stillroom.core.quantity;

/** United States proof: twice the % vol with both volumes at 60 °F, 0 to 200. */
public record Proof(double degrees) implements Strength {
    public Proof {
        if (!(degrees >= 0 && degrees <= 200)) {
            throw new IllegalArgumentException("a US proof lies from 0 to 200, not " + QuantityWords.plain(degrees));
        }
    }
}
