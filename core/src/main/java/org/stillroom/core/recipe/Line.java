package org.stillroom.core.recipe;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Drops;

/**
 * One line of a recipe.
 *
 * @param use name of the ingredient
 * @param amount how much
 * @param with name of the measure to take it with, or null for the best that fits
 * @param note anything else the maker wrote, or null
 */
public record Line(
        String use,
        LineAmount amount,
        @Nullable String with,
        @Nullable String note) {
    /** Returns whether it is dosed in drops, as a whole or per litre. */
    public boolean isInDrops() {
        if (amount instanceof LineAmount.PerLitre dosed) {
            return dosed.dose().value().perLitre() instanceof Drops;
        }
        return amount instanceof LineAmount.Fixed fixed && fixed.amount().value() instanceof Drops;
    }
}
