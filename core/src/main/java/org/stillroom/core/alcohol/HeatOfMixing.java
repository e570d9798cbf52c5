package org.stillroom.core.alcohol;

import org.stillroom.core.quantity.Temperature;

/**
 * Heat that ethanol and water give off when they are mixed.
 *
 * <p>Hᴱ = x(1 − x) Σ aₘ xᵐ J/mol with x the mole fraction of ethanol, m = 0, 0.5, 1.5, 2.5, 4.5 and aₘ = b + c·T + d·T², T in
 * kelvin. Range 298.15 to 383.15 K; at 20 °C it is 5 K below its range. Doubt: 5 % at the minimum near x = 0.15, 12 %
 * elsewhere. Not to be differentiated for heat capacity. Source: Larkin, J. Chem. Thermodynamics 7 (1975), constants from
 * memory and one transcription.
 */
public final class HeatOfMixing {
    /** Molar mass of ethanol, g/mol. Source: standard atomic weights. */
    static final double GRAMS_PER_MOLE_ETHANOL = 46.06844;
    /** Molar mass of water, g/mol. */
    static final double GRAMS_PER_MOLE_WATER = 18.01528;
    /** Half-width of the central 90 %, part of the heat. */
    public static final double DOUBT = 0.12;

    private static final double[] M = {0.0, 0.5, 1.5, 2.5, 4.5};
    private static final double[][] BCD = {
        {-363868.0, 1838.29, -2.32763},
        {925982.0, -4835.86, 6.37228},
        {-1404894.0, 7516.61, -10.1128},
        {1091318.0, -5894.98, 7.98868},
        {-279986.0, 1505.57, -2.03127}
    };

    private HeatOfMixing() {}

    /**
     * Returns the excess enthalpy of so much ethanol with so much water, J: negative, the heat given off since they were
     * apart. What mixing two spirits gives off is the sum of theirs less that of the mixture.
     */
    public static double excessJoules(EthanolAndWater grams, Temperature temperature) {
        double ethanol = grams.ethanol() / GRAMS_PER_MOLE_ETHANOL;
        double water = grams.water() / GRAMS_PER_MOLE_WATER;
        double moles = ethanol + water;
        return moles > 0.0 ? moles * excessPerMole(ethanol / moles, temperature.kelvin()) : 0.0;
    }

    private static double excessPerMole(double x, double kelvin) {
        double sum = 0.0;
        for (int i = 0; i < M.length; i++) {
            sum += (BCD[i][0] + kelvin * (BCD[i][1] + kelvin * BCD[i][2])) * Math.pow(x, M[i]);
        }
        return x * (1.0 - x) * sum;
    }

    /**
     * Ethanol and water, grams of each.
     *
     * @param ethanol zero or more
     * @param water zero or more
     */
    public record EthanolAndWater(double ethanol, double water) {
        public EthanolAndWater {
            if (!(ethanol >= 0.0 && water >= 0.0)) {
                throw new IllegalArgumentException(
                        "grams are zero or more, not " + ethanol + " of ethanol and " + water + " of water");
            }
        }
    }
}
