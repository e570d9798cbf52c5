package org.stillroom.core.liquid;

import org.stillroom.core.alcohol.EthanolHeatCapacity;

/**
 * Heat that warms a liquid by one degree near 20 °C.
 *
 * <p>Ethanol with its water from Melinder's tables; solutes add what they do dry: sugars and other solids 1.24 J/(g·K) as
 * sucrose, glycerol 2.4, acids 1.3, fat and oil 2.0, all from memory. Doubt about 3 % unsweetened, 6 % with solutes.
 */
public final class HeatCapacity {
    private HeatCapacity() {}

    /** Returns the heat capacity of all of it, J/K. */
    public static double joulesPerKelvin(Contents contents) {
        double ethanol = contents.grams(Substance.ETHANOL);
        double wet = ethanol + contents.grams(Substance.WATER);
        double mixed = wet > 0.0 ? wet * EthanolHeatCapacity.perGram(ethanol / wet) : 0.0;
        return mixed + ofSolutes(contents);
    }

    /** Returns the heat capacity of its ethanol and its water apart, and of the solutes, J/K. */
    static double apart(Contents contents) {
        return contents.grams(Substance.ETHANOL) * EthanolHeatCapacity.perGram(1.0)
                + contents.grams(Substance.WATER) * EthanolHeatCapacity.perGram(0.0)
                + ofSolutes(contents);
    }

    private static double ofSolutes(Contents contents) {
        double sum = 0.0;
        for (Substance substance : Substance.values()) {
            sum += contents.grams(substance) * perGram(substance);
        }
        return sum;
    }

    private static double perGram(Substance substance) {
        return switch (substance) {
            case ETHANOL, WATER -> 0.0;
            case SUCROSE, GLUCOSE, FRUCTOSE, MALTOSE, LACTOSE, OTHER_SOLIDS, PROTEIN -> 1.24;
            case GLYCEROL -> 2.4;
            case CITRIC, MALIC, TARTARIC, LACTIC, ACETIC, PHOSPHORIC, ASCORBIC -> 1.3;
            case SALT -> 0.86;
            case FAT, OIL -> 2.0;
        };
    }
}
