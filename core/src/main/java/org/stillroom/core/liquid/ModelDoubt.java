package org.stillroom.core.liquid;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Temperature;

/**
 * How far the volume model may be wrong for a liquid: half-widths of the central 90 %.
 *
 * <p>It is common to a whole batch and to everything made from the same ingredients, not noise from line to line. The figures
 * are a judgement from comparing models that fit the same limits, not a measurement: see docs/how-it-works/doubt.md. The
 * model probably reads strength slightly high; a measured density settles it.
 *
 * @param strengthHalfWidth % vol, of a strength worked out from grams
 * @param relativeVolumeHalfWidth part of the volume
 * @param known false where the model has nothing to hold on to and the doubt is only a least one
 */
public record ModelDoubt(double strengthHalfWidth, double relativeVolumeHalfWidth, boolean known) {
    /** Strengths of the rows of the table, % vol. */
    private static final double[] STRENGTH = {0.0, 25.0, 30.0, 40.0, 50.0};
    /** Dissolved solids of its columns, g/L. */
    private static final double[] SOLIDS = {0.0, 100.0, 200.0, 300.0, 500.0};
    /** Half-width of strength, % vol. */
    private static final double[][] TABLE = {
        {0.02, 0.05, 0.05, 0.05, 0.05},
        {0.02, 0.05, 0.05, 0.05, 0.05},
        {0.02, 0.085, 0.15, 0.20, 0.30},
        {0.02, 0.085, 0.15, 0.30, 0.50},
        {0.02, 0.30, 0.50, 0.50, 0.50}
    };
    /** Least half-width where nothing is known, % vol. */
    private static final double UNKNOWN = 0.5;
    /** Half-width of the density formulas of spirit and syrup alone, part of the volume. */
    private static final double FORMULAS = 0.0002;
    /** Strength from which the two half-widths say the same thing, % vol. */
    private static final double CONSISTENT_FROM = 25.0;

    private static final int ETHANOL = Substance.ETHANOL.ordinal();
    private static final int WATER = Substance.WATER.ordinal();
    private static final int SUCROSE = Substance.SUCROSE.ordinal();
    private static final double DENSITY_OF_ETHANOL =
            EthanolWater.at(Temperature.TWENTY_CELSIUS).ethanol() / 1000.0;

    /**
     * Returns the doubt of a liquid at 20 °C.
     *
     * @param grams the liquid, in the order of {@link Substance}
     * @param millilitresAt20 its volume at 20 °C by the model, above zero
     */
    public static ModelDoubt of(double[] grams, double millilitresAt20) {
        double strength = 100.0 * grams[ETHANOL] / (DENSITY_OF_ETHANOL * millilitresAt20);
        double solids = 1000.0 * dissolved(grams) / millilitresAt20;
        boolean known = known(strength, solids);
        double ofTable = ofTable(strength, solids);
        if (!known) {
            ofTable = Math.max(UNKNOWN, ofTable);
        }
        double ofSolutes = solutes(grams, millilitresAt20);
        double ofVolume = Math.hypot(relative(strength, ofTable), ofSolutes);
        double ofStrength = Math.hypot(ofTable, strength * ofSolutes);
        return new ModelDoubt(Math.min(strength, ofStrength), ofVolume, known);
    }

    /**
     * Returns the further doubt of the volume at another temperature than 20 °C, part of the volume.
     *
     * <p>Solutes other than sucrose are taken to expand like it: 1.5e-4 per °C at w = 1, judged from glycerol. Below 0 °C the
     * alcohol formula and Melinder's tables differ by up to 0.2 % at −20 °C.
     */
    static double ofTemperature(double[] grams, Temperature temperature) {
        double others = 0.0;
        double all = grams[ETHANOL] + grams[WATER] + grams[SUCROSE];
        for (int i = SUCROSE + 1; i < grams.length; i++) {
            others += grams[i];
        }
        double away = Math.abs(temperature.celsius() - 20.0);
        double ofOthers = others > 0.0 ? 1.5e-4 * away * others / (all + others) : 0.0;
        double ofCold = 1e-4 * Math.max(0.0, -temperature.celsius());
        return Math.hypot(ofOthers, ofCold);
    }

    /** Returns the half-width of strength of the same liquid without its solids, % vol. */
    static double unsweetened() {
        return TABLE[0][0];
    }

    /** Returns the half-width of the volume that goes with a half-width of strength, part of the volume. */
    static double relative(double strength, double halfWidth) {
        if (strength >= CONSISTENT_FROM) {
            return halfWidth / strength;
        }
        double part = strength / CONSISTENT_FROM;
        return FORMULAS + part * (halfWidth / CONSISTENT_FROM - FORMULAS);
    }

    /** Grams in solution besides ethanol and water; fat and oil are not. */
    private static double dissolved(double[] grams) {
        double sum = 0.0;
        for (int i = SUCROSE; i < grams.length; i++) {
            if (i != Substance.FAT.ordinal() && i != Substance.OIL.ordinal()) {
                sum += grams[i];
            }
        }
        return sum;
    }

    private static boolean known(double strength, double solids) {
        boolean strongAndSweet = strength > 40.0 && solids > 300.0;
        boolean veryStrongAndSweet = strength > 50.0 && solids > 100.0;
        boolean nearlySyrup = strength > 25.0 && solids > 500.0;
        return !(strongAndSweet || veryStrongAndSweet || nearlySyrup);
    }

    private static double ofTable(double strength, double solids) {
        int row = interval(STRENGTH, strength);
        int column = interval(SOLIDS, solids);
        double down = part(STRENGTH, row, strength);
        double across = part(SOLIDS, column, solids);
        double upper = TABLE[row][column] + across * (TABLE[row][column + 1] - TABLE[row][column]);
        double lower = TABLE[row + 1][column] + across * (TABLE[row + 1][column + 1] - TABLE[row + 1][column]);
        return upper + down * (lower - upper);
    }

    private static int interval(double[] knots, double x) {
        int i = 0;
        while (i < knots.length - 2 && x > knots[i + 1]) {
            i++;
        }
        return i;
    }

    /** How far x lies between two knots; past the last, the last row or column stands. */
    private static double part(double[] knots, int i, double x) {
        return Math.min(1.0, (x - knots[i]) / (knots[i + 1] - knots[i]));
    }

    /** What the solutes' own volumes add, in quadrature, part of the volume. */
    private static double solutes(double[] grams, double millilitres) {
        double squares = 0.0;
        for (int i = SUCROSE + 1; i < grams.length; i++) {
            if (grams[i] > 0.0) {
                double each = VolumeModel.soluteDoubt(i, grams[i], grams[WATER]) / millilitres;
                squares += each * each;
            }
        }
        return Math.sqrt(squares);
    }
}
