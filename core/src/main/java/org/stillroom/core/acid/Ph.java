package org.stillroom.core.acid;

import java.util.EnumMap;
import java.util.Map;

/**
 * The pH of acids of the kitchen in water, by the balance of charges.
 *
 * <p>[H⁺] + [base] = [OH⁻] + Σ c·(charge of the acid at that [H⁺]), solved by halving. Concentrations stand for activities, and
 * ethanol makes acids weaker: both raise the figure by a few tenths, which the caller says. Source of the constants:
 * CRC Handbook of Chemistry and Physics, Dissociation constants of organic acids and bases, 25 °C, from memory.
 */
public final class Ph {
    private static final Map<Acid, double[]> DISSOCIATION = new EnumMap<>(Map.of(
            Acid.CITRIC, new double[] {3.13, 4.76, 6.40},
            Acid.MALIC, new double[] {3.40, 5.11},
            Acid.TARTARIC, new double[] {2.98, 4.34},
            Acid.LACTIC, new double[] {3.86},
            Acid.ACETIC, new double[] {4.76},
            Acid.PHOSPHORIC, new double[] {2.16, 7.21},
            Acid.ASCORBIC, new double[] {4.10}));

    /** Ion product of water at 25 °C, mol²/L². */
    private static final double WATER = 1e-14;

    private static final int MOST_STEPS = 60;

    private Ph() {}

    /**
     * Returns the pH.
     *
     * @param acids mol/L of each
     * @param base mol/L of metal ions that came with hydrogencarbonate or another weak base, as in hard water
     * @param weakened by how much each pK lies above its value in water
     */
    public static double of(Map<Acid, Double> acids, double base, double weakened) {
        double low = 0.0;
        double high = 14.0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double middle = 0.5 * (low + high);
            boolean tooSour = excess(acids, base, weakened, middle) > 0.0;
            low = tooSour ? middle : low;
            high = tooSour ? high : middle;
        }
        return 0.5 * (low + high);
    }

    /** Positive charges less negative ones; it falls as the pH rises. */
    private static double excess(Map<Acid, Double> acids, double base, double weakened, double ph) {
        double hydrogen = Math.pow(10.0, -ph);
        double excess = hydrogen + base - WATER / hydrogen;
        for (Map.Entry<Acid, Double> acid : acids.entrySet()) {
            excess -= acid.getValue() * charge(acid.getKey(), hydrogen, weakened);
        }
        return excess;
    }

    /** Mean number of protons that a molecule has given away. */
    private static double charge(Acid acid, double hydrogen, double weakened) {
        double species = 1.0;
        double all = 1.0;
        double given = 0.0;
        int protons = 0;
        for (double constant : DISSOCIATION.getOrDefault(acid, new double[0])) {
            protons++;
            species *= Math.pow(10.0, -constant - weakened) / hydrogen;
            all += species;
            given += protons * species;
        }
        return given / all;
    }
}
