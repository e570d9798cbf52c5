package org.stillroom.core.recipe;

import java.util.Map;

/**
 * A recipe together with the recipes that its ingredients come from, all the way down; free of circles.
 *
 * @param recipe what is made
 * @param stages for each name in {@code from} of its ingredients, the making of that stage
 */
public record Making(Recipe recipe, Map<String, Making> stages) {
    public Making {
        stages = Map.copyOf(stages);
    }

    /** Returns the making of a recipe that uses no other. */
    public static Making alone(Recipe recipe) {
        return new Making(recipe, Map.of());
    }
}
