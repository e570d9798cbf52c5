package org.stillroom.core.gauging;

import java.util.List;

/**
 * A way to measure that a kitchen has, what it takes of the batch, and what spoils it.
 *
 * <p>Samples, half-widths and traps: common practice and from memory, no source.
 */
public enum Method {
    FLASK(
            "weighed flask",
            "a flask filled to its mark and weighed on a scale of 0.1 g",
            50.0,
            Sample.GOES_BACK,
            "Weigh the flask dry and empty first, fill it to the mark at 20\u00a0°C without bubbles, and have it calibrated with"
                    + " water: 49.86\u00a0g to 50\u00a0mL."),
    HYDROMETER(
            "hydrometer",
            "a hydrometer of specific gravity in a cylinder",
            150.0,
            Sample.GOES_BACK,
            "It shows alcohol and sugar at once, one against the other, and neither by itself. Stir out bubbles and let what was"
                    + " mixed cool: mixing warms by 5 to 9\u00a0°C."),
    SPIRIT_HYDROMETER(
            "spirit hydrometer",
            "a spirit hydrometer of % vol in a cylinder",
            150.0,
            Sample.GOES_BACK,
            "Sugar hides strength from it; most liqueurs are heavier than water, and it does not even float on its scale."),
    REFRACTOMETER(
            "refractometer",
            "a hand refractometer of °Brix",
            0.5,
            Sample.IS_LOST,
            "Alcohol bends light too: without a density beside it the reading is not the sugar. Set it to zero with water, wipe"
                    + " it dry, and let the drop take its temperature."),
    RESIDUE(
            "residue made up again",
            "boiling the alcohol off a measured sample, making it up with water to its volume, and weighing a flask of that",
            100.0,
            Sample.IS_LOST,
            "Boil off a good half, without flame and with air; let nothing spit or brown; make it up to the very volume at 20\u00a0°C."),
    DRY_RESIDUE(
            "dry residue",
            "drying a weighed sample in an oven",
            10.0,
            Sample.IS_LOST,
            "Syrup holds its last water for hours and browns above 105\u00a0°C. Never put it wet with alcohol into a hot oven."),
    DISTILLED(
            "distilled sample",
            "distilling a sample, making it up to its volume and reading a spirit hydrometer",
            250.0,
            Sample.IS_LOST,
            "Distilling alcohol, also as a test, needs leave in most countries: ask before."),
    WHOLE_BATCH(
            "whole batch weighed and measured",
            "a scale under the vessel and its volume by a mark",
            0.0,
            Sample.GOES_BACK,
            "A mark good to 1\u00a0% leaves the strength open by 4\u00a0% vol: it tells the volume well and the strength badly."),
    TITRATION(
            "titration",
            "titrating the acid of a sample",
            10.0,
            Sample.IS_LOST,
            "Dilute dark liquids; count what is found as citric acid.");

    /** Sample above which a reading costs a small batch dearly, as a part of it. */
    static final double DEAR = 0.1;

    private final String label;
    private final String means;
    private final double sampleMillilitres;
    private final Sample sample;
    private final String trap;

    Method(String label, String means, double sampleMillilitres, Sample sample, String trap) {
        this.label = label;
        this.means = means;
        this.sampleMillilitres = sampleMillilitres;
        this.sample = sample;
        this.trap = trap;
    }

    /** What becomes of a sample. */
    public enum Sample {
        GOES_BACK("can go back"),
        IS_LOST("is lost");

        private final String label;

        Sample(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /**
     * What is read.
     *
     * @param shown which instrument
     * @param halfWidth within which it is right, in its unit; NaN for a part of the reading, see {@link Shown#usualHalfWidth}
     */
    record Instrument(Shown shown, double halfWidth) {}

    public String label() {
        return label;
    }

    /** Returns what is done, in words. */
    public String means() {
        return means;
    }

    /** Returns what it takes of the batch, mL. */
    public double sampleMillilitres() {
        return sampleMillilitres;
    }

    public Sample sample() {
        return sample;
    }

    /** Returns what spoils it, and what to mind. */
    public String trap() {
        return trap;
    }

    List<Instrument> instruments() {
        return switch (this) {
            case FLASK -> List.of(new Instrument(Shown.DENSITY, 1.5));
            case HYDROMETER -> List.of(new Instrument(Shown.GRAVITY, 0.001));
            case SPIRIT_HYDROMETER -> List.of(new Instrument(Shown.SPIRIT_20C, 0.5));
            case REFRACTOMETER -> List.of(new Instrument(Shown.COMPENSATED_REFRACTOMETER, 0.2));
            case RESIDUE -> List.of(new Instrument(Shown.RESIDUE_DENSITY, 1.5));
            case DRY_RESIDUE -> List.of(new Instrument(Shown.DRY_RESIDUE, 4.0));
            case DISTILLED -> List.of(new Instrument(Shown.TRUE_STRENGTH, 0.5));
            case WHOLE_BATCH ->
                List.of(new Instrument(Shown.MASS, Double.NaN), new Instrument(Shown.VOLUME, Double.NaN));
            case TITRATION -> List.of(new Instrument(Shown.ACIDITY, 0.3));
        };
    }

    /** Returns what is lost for good when a batch is measured so, mL. */
    double cost() {
        return sample == Sample.IS_LOST ? sampleMillilitres : 0.0;
    }
}
