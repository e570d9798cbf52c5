package org.stillroom.core.liquid;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.sugar.SucroseWater;

/**
 * Volume of any liquid from the grams of each substance in it.
 *
 * <p>V = V(ethanol with water) + Σ (V(solute with its own water) − V(water)), all at the same temperature. It is exact for
 * ethanol with water and for sucrose with water; between them it says that sugar takes the room that it takes in its own
 * water, whatever ethanol is about. No constant is fitted to mixtures of all three. How far to trust it:
 * {@link ModelDoubt}. Derivation and checks: docs/how-it-works/volume.md.
 *
 * <p>Other solutes than sucrose are known at 20 °C; at other temperatures their solution expands like one of as much sucrose.
 *
 * <p>Grams come as an array in the order of {@link Substance}; the volume grows in proportion when all grams do.
 */
public final class VolumeModel {
    private static final int ETHANOL = Substance.ETHANOL.ordinal();
    private static final int WATER = Substance.WATER.ordinal();
    private static final int SUCROSE = Substance.SUCROSE.ordinal();

    private static final VolumeModel TWENTY = new VolumeModel(Temperature.TWENTY_CELSIUS);

    private static final Substance[] SUBSTANCES = Substance.values();
    private static final ApparentVolume[] SOLUTES = solutes();

    private static final String[] STEPS = steps();
    private static final Source[] SOURCES = sources();

    private final EthanolWater.Isotherm spirit;
    private final SucroseWater.Isotherm syrup;
    private final boolean atTwenty;

    private VolumeModel(Temperature temperature) {
        this.spirit = EthanolWater.at(temperature);
        this.syrup = SucroseWater.at(temperature);
        this.atTwenty = temperature.celsius() == 20.0;
    }

    private static ApparentVolume[] solutes() {
        ApparentVolume[] solutes = new ApparentVolume[Substance.COUNT];
        for (Substance substance : SUBSTANCES) {
            if (substance.ordinal() > SUCROSE) {
                solutes[substance.ordinal()] = ApparentVolume.of(substance);
            }
        }
        return solutes;
    }

    private static String[] steps() {
        String[] steps = new String[Substance.COUNT];
        for (Substance substance : SUBSTANCES) {
            steps[substance.ordinal()] = "volume that " + substance.label() + " adds in its own water";
        }
        return steps;
    }

    private static Source[] sources() {
        Source[] sources = new Source[Substance.COUNT];
        sources[SUCROSE] = Source.ICUMSA_SPS4;
        for (int i = SUCROSE + 1; i < sources.length; i++) {
            sources[i] = SOLUTES[i].source();
        }
        return sources;
    }

    /** Returns the model at 20 °C. */
    public static VolumeModel atTwenty() {
        return TWENTY;
    }

    /**
     * Returns the model at a temperature.
     *
     * @throws IllegalArgumentException outside −20 to 40 °C
     */
    public static VolumeModel at(Temperature temperature) {
        return temperature.celsius() == 20.0 ? TWENTY : new VolumeModel(temperature);
    }

    /** Returns the volume in millilitres. */
    public double millilitres(double[] grams) {
        return millilitres(grams, Workings.NONE);
    }

    /** Returns the volume in millilitres, telling what each part of the liquid adds to it. */
    public double millilitres(double[] grams, Workings workings) {
        double water = grams[WATER];
        double volume = 0.0;
        double wet = grams[ETHANOL] + water;
        if (wet > 0.0) {
            volume = 1000.0 * wet / spirit.density(grams[ETHANOL] / wet);
            workings.step("volume of the ethanol with the water", volume, "mL", Source.OIML_R22);
        }
        for (int i = SUCROSE; i < grams.length; i++) {
            if (grams[i] > 0.0) {
                double added = i == SUCROSE ? sucrose(grams[i], water) : solute(i, grams[i], water);
                volume += added;
                workings.step(STEPS[i], added, "mL", SOURCES[i]);
            }
        }
        return volume;
    }

    /** Returns the half-width of the volume that a solute adds at 20 °C, mL. */
    static double soluteDoubt(int index, double grams, double water) {
        double w = grams / (grams + water);
        return grams * SOLUTES[index].at(w) * SOLUTES[index].doubtAt(w);
    }

    private double sucrose(double grams, double water) {
        double solution = grams + water;
        return 1000.0 * (solution / (spirit.water() + syrup.excess(grams / solution)) - water / spirit.water());
    }

    private double solute(int index, double grams, double water) {
        double w = grams / (grams + water);
        double atTwentyCelsius = grams * SOLUTES[index].at(w);
        if (atTwenty || neverDissolves(index)) {
            return atTwentyCelsius;
        }
        double water20 = TWENTY.spirit.water();
        double expansion = (water20 + TWENTY.syrup.excess(w)) / (spirit.water() + syrup.excess(w));
        return (1000.0 * water / water20 + atTwentyCelsius) * expansion - 1000.0 * water / spirit.water();
    }

    private static boolean neverDissolves(int index) {
        return index == Substance.FAT.ordinal() || index == Substance.OIL.ordinal();
    }

    /**
     * Works out what one more gram of each substance adds to the volume at 20 °C, mL/g.
     *
     * <p>Because the volume grows in proportion with the grams, it is exactly the sum of grams times these.
     *
     * @param grams the liquid
     * @param perGram takes the answer, in the order of {@link Substance}
     * @return the volume, mL
     */
    public static double partialVolumes(double[] grams, double[] perGram) {
        double water = grams[WATER];
        double ofWater = mixture(grams[ETHANOL], water, perGram);
        double volume = perGram[ETHANOL] * grams[ETHANOL] + ofWater * water;
        for (int i = SUCROSE; i < grams.length; i++) {
            double before = ofWater;
            ofWater += i == SUCROSE ? sucrose(grams[i], water, perGram) : solute(i, grams[i], water, perGram);
            volume += perGram[i] * grams[i] + (ofWater - before) * water;
        }
        perGram[WATER] = ofWater;
        return volume;
    }

    private static double mixture(double ethanol, double water, double[] perGram) {
        double wet = ethanol + water;
        double p = wet > 0.0 ? ethanol / wet : 0.0;
        double density = TWENTY.spirit.density(p);
        double turn = TWENTY.spirit.slope(p) / density;
        perGram[ETHANOL] = 1000.0 * (1.0 - turn * (1.0 - p)) / density;
        return 1000.0 * (1.0 + turn * p) / density;
    }

    private static double sucrose(double grams, double water, double[] perGram) {
        double solution = grams + water;
        double w = solution > 0.0 ? grams / solution : 0.0;
        double density = TWENTY.spirit.water() + TWENTY.syrup.excess(w);
        double turn = TWENTY.syrup.slope(w) / density;
        perGram[SUCROSE] = 1000.0 * (1.0 - turn * (1.0 - w)) / density;
        return 1000.0 * ((1.0 + turn * w) / density - 1.0 / TWENTY.spirit.water());
    }

    private static double solute(int index, double grams, double water, double[] perGram) {
        double solution = grams + water;
        double w = solution > 0.0 ? grams / solution : 0.0;
        double turn = w * SOLUTES[index].slope(w);
        perGram[index] = SOLUTES[index].at(w) + turn * (1.0 - w);
        return -turn * w;
    }
}
