package org.stillroom.core.gauging;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;

/**
 * What is sought of a vessel: seven unknowns, from which every liquid that may be in it follows.
 *
 * <p>Four are amounts: of ethanol, of water, along the direction of the sugars and along that of the acids; each in thousandths of
 * the mass expected, so that a thimble and a barrel meet the same numbers. Three say how many standard deviations the volume
 * model, the refraction model and the thermometer are off. What else is in it, such as glycerol, stays as poured.
 */
final class Vessel {
    static final int ETHANOL = 0;
    static final int WATER = 1;
    static final int SUGAR = 2;
    static final int ACID = 3;
    static final int VOLUME_ERROR = 4;
    static final int REFRACTION_ERROR = 5;
    static final int THERMOMETER_ERROR = 6;
    /** How many unknowns there are. */
    static final int UNKNOWNS = 7;
    /** How many of them are amounts, which cannot fall below zero. */
    static final int AMOUNTS = 4;

    private static final Substance[] SUBSTANCES = Substance.values();

    private final double unit;
    private final double[] others;
    private final double[][] directions;
    private final Thermometer thermometer;

    private Vessel(double unit, double[] others, double[][] directions, Thermometer thermometer) {
        this.unit = unit;
        this.others = others;
        this.directions = directions;
        this.thermometer = thermometer;
    }

    /**
     * Returns a vessel that holds sugar and acid as those poured; where none was, sucrose and citric acid.
     *
     * @param mass that is expected, g
     * @param thermometer that its temperature is read by
     */
    static Vessel holding(@Nullable Contents poured, double mass, Thermometer thermometer) {
        double[] grams = poured == null ? new double[Substance.COUNT] : poured.toGrams();
        double[][] directions = new double[AMOUNTS][Substance.COUNT];
        for (Substance substance : SUBSTANCES) {
            int unknown = unknown(substance);
            if (unknown >= 0) {
                directions[unknown][substance.ordinal()] = grams[substance.ordinal()];
                grams[substance.ordinal()] = 0.0;
            }
        }
        Substance[] plain = {Substance.ETHANOL, Substance.WATER, Substance.SUCROSE, Substance.CITRIC};
        for (int k = 0; k < AMOUNTS; k++) {
            toOne(directions[k], plain[k]);
        }
        return new Vessel(mass / 1000.0, grams, directions, thermometer);
    }

    /** Returns the unknown that a substance belongs to, or −1. */
    private static int unknown(Substance substance) {
        if (substance == Substance.ETHANOL) {
            return ETHANOL;
        }
        if (substance == Substance.WATER) {
            return WATER;
        }
        if (substance.sugar() != null) {
            return SUGAR;
        }
        return substance.acid() == null ? -1 : ACID;
    }

    private static void toOne(double[] direction, Substance plain) {
        double sum = Arrays.stream(direction).sum();
        if (sum == 0.0) {
            direction[plain.ordinal()] = 1.0;
            return;
        }
        for (int i = 0; i < direction.length; i++) {
            direction[i] /= sum;
        }
    }

    /** Returns the amounts of some contents, the errors being zero. */
    double[] unknowns(double[] grams) {
        double[] x = new double[UNKNOWNS];
        for (Substance substance : SUBSTANCES) {
            int unknown = unknown(substance);
            if (unknown >= 0) {
                x[unknown] += grams[substance.ordinal()] / unit;
            }
        }
        return x;
    }

    /** Returns the grams of each substance. */
    double[] grams(double[] x) {
        double[] grams = others.clone();
        for (int k = 0; k < AMOUNTS; k++) {
            for (int i = 0; i < grams.length; i++) {
                grams[i] += unit * x[k] * directions[k][i];
            }
        }
        return grams;
    }

    Mixture mixture(double[] x) {
        double tooWarm = thermometer.sigma() * x[THERMOMETER_ERROR];
        return new Mixture(grams(x), x[VOLUME_ERROR], x[REFRACTION_ERROR], tooWarm);
    }
}
