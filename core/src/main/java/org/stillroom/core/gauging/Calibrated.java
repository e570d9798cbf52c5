package org.stillroom.core.gauging;

import java.util.List;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.StrengthFromDensity.Weighing;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Temperature;

/**
 * What a maker's own instrument was found to do, against something that is known.
 *
 * <p>Independent errors are added as their squares (JCGM 100:2008, 5.1.2), the reading with half of a mark, more readings with half of
 * their range where that is wider. Method: docs/how-it-works/gauging.md.
 *
 * @param value of a flask its volume, mL at 20 °C; of all others what they show too much, in their own unit
 * @param halfWidth within which that is right, in the same unit; every value within is as likely
 */
public record Calibrated(double value, double halfWidth) {
    /** Cubic expansion of soda-lime glass, per °C; see {@link org.stillroom.core.reference.Source#GLASS_EXPANSION}. */
    private static final double GLASS = 25e-6;

    public Calibrated {
        if (!Double.isFinite(value) || !(halfWidth > 0.0 && halfWidth < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no calibration: " + value + " ± " + halfWidth);
        }
    }

    /**
     * A liquid whose figures are known.
     *
     * @param liquid what it is
     * @param upper what it may be at most; below it lies as far
     */
    public record Known(Contents liquid, Contents upper) {
        /** How far sugar weighed into water on a kitchen scale may be off, % mass; our own estimate. */
        private static final double WEIGHED = 0.1;
        /** How far the strength on a label may be off, % vol: Regulation (EU) No 1169/2011, Annex XII. */
        private static final double LABEL = 0.3;

        /** Pure water. */
        public static final Known WATER = new Known(water(), water());

        /** Sugar dissolved in water by weight, up to 65 °Bx. */
        public static Known syrup(Brix brix) {
            return new Known(sweet(brix.degrees()), sweet(brix.degrees() + WEIGHED));
        }

        /** A spirit of a strength by its label. */
        public static Known spirit(AlcoholByVolume label) {
            double upper = Math.min(100.0, label.percent() + LABEL);
            return new Known(MadeUp.spirit(label), MadeUp.spirit(new AlcoholByVolume(upper, label.basis())));
        }

        private static Contents water() {
            return Contents.of(Substance.WATER, 1.0);
        }

        private static Contents sweet(double degrees) {
            return Contents.of(Substance.SUCROSE, degrees / 100.0).with(Substance.WATER, 1.0 - degrees / 100.0);
        }
    }

    /**
     * Returns what an instrument shows too much.
     *
     * @param reads what it showed, once or more
     * @param halfMark half of its least step
     * @param at temperature of the liquid
     */
    public static Calibrated in(Known known, Shown shown, List<Double> reads, double halfMark, Temperature at) {
        double expected = expected(shown, known.liquid(), at.celsius());
        double ofLiquid = expected(shown, known.upper(), at.celsius()) - expected;
        double ofWarmth = 0.5
                * (expected(shown, known.liquid(), at.celsius() + Thermometer.USUAL.halfWidth())
                        - expected(shown, known.liquid(), at.celsius() - Thermometer.USUAL.halfWidth()));
        return new Calibrated(mean(reads) - expected, together(ofReadings(reads, halfMark), ofLiquid, ofWarmth));
    }

    /** Returns by how much a thermometer shows too much, °C. */
    public static Calibrated thermometer(Temperature truth, double ofTruth, List<Double> reads, double halfMark) {
        return new Calibrated(mean(reads) - truth.celsius(), together(ofReadings(reads, halfMark), ofTruth));
    }

    /**
     * Returns the volume of a flask at 20 °C, by the water that fills it to its mark.
     *
     * @param full what it weighed with the water, as the scale shows it in air, once or more
     * @param halfMark half of the least step of the scale, g
     * @param at temperature of the water and the flask
     */
    public static Calibrated flask(Mass empty, List<Mass> full, double halfMark, Temperature at) {
        List<Double> filled = full.stream()
                .map(each -> inFlask(new Mass(each.grams() - empty.grams()), at.celsius()))
                .toList();
        double middle = mean(filled);
        double weight = mean(full.stream().map(Mass::grams).toList()) - empty.grams();
        double perGram = middle / weight;
        double ofWarmth = 0.5
                * (inFlask(new Mass(weight), at.celsius() + Thermometer.USUAL.halfWidth())
                        - inFlask(new Mass(weight), at.celsius() - Thermometer.USUAL.halfWidth()));
        return new Calibrated(middle, together(ofReadings(filled, halfMark * perGram), halfMark * perGram, ofWarmth));
    }

    private static double inFlask(Mass water, double celsius) {
        double density = EthanolWater.at(new Temperature(celsius)).water();
        return Weighing.filled(water, density).millilitres() * (1.0 - GLASS * (celsius - 20.0));
    }

    /** Returns how far a reading of it may be off, with the reading itself read to half a mark. */
    public double whenRead(double halfMark) {
        return together(halfWidth, halfMark);
    }

    /** Returns the half-width of the central 90 %, as of a normal error with the same standard deviation. */
    public double doubt() {
        return Mixture.CENTRAL_90 * halfWidth / Math.sqrt(3.0);
    }

    /** Returns whether what it shows too much is more than this calibration can tell from nothing. */
    public boolean tellsAnOffset() {
        return Math.abs(value) > halfWidth;
    }

    private static double expected(Shown shown, Contents liquid, double celsius) {
        return Reading.foreseen(shown, liquid, new Temperature(celsius), 1.0).value();
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(each -> each).average().orElseThrow();
    }

    private static double ofReadings(List<Double> values, double halfMark) {
        double least = values.stream().mapToDouble(each -> each).min().orElseThrow();
        double most = values.stream().mapToDouble(each -> each).max().orElseThrow();
        return Math.max(halfMark, 0.5 * (most - least));
    }

    private static double together(double... halfWidths) {
        double squares = 0.0;
        for (double each : halfWidths) {
            squares += each * each;
        }
        return Math.sqrt(squares);
    }
}
