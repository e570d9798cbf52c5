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
            "At 20\u00a0°C, or with its temperature typed; stir or shake until no bubble clings.",
            "Weigh the flask dry and empty first, and have it calibrated with water: 49.86\u00a0g to 50\u00a0mL."),
    HYDROMETER(
            "hydrometer",
            "a hydrometer of specific gravity in a cylinder, which wants 100 to 250\u00a0mL",
            150.0,
            Sample.GOES_BACK,
            "Stir out bubbles, and let what was mixed cool: mixing warms by 5 to 9\u00a0°C; read the temperature beside it.",
            "It shows alcohol and sugar at once, one against the other, and neither by itself."),
    SPIRIT_HYDROMETER(
            "spirit hydrometer",
            "a spirit hydrometer of % vol in a cylinder, which wants 100 to 250\u00a0mL",
            150.0,
            Sample.GOES_BACK,
            "Stir out bubbles, let it cool, and read the temperature beside it.",
            "Sugar hides strength from it; most liqueurs are heavier than water, and it does not even float on its scale."),
    REFRACTOMETER(
            "refractometer",
            "a hand refractometer of °Brix",
            0.5,
            Sample.IS_LOST,
            "Let the drop take the temperature of the prism; say whether it corrects for temperature by itself.",
            "Alcohol bends light too: without a density beside it the reading is not the sugar. Set it to zero with water and wipe"
                    + " it dry."),
    RESIDUE(
            "residue made up again",
            "boiling the alcohol off a measured sample, making it up with water to its volume, and weighing a flask of that",
            100.0,
            Sample.IS_LOST,
            "Measure the sample and make it up again at the same 20\u00a0°C.",
            "Boil off a good half, without flame and with air; let nothing spit or brown."),
    DRY_RESIDUE(
            "dry residue",
            "drying a weighed sample in an oven",
            10.0,
            Sample.IS_LOST,
            "At 70 to 105\u00a0°C, spread thin, until two weighings agree.",
            "Syrup holds its last water for hours and browns above 105\u00a0°C. Never put it wet with alcohol into a hot oven."),
    DISTILLED(
            "distilled sample",
            "distilling a sample, making it up to its volume and reading a spirit hydrometer",
            250.0,
            Sample.IS_LOST,
            "Measure the sample and make the distillate up again at the same 20\u00a0°C.",
            "Distilling alcohol, also as a test, needs leave in most countries: ask before."),
    WHOLE_BATCH(
            "whole batch weighed and measured",
            "a scale under the vessel and its volume by a mark",
            0.0,
            Sample.GOES_BACK,
            "With the temperature of the batch, and without what floats or has settled.",
            "A mark good to 1\u00a0% leaves the strength open by 4\u00a0% vol: it tells the volume well and the strength badly."),
    TITRATION(
            "titration",
            "titrating the acid of a sample",
            10.0,
            Sample.IS_LOST,
            "At the warmth of the room; drive carbonic acid out of what sparkles.",
            "Dilute dark liquids; count what is found as citric acid.");

    /** Sample above which a reading costs a small batch dearly, as a part of it. */
    static final double DEAR = 0.1;

    private final String label;
    private final String means;
    private final double sampleMillilitres;
    private final Sample sample;
    private final String conditions;
    private final String trap;

    Method(String label, String means, double sampleMillilitres, Sample sample, String conditions, String trap) {
        this.label = label;
        this.means = means;
        this.sampleMillilitres = sampleMillilitres;
        this.sample = sample;
        this.conditions = conditions;
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

    /** Returns what it is to be read at: temperature, and without bubbles. */
    public String conditions() {
        return conditions;
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
