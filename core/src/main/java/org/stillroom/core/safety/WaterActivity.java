package org.stillroom.core.safety;

import java.util.EnumMap;
import java.util.Map;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.extraction.Vapour;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;

/**
 * The water activity of a liquid: the part of its water that microbes can use, 1 in pure water.
 *
 * <p>a = Π aᵢ, each solute alone in all of the water (Ross 1975); aᵢ = x_w·e^(−K·xᵢ²) (Norrish 1966), for ethanol x_w·γ_w by NRTL
 * at 20 °C. What has no constant does not lower it, which is the cautious side. Source of the K: after Chirife and others, from
 * memory. Holds to about 0.02; docs/how-it-works/growth.md.
 */
public final class WaterActivity {
    private static final double KELVIN = 293.15;
    private static final double WATER = 18.01528;
    private static final double ETHANOL = 46.06844;

    /**
     * A solute.
     *
     * @param k constant of Norrish, natural logarithm
     */
    private record Solute(double gramsPerMole, double k) {}

    private static final Map<Substance, Solute> SOLUTES = new EnumMap<>(Map.of(
            Substance.SUCROSE, new Solute(342.297, 6.47),
            Substance.GLUCOSE, new Solute(180.156, 2.25),
            Substance.FRUCTOSE, new Solute(180.156, 2.25),
            Substance.MALTOSE, new Solute(342.297, 4.54),
            Substance.LACTOSE, new Solute(342.297, 10.2),
            Substance.GLYCEROL, new Solute(92.094, 1.16),
            Substance.CITRIC, new Solute(Acid.CITRIC.gramsPerMole(), 6.17),
            Substance.MALIC, new Solute(Acid.MALIC.gramsPerMole(), 1.82),
            Substance.TARTARIC, new Solute(Acid.TARTARIC.gramsPerMole(), 4.68),
            Substance.LACTIC, new Solute(Acid.LACTIC.gramsPerMole(), -1.59)));

    private WaterActivity() {}

    /** Returns the water activity; 0 where there is no water. */
    public static double of(Contents contents) {
        double water = contents.grams(Substance.WATER) / WATER;
        if (water == 0.0) {
            return 0.0;
        }
        double ethanol = contents.grams(Substance.ETHANOL) / ETHANOL;
        double activity = Vapour.waterActivity(ethanol / (ethanol + water), KELVIN);
        for (Map.Entry<Substance, Solute> each : SOLUTES.entrySet()) {
            double moles = contents.grams(each.getKey()) / each.getValue().gramsPerMole();
            double part = moles / (moles + water);
            activity *= (1.0 - part) * Math.exp(-each.getValue().k() * part * part);
        }
        return activity;
    }
}
