package org.stillroom.core.recipe;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Typed;

/**
 * One line of a recipe.
 *
 * @param use name of the ingredient
 * @param amount how much
 * @param with name of the measure to take it with, or null for the best that fits
 * @param note anything else the maker wrote, or null
 * @param meant that a dose of oil beyond what is plausible is meant, or null where nobody said so
 */
public record Line(
        String use,
        LineAmount amount,
        @Nullable String with,
        @Nullable String note,
        @Nullable Typed<Meant> meant) {
    /** Makes a line of which nobody said that its dose is meant. */
    public Line(String use, LineAmount amount, @Nullable String with, @Nullable String note) {
        this(use, amount, with, note, null);
    }

    /** Returns the line of another amount. */
    public Line of(LineAmount other) {
        return new Line(use, other, with, note, meant);
    }

    /** Returns the line with the answer that its dose is meant. */
    public Line meaning(Typed<Meant> answer) {
        return new Line(use, amount, with, note, answer);
    }

    /** Returns whether its maker said that so much oil is meant, g per litre of what is made. */
    public boolean means(double gramsPerLitre) {
        return meant != null && meant.value().answers(use, gramsPerLitre);
    }

    /** Returns whether it is dosed in drops, as a whole or per litre. */
    public boolean isInDrops() {
        if (amount instanceof LineAmount.PerLitre dosed) {
            return dosed.dose().value().perLitre() instanceof Drops;
        }
        return amount instanceof LineAmount.Fixed fixed && fixed.amount().value() instanceof Drops;
    }
}
