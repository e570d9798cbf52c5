package org.stillroom.core.recipe;

import java.util.List;

/**
 * What is to be least, or used up, where several plans reach the target.
 *
 * @param what the aim
 * @param ingredients the ingredients to use up, none for the other aims
 */
public record Aim(What what, List<String> ingredients) {
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

    public Aim {
        ingredients = List.copyOf(ingredients);
    }

    /** Returns an aim that needs no ingredient. */
    public static Aim of(What what) {
        return new Aim(what, List.of());
    }

    /** Returns the aim to use up these ingredients together. */
    public static Aim usingUp(List<String> ingredients) {
        return new Aim(What.USE_UP, ingredients);
    }
}
