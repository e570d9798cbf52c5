package org.stillroom.studio.usecase.compose;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;

/**
 * Finds the recipes that others take "from" among the recipes of the studio.
 *
 * <p>A name finds the recipe whose file it would be: {@link #fileName} of its title, in whatever folder.
 */
public final class StageShelf {
    /** The longest chain of recipes that come from each other, as in files. */
    private static final int LONGEST_CHAIN = 12;

    private final Recipes recipes;
    private final OunceMeaning ounce;

    public StageShelf(Recipes recipes, OunceMeaning ounce) {
        this.recipes = recipes;
        this.ounce = ounce;
    }

    /**
     * What was found.
     *
     * @param making the recipe with its stages, or null when one is missing
     * @param problems what is missing
     */
    public record Found(@Nullable Making making, List<Finding> problems) {
        public Found {
            problems = List.copyOf(problems);
        }
    }

    /** Returns the name of the file that a recipe is exported as: its title in plain letters. */
    public static String fileName(String title) {
        String plain = Normalizer.normalize(title.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        return (plain.isEmpty() ? "recipe" : plain) + ".yaml";
    }

    /** Returns a recipe with all that it comes from. */
    public Found making(Recipe recipe) {
        List<Finding> problems = new ArrayList<>();
        Making making = making(recipe, problems, List.of());
        return problems.isEmpty() ? new Found(making, List.of()) : new Found(null, problems);
    }

    private Making making(Recipe recipe, List<Finding> problems, List<String> chain) {
        Map<String, Making> stages = new LinkedHashMap<>();
        for (Ingredient ingredient : recipe.ingredients()) {
            String from = ingredient.from();
            if (from == null) {
                continue;
            }
            if (chain.contains(from) || chain.size() >= LONGEST_CHAIN) {
                problems.add(Finding.of(
                        "recipe-circle",
                        Severity.STOP,
                        ingredient.name() + ", from",
                        "a circle",
                        "Recipes come from each other in a circle by way of " + from + ".",
                        "Take one of the “from” out of the circle."));
                continue;
            }
            Optional<Recipe> source = source(from);
            if (source.isEmpty()) {
                problems.add(Finding.of(
                        "recipe-not-found",
                        Severity.STOP,
                        ingredient.name() + ", from",
                        "not found",
                        "No recipe of this studio would be the file " + from + ".",
                        "Import that file too, or give the ingredient's own figures instead of “from”."));
                continue;
            }
            List<String> longer = new ArrayList<>(chain);
            longer.add(from);
            stages.put(from, making(source.orElseThrow(), problems, longer));
        }
        return new Making(recipe, stages);
    }

    private Optional<Recipe> source(String from) {
        String wanted = from.substring(from.lastIndexOf('/') + 1);
        return recipes.heads(false).stream()
                .filter(head -> fileName(head.title()).equals(wanted))
                .flatMap(head -> recipes.latest(head.id()).stream())
                .map(Revision::text)
                .map(new RecipeReader(ounce)::read)
                .filter(RecipeReading.Understood.class::isInstance)
                .map(reading -> ((RecipeReading.Understood) reading).recipe())
                .findFirst();
    }
}
