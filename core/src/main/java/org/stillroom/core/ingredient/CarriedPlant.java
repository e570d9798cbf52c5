package org.stillroom.core.ingredient;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Typed;

/**
 * The plant that an extract brings into what is made: all of what stood in it, whatever of that went over.
 *
 * @param plant as its maker calls it
 * @param ratio as typed
 * @param gramsPerLitre g of plant, as it went into the extract, per litre of what is made
 */
public record CarriedPlant(String plant, String ratio, double gramsPerLitre) {
    /**
     * Returns what an ingredient brings, or null where nobody said how much plant it carries.
     *
     * @param gramsOfIngredient per litre of what is made
     */
    public static @Nullable CarriedPlant of(Resolved ingredient, double gramsOfIngredient) {
        Typed<PlantRatio> ratio = ingredient.ingredient().ratio();
        double plant = ingredient.gramsOfPlant();
        return ratio != null && plant * gramsOfIngredient > 0.0
                ? new CarriedPlant(ingredient.ingredient().plants(), ratio.text(), plant * gramsOfIngredient)
                : null;
    }
}
