package org.stillroom.core.liquid;

import java.util.List;
import org.stillroom.core.alcohol.HeatOfMixing;
import org.stillroom.core.alcohol.HeatOfMixing.EthanolAndWater;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;

/**
 * How much warmer a mixture gets than its parts were, when no heat is lost.
 *
 * <p>Enthalpy is kept: C·(t₂ − t₁) + Hᴱ(mixture, t₂) = Σ Hᴱ(parts, t₁), with C the heat capacity of ethanol, water and solutes
 * apart, so that the greater term lies inside the range of the formula for Hᴱ. Taking the heat at t₁ and the measured heat
 * capacity of the mixture instead gives 4 % more. Dissolving sugar, which cools by a degree or so, is left out. Doubt 12 %.
 * Source: Larkin 1975 (from memory); see docs/how-it-works/cold-and-heat.md.
 */
public final class Warming {
    /** Far more than any mixing warms, °C. */
    private static final double MOST = 40.0;

    private Warming() {}

    /**
     * Returns the rise when these are mixed, °C with its half-width.
     *
     * @param temperature of the parts, all alike
     */
    public static Estimate of(List<Contents> parts, Temperature temperature) {
        Contents together = Contents.NONE;
        double before = 0.0;
        for (Contents part : parts) {
            together = together.plus(part);
            before += excess(part, temperature.celsius());
        }
        double given = before - excess(together, temperature.celsius());
        if (!(given > 0.0)) {
            return new Estimate(0.0, 0.0);
        }
        double capacity = HeatCapacity.apart(together);
        double enthalpy = before;
        Contents whole = together;
        double rise = MOST
                * Root.of(
                        part -> capacity * MOST * part + excess(whole, temperature.celsius() + MOST * part) - enthalpy);
        return new Estimate(rise, rise * HeatOfMixing.DOUBT);
    }

    private static double excess(Contents contents, double celsius) {
        return HeatOfMixing.excessJoules(
                new EthanolAndWater(contents.grams(Substance.ETHANOL), contents.grams(Substance.WATER)),
                new Temperature(celsius));
    }
}
