package org.stillroom.core.liquid;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Curve;
import org.stillroom.core.reference.Tables;

/**
 * How much sucrose a spirit can hold dissolved: advice, never a promise.
 *
 * <p>Grams per litre of the saturated solution against the strength of its ethanol and water without the sugar, at 14 °C;
 * from 0 to 14 °C it hardly changes, warmer holds more. Recalled from memory (old figures of Scheibler and Schrefeld as
 * tabulated by Seidell), so that a fifth is kept as a margin. Other sugars are not counted: they crystallise on their own
 * terms, and invert sugar keeps sucrose in solution.
 */
final class SugarLimit {
    /** Margin kept below the tabulated limit, and the doubt told with it. */
    static final double MARGIN = 0.2;

    private static final Curve LIMIT = Curve.of(
            Tables.open("liquid/sucrose_solubility_in_alcohol.csv").rows(), "alcohol_percent", "grams_per_litre");

    private SugarLimit() {}

    /** Returns whether the table reaches this strength; it ends at 90 % vol. */
    static boolean known(double[] grams) {
        return grams[Substance.WATER.ordinal()] > 0.0 && solvent(grams) <= LIMIT.last();
    }

    /** Returns the sucrose that a litre can hold, g/L at 14 °C. */
    static Estimate of(double[] grams) {
        double limit = LIMIT.at(solvent(grams));
        return new Estimate(limit, MARGIN * limit);
    }

    private static double solvent(double[] grams) {
        double ethanol = grams[Substance.ETHANOL.ordinal()];
        return EthanolWater.at(Temperature.TWENTY_CELSIUS)
                .percentByVolume(ethanol / (ethanol + grams[Substance.WATER.ordinal()]));
    }
}
