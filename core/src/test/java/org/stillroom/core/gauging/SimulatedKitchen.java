package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.SeededDraws;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;

/** A kitchen whose truth is known: bottles whose labels are off, and instruments that are off the same way each time. */
final class SimulatedKitchen {
    static final int SPIRIT = 0;
    static final int TINCTURE = 1;

    private static final double[] LABELLED = {90.0, 60.0};

    private final SeededDraws draws;
    private final double[] off;
    private final double volumeError;
    private final double refractionError;
    private final Thermometer thermometer;
    private final double tooWarm;
    private final double commonPart;
    private final double chancePart;
    private final Map<Shown, Double> instruments = new EnumMap<>(Shown.class);
    private final List<Learning.Seen> vessels = new ArrayList<>();

    /**
     * @param off by how much spirit and tincture are off their labels, % vol
     * @param commonPart of each instrument's range that is the same each time
     * @param chancePart of each instrument's range that is not
     */
    SimulatedKitchen(SeededDraws draws, double[] off, Thermometer thermometer, double commonPart, double chancePart) {
        this.draws = draws;
        this.off = off.clone();
        this.thermometer = thermometer;
        this.tooWarm = thermometer.halfWidth() * draws.between();
        this.volumeError = draws.normal();
        this.refractionError = draws.normal();
        this.commonPart = commonPart;
        this.chancePart = chancePart;
    }

    private static Contents spirit(double percent) {
        return MadeUp.spirit(new AlcoholByVolume(percent, VolumeBasis.AT_20C)).perGram();
    }

    /**
     * Makes a litre or so and reads it.
     *
     * @param grams of spirit, tincture, sugar and water
     * @param measures how well each is measured, as a part of it
     * @param wild what is poured of the spirit besides, g, and not noticed
     */
    void make(double[] grams, double measures, double wild, Shown... readings) {
        Contents[] parts = {
            spirit(LABELLED[SPIRIT]),
            spirit(LABELLED[TINCTURE]),
            Contents.of(Substance.SUCROSE, 1.0),
            Contents.of(Substance.WATER, 1.0)
        };
        Contents poured = Contents.NONE;
        List<Poured.Slip> slips = new ArrayList<>();
        List<Learning.Share> shares = new ArrayList<>();
        double[] truth = new double[Substance.COUNT];
        for (int part = 0; part < parts.length; part++) {
            poured = poured.plus(parts[part].times(grams[part]));
            double[] slip = parts[part].times(measures * grams[part]).toGrams();
            slips.add(new Poured.Slip("a measure", slip));
            add(truth, slip, draws.between());
            if (part <= TINCTURE && grams[part] > 0.0) {
                shares.add(Learning.Share.of(
                        part,
                        parts[part].times(grams[part]),
                        5.0,
                        spirit(LABELLED[part] + 5.0).times(grams[part]),
                        -10.0,
                        spirit(LABELLED[part] - 10.0).times(grams[part])));
                Contents real = spirit(LABELLED[part] + off[part]).times(grams[part]);
                add(truth, real.toGrams(), 1.0);
            } else {
                add(truth, parts[part].times(grams[part]).toGrams(), 1.0);
            }
        }
        add(truth, parts[SPIRIT].times(wild).toGrams(), 1.0);
        vessels.add(new Learning.Seen(poured, shares, slips, read(truth, readings)));
    }

    private static void add(double[] to, double[] more, double times) {
        for (int i = 0; i < to.length; i++) {
            to[i] += times * more[i];
        }
    }

    private List<Reading> read(double[] truth, Shown... readings) {
        double real = 15.0 + 10.0 * draws.unit();
        Mixture mixture = new Mixture(truth, volumeError, refractionError, tooWarm);
        List<Reading> read = new ArrayList<>();
        for (Shown shown : readings) {
            double value = shown.of(mixture, new Temperature(real));
            double half = shown.usualHalfWidth(value);
            double common = instruments.computeIfAbsent(shown, each -> draws.between());
            double error = half * (commonPart * common + chancePart * draws.between());
            read.add(new Reading(shown, value + error, new Temperature(real + tooWarm), half));
        }
        return read;
    }

    Learned learned(double... tolerances) {
        List<Learning.Label> labels = new ArrayList<>();
        for (double tolerance : tolerances) {
            labels.add(new Learning.Label(tolerance, -1));
        }
        return Learning.of(labels, vessels, thermometer);
    }
}
