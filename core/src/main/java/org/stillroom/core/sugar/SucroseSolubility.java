package org.stillroom.core.sugar;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Curve;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Tables;

/**
 * How much sucrose water can hold, from 0 to 100 °C.
 *
 * <p>Tables differ: at 20 °C the one used gives 67.09 % by mass, another 66.74 %. A 2:1 syrup (66.7 %) therefore stands at
 * saturation at 20 °C. Source: CRC Handbook of Chemistry and Physics, an older edition.
 */
public final class SucroseSolubility {
    /** How far Vavrinecz's table lies below ours at most, % mass: 0.49 at 20 °C, 0.56 at 30 °C, within 10 to 50 °C. */
    private static final double TABLES_DIFFER_BY = 0.6;

    private static final Curve SATURATED =
            Curve.of(Tables.open("sugar/sucrose_solubility_water.csv").rows(), "celsius", "mass_percent");

    private SucroseSolubility() {}

    /**
     * Returns the Brix of a saturated syrup.
     *
     * @throws IllegalArgumentException outside 0 to 100 °C
     */
    public static Brix saturated(Temperature temperature) {
        return new Brix(SATURATED.at(temperature.celsius()));
    }

    /** Returns what to say of a syrup that is at or past saturation at this temperature, or null. */
    public static @Nullable Finding warning(Brix syrup, Temperature temperature) {
        double limit = SATURATED.at(Math.max(SATURATED.first(), Math.min(SATURATED.last(), temperature.celsius())));
        if (syrup.degrees() < limit - TABLES_DIFFER_BY) {
            return null;
        }
        return new Finding(
                "syrup-saturated",
                syrup.degrees() > limit ? Severity.CAUTION : Severity.NOTE,
                "syrup",
                "",
                syrup.degrees() > limit ? "will crystallise" : "at saturation",
                "Water holds " + QuantityWords.fixed(limit, 2) + " % by mass of sucrose at "
                        + QuantityWords.fixed(temperature.celsius(), 1) + " °C; this syrup has "
                        + QuantityWords.fixed(syrup.degrees(), 2) + " %.",
                "tables differ by up to " + QuantityWords.fixed(TABLES_DIFFER_BY, 1) + " %",
                "Keep it warm, use a little less sugar, or replace a tenth of the sugar by invert sugar.",
                QuantityWords.fixed(limit, 2) + " % by mass",
                Source.SUCROSE_SOLUBILITY);
    }
}
