package org.stillroom.core.alcohol;

import org.stillroom.core.reference.Curve;
import org.stillroom.core.reference.Tables;

/**
 * Heat that warms a gram of ethanol with water by one degree at 20 °C.
 *
 * <p>Straight between tabulated strengths; from 60 % mass straight to pure ethanol. Doubt about 3 %. Source: Melinder,
 * Properties of Secondary Working Fluids; Perry's Chemical Engineers' Handbook, table 2-153, for the pure liquids.
 */
public final class EthanolHeatCapacity {
    private static final Curve TABLE = Curve.of(
            Tables.open("alcohol/heat_capacity_20c.csv").rows(), "ethanol_mass_percent", "joules_per_gram_kelvin");

    private EthanolHeatCapacity() {}

    /**
     * Returns J/(g·K).
     *
     * @param ethanolFraction grams of ethanol per gram of ethanol and water, 0 to 1
     */
    public static double perGram(double ethanolFraction) {
        return TABLE.at(100.0 * ethanolFraction);
    }
}
