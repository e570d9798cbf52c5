package org.stillroom.core.recipe;

import org.jspecify.annotations.Nullable;

/**
 * What is to be least, or used up, where several plans reach the target.
 *
 * @param what the aim
 * @param ingredient the ingredient to use up, or null for the other aims
 */
public record Aim(What what, @Nullable String ingredient) {
    /** The aims that a maker can name. */
    public enum What {
        LEAST_COST("least cost"),
        LEAST_SPIRIT("least spirit"),
        LEAST_WATER("least water"),
        USE_UP("use up");

        private final String label;

        What(String label) {
            this.label = label;
        }

        /** Returns the aim as people write it in a recipe file. */
        public String label() {
            return label;
        }
    }
}
