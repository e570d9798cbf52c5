package org.stillroom.core.quantity;

/** Mass per volume, kg/m³ (the same number as g/L), of the mass in vacuum. */
public record Density(double kilogramsPerCubicMetre) {
    public Density {
        if (!(kilogramsPerCubicMetre > 0 && kilogramsPerCubicMetre < 30_000)) {
            throw new IllegalArgumentException("a density lies above 0 and below 30 000 kg/m³, not "
                    + QuantityWords.plain(kilogramsPerCubicMetre) + " kg/m³");
        }
    }
}
