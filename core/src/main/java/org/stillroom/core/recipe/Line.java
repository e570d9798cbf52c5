package org.stillroom.core.recipe;

import org.jspecify.annotations.Nullable;

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
        @Nullable String note) {}
