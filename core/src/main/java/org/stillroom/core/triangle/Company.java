package org.stillroom.core.triangle;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.sugar.InvertSugar;
import org.stillroom.core.sugar.Sugar;

/**
 * What stands beside ethanol, sugar and water in a liquid, and which sugars its sugar is: what a triangle of three shares leaves out.
 *
 * <p>All sugars count together as sugar, in the proportion in which the liquid has them. Everything else (glycerol, acids, oils, fat,
 * protein, other solids) has no share; it is held at so much per gram of the three. Strength and sugar of a place are those of the
 * three with this company, by the volume model, so that the liquid itself lies exactly on its own lines.
 */
public final class Company {
    private static final int ETHANOL = Substance.ETHANOL.ordinal();
    private static final int WATER = Substance.WATER.ordinal();
    private static final int OIL = Substance.OIL.ordinal();
    /** g/mL at 20 °C. */
    static final double ETHANOL_DENSITY =
            EthanolWater.at(Temperature.TWENTY_CELSIUS).ethanol() / 1000.0;

    private static final double LITRE = 1000.0;
    /** What is below this in a litre is rounding, mL and g. */
    private static final double SETTLED = 1e-10;

    private static final int MOST_ROUNDS = 40;

    /** Sucrose and nothing else. */
    public static final Company PLAIN = of(Contents.NONE, SugarBasis.AS_DISSOLVED);

    private final double[] perSugar;
    private final double[] perThree;
    private final double countsAs;

    private Company(double[] perSugar, double[] perThree, double countsAs) {
        this.perSugar = perSugar;
        this.perThree = perThree;
        this.countsAs = countsAs;
    }

    /**
     * Returns the company in a liquid.
     *
     * @param basis what the sugar figure counts
     */
    public static Company of(Contents liquid, SugarBasis basis) {
        double sugars = liquid.sugars();
        double three = three(liquid);
        double[] perSugar = new double[Substance.COUNT];
        double[] perThree = new double[Substance.COUNT];
        double countsAs = 0.0;
        for (Substance substance : Substance.values()) {
            int s = substance.ordinal();
            Sugar sugar = substance.sugar();
            if (sugar != null) {
                double mass = substance == Substance.SUCROSE ? 1.0 : 0.0;
                perSugar[s] = sugars > 0.0 ? liquid.grams(substance) / sugars : mass;
                countsAs += perSugar[s] * countsAs(sugar, basis);
            } else if (s != ETHANOL && s != WATER) {
                perThree[s] = three > 0.0 ? liquid.grams(substance) / three : 0.0;
            }
        }
        return new Company(perSugar, perThree, countsAs);
    }

    private static double countsAs(Sugar sugar, SugarBasis basis) {
        return switch (basis) {
            case AS_DISSOLVED -> 1.0;
            case AS_INVERT -> InvertSugar.per(sugar);
            case AS_SUCROSE -> InvertSugar.per(sugar) / InvertSugar.per(Sugar.SUCROSE);
        };
    }

    private static double three(Contents liquid) {
        return liquid.grams(Substance.ETHANOL) + liquid.sugars() + liquid.grams(Substance.WATER);
    }

    /** Returns the place of a liquid, whatever its company; that of water where it has none of the three. */
    public static Spot spot(Contents liquid) {
        double three = three(liquid);
        return three > 0.0
                ? new Spot(liquid.grams(Substance.ETHANOL) / three, liquid.sugars() / three)
                : new Spot(0.0, 0.0);
    }

    /** Returns what a liquid holds beside the three, grams per gram of it. */
    public static double rest(Contents liquid) {
        double total = liquid.total();
        return total > 0.0 ? Math.max(0.0, 1.0 - three(liquid) / total) : 0.0;
    }

    /** Returns strength and sugar of a place with this company. */
    public Reading reading(Spot spot) {
        double volume = volume(spot.ethanol(), spot.sugar(), spot.water());
        return new Reading(
                100.0 * spot.ethanol() / (ETHANOL_DENSITY * volume), LITRE * countsAs * spot.sugar() / volume);
    }

    /** Returns the place of a strength and a sugar with this company, or null where there is no room for the two in a litre. */
    public @Nullable Spot spot(Reading reading) {
        double ethanol = 10.0 * reading.strength() * ETHANOL_DENSITY;
        double sugar = reading.sugar() / countsAs;
        double room = LITRE - volume(ethanol, sugar, 0.0);
        if (room < -SETTLED) {
            return null;
        }
        double water = waterInALitre(ethanol, sugar, Math.max(0.0, room));
        double three = ethanol + sugar + water;
        return new Spot(ethanol / three, sugar / three);
    }

    /** Returns the grams of water that make up a litre, by Newton's rule; a gram of water adds nearly the same throughout. */
    private double waterInALitre(double ethanol, double sugar, double start) {
        double[] grams = new double[Substance.COUNT];
        double[] partial = new double[Substance.COUNT];
        double water = start;
        for (int i = 0; i < MOST_ROUNDS; i++) {
            fill(grams, ethanol, sugar, water);
            double lacking = LITRE - VolumeModel.partialVolumes(grams, partial);
            double step = lacking / perGramOfWater(partial);
            water = Math.max(0.0, water + step);
            if (Math.abs(step) <= SETTLED) {
                return water;
            }
        }
        return water;
    }

    /** Returns what one more gram of water with its company adds to the volume, mL/g. */
    private double perGramOfWater(double[] partial) {
        double volume = partial[WATER];
        for (int s = 0; s < partial.length; s++) {
            volume += perThree[s] * partial[s];
        }
        return volume;
    }

    private double volume(double ethanol, double sugar, double water) {
        return volume(new double[Substance.COUNT], ethanol, sugar, water);
    }

    /** Returns the millilitres of so many grams of the three with their company; the array is written over. */
    double volume(double[] grams, double ethanol, double sugar, double water) {
        fill(grams, ethanol, sugar, water);
        return VolumeModel.atTwenty().millilitres(grams);
    }

    /** Returns what is dissolved beside the three, grams for each gram of them; oil is not dissolved. */
    double solids() {
        double solids = 0.0;
        for (int s = 0; s < perThree.length; s++) {
            solids += s == OIL ? 0.0 : perThree[s];
        }
        return solids;
    }

    /** Takes so many grams of the three with their company. */
    private void fill(double[] grams, double ethanol, double sugar, double water) {
        double three = ethanol + sugar + water;
        for (int s = 0; s < grams.length; s++) {
            grams[s] = perSugar[s] * sugar + perThree[s] * three;
        }
        grams[ETHANOL] = ethanol;
        grams[WATER] = water;
    }
}
