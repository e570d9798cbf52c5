package org.stillroom.studio.usecase.shelf;

import java.util.OptionalDouble;

/**
 * What a recipe takes of an ingredient.
 *
 * @param recipe id of the recipe
 * @param title of the recipe
 * @param ingredient name under which a line of it takes it
 * @param grams how much, or empty when the recipe cannot be planned as it is
 * @param millilitres the same by volume at 20 °C, or empty for solids too
 * @param makesMillilitres volume of what the recipe makes, or empty when it cannot be planned as it is
 */
public record TakenBy(
        String recipe,
        String title,
        String ingredient,
        OptionalDouble grams,
        OptionalDouble millilitres,
        OptionalDouble makesMillilitres) {
    /** Returns how much it takes in a unit, or empty where that is not known. */
    OptionalDouble in(String unit) {
        return unit.equals(Stock.GRAMS) ? grams : unit.equals(Stock.MILLILITRES) ? millilitres : OptionalDouble.empty();
    }
}
