package org.stillroom.core.gauging;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.reference.Finding;

/**
 * What is in the vessel, from all that is known of it.
 *
 * @param contents grams of each substance; of a kilogram where neither weight nor volume is known
 * @param strength % vol at 20 °C
 * @param sugar g/L at 20 °C, as dissolved
 * @param acidity g/L at 20 °C, as anhydrous citric acid, or null where nothing tells of it and none is reckoned with
 * @param volume mL at 20 °C, or null where nothing says how much there is
 * @param hidden % vol that sugar and acid hide from a spirit hydrometer at 20 °C
 * @param correlation of strength with sugar, −1 to 1
 * @param warmth how sure the thermometer is that the temperatures were read by
 * @param pulls of each reading in the order given, then of what was poured where that is known
 * @param findings what to know
 */
public record Gauged(
        Contents contents,
        Interval strength,
        Interval sugar,
        @Nullable Interval acidity,
        @Nullable Interval volume,
        double hidden,
        double correlation,
        Warmth warmth,
        List<Pull> pulls,
        List<Finding> findings) {
    public Gauged {
        pulls = List.copyOf(pulls);
        findings = List.copyOf(findings);
    }

    /**
     * A figure and the central 90 % of where it lies.
     *
     * @param value best estimate
     * @param low P5
     * @param high P95
     */
    public record Interval(double value, double low, double high) {
        /** Returns half the width of the central 90 %. */
        public double halfWidth() {
            return 0.5 * (high - low);
        }
    }

    /**
     * How sure the thermometer is that all temperatures were read by.
     *
     * @param thermometer as it was known before
     * @param tooMuch what it shows too much by all that was read, °C
     * @param strength half-width of the central 90 % that comes from it, % vol; squares of such parts add
     * @param sugar the same, g/L
     */
    public record Warmth(Thermometer thermometer, Interval tooMuch, double strength, double sugar) {}

    /**
     * How a reading stands to all the others.
     *
     * @param name which reading
     * @param expected what it should have shown by the final estimate, NaN for what was poured
     * @param sigma how many standard deviations it lies from what the others say; NaN where no reading is spare, so that nothing
     *     can be said of it
     * @param setAside whether the estimate leaves it out
     */
    public record Pull(String name, double expected, double sigma, boolean setAside) {
        public boolean canBeTold() {
            return !Double.isNaN(sigma);
        }
    }
}
