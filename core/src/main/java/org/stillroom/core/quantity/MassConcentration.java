package org.stillroom.core.quantity;

/** Mass of a substance per volume of the finished liquid, g/L; the volume is at 20 °C unless another is named. */
public record MassConcentration(double gramsPerLitre) implements Share {
    public MassConcentration {
        if (!(gramsPerLitre >= 0 && gramsPerLitre < 30_000)) {
            throw new IllegalArgumentException("a concentration lies from 0 to below 30 000 g/L, not "
                    + QuantityWords.plain(gramsPerLitre) + " g/L");
        }
    }
}
