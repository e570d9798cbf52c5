package org.stillroom.core.clarity;

import org.stillroom.core.aroma.ConstituentGroup;

/**
 * A constituent of an oil as the forecast sees it.
 *
 * @param key CAS number, or whatever it was called where it has none in the table
 * @param name the name that we show
 * @param formula empirical formula, empty where it is not known
 * @param gramsPerMole molar mass
 * @param gramsPerLitreInWater solubility in water at 25 °C, of the liquid also where the pure substance is a solid
 * @param logP decimal logarithm of the octanol–water partition coefficient
 * @param gramsPerMillilitre density near 20 °C
 * @param doubtFactor factor by which an estimated solubility may be off besides the doubt common to all, one standard deviation; 1
 *     where the constituent is in the table
 */
public record OilPart(
        String key,
        String name,
        String formula,
        double gramsPerMole,
        double gramsPerLitreInWater,
        double logP,
        double gramsPerMillilitre,
        double doubtFactor) {
    /** Returns whether its solubility is estimated from its family alone. */
    public boolean estimated() {
        return doubtFactor > 1.0;
    }

    /** Returns whether it is a monoterpene hydrocarbon, what folding takes out of an oil. */
    public boolean isMonoterpene() {
        return formula.equals("C10H16")
                || formula.equals("C10H14")
                || name.equals(ConstituentGroup.MONOTERPENES.label());
    }

    /** Returns whether it is a terpene or sesquiterpene hydrocarbon, the part that terpeneless oils leave out. */
    public boolean isTerpeneHydrocarbon() {
        return isMonoterpene() || formula.equals("C15H24") || name.equals(ConstituentGroup.SESQUITERPENES.label());
    }
}
