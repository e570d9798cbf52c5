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
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;

/**
 * Finds the recipes that others take "from" among the recipes of the studio.
 *
 * <p>A recipe is meant by its title, by {@link #fileName} of it in whatever folder, or by the name of the file that it was brought
 * in from, which is the note of its first revision.
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
            if (from != null) {
                Making stage = stage(ingredient.name(), from, problems, chain);
                if (stage != null) {
                    stages.put(from, stage);
                }
            }
        }
        return new Making(recipe, stages);
    }

    private @Nullable Making stage(String ingredient, String from, List<Finding> problems, List<String> chain) {
        if (chain.contains(from) || chain.size() >= LONGEST_CHAIN) {
            problems.add(inACircle(ingredient, from));
            return null;
        }
        Optional<Recipe> source = source(from);
        if (source.isEmpty()) {
            problems.add(notFound(ingredient, from));
            return null;
        }
        List<String> longer = new ArrayList<>(chain);
        longer.add(from);
        return making(source.orElseThrow(), problems, longer);
    }

    private static Finding inACircle(String ingredient, String from) {
        return Finding.of(
                "recipe-circle",
                Severity.STOP,
                ingredient + ", from",
                "a circle",
                "Recipes come from each other in a circle by way of “" + from + "”.",
                "Take one of the “from” out of the circle.");
    }

    private static Finding notFound(String ingredient, String from) {
        return Finding.of(
                "recipe-not-found",
                Severity.STOP,
                ingredient + ", from",
                "not found",
                "No recipe of this studio is “" + from + "”.",
                "Bring that recipe in too, write the name of one that is here, or give the ingredient's own figures.");
    }

    private Optional<Recipe> source(String from) {
        String wanted = from.substring(from.lastIndexOf('/') + 1);
        return recipes.heads(false).stream()
                .filter(head -> head.revision() > 0 && isMeant(head, wanted))
                .findFirst()
                .flatMap(head -> recipes.latest(head.id()))
                .map(Revision::text)
                .map(new RecipeReader(ounce)::read)
                .filter(RecipeReading.Understood.class::isInstance)
                .map(reading -> ((RecipeReading.Understood) reading).recipe());
    }

    private boolean isMeant(RecipeHead head, String wanted) {
        return head.title().equalsIgnoreCase(wanted)
                || fileName(head.title()).equals(wanted)
                || recipes.revision(head.id(), 1)
                        .map(Revision::note)
                        .filter(wanted::equals)
                        .isPresent();
    }
}
