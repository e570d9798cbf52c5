package org.stillroom.core.quantity;

/** Ethanol as a percentage of the mass of the whole liquid, 0 to 100. */
public record AlcoholByMass(double percent) implements Strength {
    public AlcoholByMass {
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException(
                    "a strength by mass lies from 0 to 100 % mass, not " + QuantityWords.plain(percent) + " % mass");
        }
    }
}
