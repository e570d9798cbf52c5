package org.stillroom.core.ingredient;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Temperature;

/**
 * The grams of one litre at 20 °C of something of which some contents are known by mass and some per litre; a filler takes the
 * rest.
 */
final class Composition {
    private static final double MILLILITRES = 1000.0;
    private static final int MOST_STEPS = 100;

    private final double[] perLitre = new double[Substance.COUNT];
    private final double[] perGram = new double[Substance.COUNT];

    /** Adds a substance, by mass of the whole or per litre of it. */
    void add(Substance substance, Share share, double part) {
        if (share instanceof MassFraction byMass) {
            perGram[substance.ordinal()] += part * byMass.fraction();
        } else {
            perLitre[substance.ordinal()] += part * ((MassConcentration) share).gramsPerLitre();
        }
    }

    /** Adds ethanol by volume at 20 °C, 0 to 100 % vol. */
    void addEthanol(double percentByVolume) {
        perLitre[Substance.ETHANOL.ordinal()] += percentByVolume
                / 100.0
                * EthanolWater.at(Temperature.TWENTY_CELSIUS).ethanol();
    }

    boolean hasNothingPerLitre() {
        return sum(perLitre) == 0.0;
    }

    /** Returns the part of the mass that is accounted for, when everything is known by mass. */
    double accountedFor() {
        return sum(perGram);
    }

    /** Returns the grams of one gram, when everything is known by mass; what is not accounted for is the filler. */
    Contents byMass(Substance filler) {
        double[] grams = perGram.clone();
        grams[filler.ordinal()] += Math.max(0.0, 1.0 - sum(perGram));
        return Contents.ofGrams(grams);
    }

    /** Returns the grams of one gram without any filler: what is not accounted for is not in the liquid. */
    Contents byMassAlone() {
        return Contents.ofGrams(perGram);
    }

    /**
     * Returns the grams of one gram of a liquid filled up with water to a litre.
     *
     * @throws IllegalArgumentException when the contents alone need more than a litre
     */
    Contents filledWithWater() {
        double water = MILLILITRES;
        for (int i = 0; i < MOST_STEPS; i++) {
            double[] grams = litre(water);
            double excess = VolumeModel.atTwenty().millilitres(grams) - MILLILITRES;
            double step = excess * (1.0 - sum(perGram));
            if (Math.abs(excess) < 1e-11 * MILLILITRES) {
                return Contents.ofGrams(grams).perGram();
            }
            water -= step;
            if (water < 0.0) {
                water = refuseOrTryDry(water + step);
            }
        }
        return Contents.ofGrams(litre(water)).perGram();
    }

    private double refuseOrTryDry(double before) {
        double dry = VolumeModel.atTwenty().millilitres(litre(0.0));
        if (dry > MILLILITRES * (1 + 1e-6)) {
            throw new IllegalArgumentException("what is in it alone takes " + Math.round(dry) + " mL of each litre");
        }
        return before / 2.0;
    }

    /** Returns the grams of one gram of a liquid whose density is known; water takes the rest of the mass. */
    Contents ofDensity(double kilogramsPerCubicMetre) {
        double[] grams = new double[Substance.COUNT];
        for (int i = 0; i < grams.length; i++) {
            grams[i] = perLitre[i] + perGram[i] * kilogramsPerCubicMetre;
        }
        double rest = kilogramsPerCubicMetre - sum(grams);
        if (rest < -1e-6 * kilogramsPerCubicMetre) {
            throw new IllegalArgumentException("what is in it weighs more than its density allows");
        }
        grams[Substance.WATER.ordinal()] += Math.max(0.0, rest);
        return Contents.ofGrams(grams).perGram();
    }

    private double[] litre(double water) {
        double total = (sum(perLitre) + water) / (1.0 - sum(perGram));
        double[] grams = new double[Substance.COUNT];
        for (int i = 0; i < grams.length; i++) {
            grams[i] = perLitre[i] + perGram[i] * total;
        }
        grams[Substance.WATER.ordinal()] += water;
        return grams;
    }

    private static double sum(double[] values) {
        double sum = 0.0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
