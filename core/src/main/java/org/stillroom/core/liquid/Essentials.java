package org.stillroom.core.liquid;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Temperature;

/**
 * The few figures at 20 °C that planning asks for a hundred thousand times.
 *
 * @param millilitres volume at 20 °C
 * @param density kg/m³
 * @param strength % vol
 * @param sugar g/L, sugars by mass as dissolved
 * @param acidity g/L, as citric acid
 */
public record Essentials(double millilitres, double density, double strength, double sugar, double acidity) {
    private static final double[] IS_SUGAR = new double[Substance.COUNT];
    private static final double[] AS_CITRIC = new double[Substance.COUNT];
    private static final double DENSITY_OF_ETHANOL =
            EthanolWater.at(Temperature.TWENTY_CELSIUS).ethanol() / 1000.0;

    static {
        for (Substance substance : Substance.values()) {
            IS_SUGAR[substance.ordinal()] = substance.sugar() == null ? 0.0 : 1.0;
            AS_CITRIC[substance.ordinal()] =
                    substance.acid() == null ? 0.0 : substance.acid().asCitric();
        }
    }

    /**
     * Returns the essentials of a liquid that is not empty.
     *
     * @param grams in the order of {@link Substance}
     */
    public static Essentials of(double[] grams) {
        double volume = VolumeModel.atTwenty().millilitres(grams);
        double mass = 0.0;
        double sugar = 0.0;
        double acidity = 0.0;
        for (int i = 0; i < grams.length; i++) {
            mass += grams[i];
            sugar += grams[i] * IS_SUGAR[i];
            acidity += grams[i] * AS_CITRIC[i];
        }
        if (!(volume > 0.0)) {
            throw new IllegalArgumentException("there is nothing in this liquid");
        }
        double strength = 100.0 * grams[Substance.ETHANOL.ordinal()] / (DENSITY_OF_ETHANOL * volume);
        return new Essentials(
                volume, 1000.0 * mass / volume, strength, 1000.0 * sugar / volume, 1000.0 * acidity / volume);
    }
}
