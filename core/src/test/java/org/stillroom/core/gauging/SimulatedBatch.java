package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.SeededDraws;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.sugar.SucroseWater;

/** A batch whose truth is known: what was meant to be poured, what really was, and what instruments show of it. */
final class SimulatedBatch {
    private final SeededDraws draws;
    private final Poured poured;
    private final Mixture truth;
    private final Temperature at;
    private final Temperature read;

    SimulatedBatch(long seed) {
        this(seed, -1, 0.0);
    }

    /** @param thermometer that shows too much by anything within its range */
    SimulatedBatch(long seed, Thermometer thermometer) {
        this(seed, -1, 0.0, thermometer);
    }

    /**
     * Returns a batch for which one label or measure was wrong.
     *
     * @param wrong which slip, or −1
     * @param times by how many times its range it was off
     */
    SimulatedBatch(long seed, int wrong, double times) {
        this(seed, wrong, times, Thermometer.EXACT);
    }

    private SimulatedBatch(long seed, int wrong, double times, Thermometer thermometer) {
        draws = new SeededDraws(seed);
        double strength = 15.0 + 25.0 * draws.unit();
        double sugar = 50.0 + 250.0 * draws.unit();
        Contents meant = Liqueur.litre(strength, sugar).times(0.5 + 2.0 * draws.unit());
        List<Poured.Slip> errors = List.of(
                error("the label of the spirit", meant, Substance.ETHANOL, 0.02),
                error("the measure of water", meant, Substance.WATER, 0.02),
                error("the measure of sugar", meant, Substance.SUCROSE, 0.02));
        poured = new Poured(meant, errors);
        double[] grams = meant.toGrams();
        for (int slip = 0; slip < errors.size(); slip++) {
            double within = draws.between();
            double by = slip == wrong ? times : within;
            for (int i = 0; i < grams.length; i++) {
                grams[i] += by * errors.get(slip).atItsEnd()[i];
            }
        }
        double volumeError = draws.normal();
        double refractionError = draws.normal();
        at = new Temperature(15.0 + 10.0 * draws.unit());
        double tooWarm = thermometer.halfWidth() == 0.0 ? 0.0 : thermometer.halfWidth() * draws.between();
        read = new Temperature(at.celsius() + tooWarm);
        truth = new Mixture(grams, volumeError, refractionError, tooWarm);
    }

    private static Poured.Slip error(String what, Contents meant, Substance substance, double part) {
        double[] end = new double[Substance.COUNT];
        end[substance.ordinal()] = part * meant.grams(substance);
        return new Poured.Slip(what, end);
    }

    Poured poured() {
        return poured;
    }

    Mixture truth() {
        return truth;
    }

    /** Returns what the thermometer shows too much, °C. */
    double tooWarm() {
        return read.celsius() - at.celsius();
    }

    SeededDraws draws() {
        return draws;
    }

    /** Returns what these instruments show, each with an error within its range. */
    List<Reading> readings(Shown... instruments) {
        List<Reading> readings = new ArrayList<>();
        for (Shown shown : instruments) {
            double real = shown.of(truth, at);
            double half = shown.usualHalfWidth(real);
            readings.add(new Reading(shown, real + half * draws.between(), read, half));
        }
        return readings;
    }

    /** Returns density, refraction and volume where densities add as wine law has it, by instruments off to one side. */
    List<Reading> readingsOfAnotherWorld() {
        EthanolWater.Isotherm spirit = EthanolWater.at(Temperature.TWENTY_CELSIUS);
        SucroseWater.Isotherm syrup = SucroseWater.at(Temperature.TWENTY_CELSIUS);
        double alone = spirit.density(spirit.fractionOfPercentByVolume(truth.strength()));
        double part = Root.of(w -> w * (spirit.water() + syrup.excess(w)) - truth.sugar());
        double density = alone + syrup.excess(part);
        List<Reading> readings = new ArrayList<>();
        readings.add(biased(Shown.DENSITY, density));
        readings.add(biased(Shown.REFRACTOMETER, Shown.REFRACTOMETER.of(truth, Temperature.TWENTY_CELSIUS)));
        readings.add(biased(Shown.VOLUME, 1000.0 * truth.mass() / density));
        return readings;
    }

    private static Reading biased(Shown shown, double real) {
        double half = shown.usualHalfWidth(real);
        return new Reading(shown, real + 0.5 * half, Temperature.TWENTY_CELSIUS, half);
    }
}
