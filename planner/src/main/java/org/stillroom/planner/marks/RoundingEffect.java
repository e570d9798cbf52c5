package org.stillroom.planner.marks;

import org.stillroom.core.liquid.Essentials;

/**
 * What rounding did to the finished liquid: with the amounts as measured, less with the exact ones.
 *
 * @param millilitres of volume at 20 °C
 * @param strength points of % vol at 20 °C
 * @param sugar g/L, sugars by mass as dissolved
 * @param acidity g/L, as citric acid
 */
public record RoundingEffect(double millilitres, double strength, double sugar, double acidity) {
    static RoundingEffect between(Essentials exact, Essentials measured) {
        return new RoundingEffect(
                measured.millilitres() - exact.millilitres(),
                measured.strength() - exact.strength(),
                measured.sugar() - exact.sugar(),
                measured.acidity() - exact.acidity());
    }
}
