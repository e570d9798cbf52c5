package org.stillroom.core.liquid;

/**
 * Food energy by the conversion factors of the law.
 *
 * <p>Source: Regulation (EU) No 1169/2011, Annex XIV: carbohydrate 17 kJ/g and 4 kcal/g, polyols 10 and 2.4, protein 17 and 4,
 * fat 37 and 9, ethanol 29 and 7, organic acid 13 and 3. Other solids count as carbohydrate, aroma oil as fat: neither has a
 * factor, and both are on the high side so. Phosphoric acid and salt give none.
 */
final class FoodEnergy {
    private FoodEnergy() {}

    static double kilojoules(double[] grams) {
        double sum = 0.0;
        for (Substance substance : Substance.values()) {
            sum += grams[substance.ordinal()] * kilojoulesPerGram(substance);
        }
        return sum;
    }

    static double kilocalories(double[] grams) {
        double sum = 0.0;
        for (Substance substance : Substance.values()) {
            sum += grams[substance.ordinal()] * kilocaloriesPerGram(substance);
        }
        return sum;
    }

    private static double kilojoulesPerGram(Substance substance) {
        return switch (substance) {
            case ETHANOL -> 29.0;
            case SUCROSE, GLUCOSE, FRUCTOSE, MALTOSE, LACTOSE, OTHER_SOLIDS, PROTEIN -> 17.0;
            case GLYCEROL -> 10.0;
            case CITRIC, MALIC, TARTARIC, LACTIC, ACETIC, ASCORBIC -> 13.0;
            case FAT, OIL -> 37.0;
            case WATER, PHOSPHORIC, SALT -> 0.0;
        };
    }

    private static double kilocaloriesPerGram(Substance substance) {
        return switch (substance) {
            case ETHANOL -> 7.0;
            case SUCROSE, GLUCOSE, FRUCTOSE, MALTOSE, LACTOSE, OTHER_SOLIDS, PROTEIN -> 4.0;
            case GLYCEROL -> 2.4;
            case CITRIC, MALIC, TARTARIC, LACTIC, ACETIC, ASCORBIC -> 3.0;
            case FAT, OIL -> 9.0;
            case WATER, PHOSPHORIC, SALT -> 0.0;
        };
    }
}
