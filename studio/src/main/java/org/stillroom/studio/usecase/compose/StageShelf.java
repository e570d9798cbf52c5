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
 * <p>A recipe is meant by its id, by its title with hyphens as good as blanks, by {@link #fileName} of it in whatever folder, or by
 * the name of the file that it was brought in from, which is the note of its first revision.
 */
public final class StageShelf {
    /** The longest chain of recipes that come from each other, as in files. */
    private static final int LONGEST_CHAIN = 12;

    private final Recipes recipes;
    private final OunceMeaning ounce;
    private final Map<String, Revision> pinned;

    public StageShelf(Recipes recipes, OunceMeaning ounce) {
        this(recipes, ounce, Map.of());
    }

    /**
     * Finds recipes of which some are settled.
     *
     * @param pinned revisions to use, by the text of "from"; of others the latest is used
     */
    public StageShelf(Recipes recipes, OunceMeaning ounce, Map<String, Revision> pinned) {
        this.recipes = recipes;
        this.ounce = ounce;
        this.pinned = Map.copyOf(pinned);
    }

    /**
     * What was found.
     *
     * @param making the recipe with its stages, or null when one is missing
     * @param problems what is missing
     * @param used the revisions of the stages, by the text of "from"
     */
    public record Found(@Nullable Making making, List<Finding> problems, Map<String, Revision> used) {
        public Found {
            problems = List.copyOf(problems);
            used = Map.copyOf(used);
        }
    }

    /** What is found on the way down. */
    private static final class Search {
        private final List<Finding> problems = new ArrayList<>();
        private final Map<String, Revision> used = new LinkedHashMap<>();
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
        Search search = new Search();
        Making making = making(recipe, search, List.of());
        return new Found(search.problems.isEmpty() ? making : null, search.problems, search.used);
    }

    private Making making(Recipe recipe, Search search, List<String> chain) {
        Map<String, Making> stages = new LinkedHashMap<>();
        for (Ingredient ingredient : recipe.ingredients()) {
            String from = ingredient.from();
            if (from != null) {
                Making stage = stage(ingredient.name(), from, search, chain);
                if (stage != null) {
                    stages.put(from, stage);
                }
            }
        }
        return new Making(recipe, stages);
    }

    private @Nullable Making stage(String ingredient, String from, Search search, List<String> chain) {
        if (chain.contains(from) || chain.size() >= LONGEST_CHAIN) {
            search.problems.add(inACircle(ingredient, from));
            return null;
        }
        Optional<Revision> revision = revision(from);
        if (revision.isEmpty()) {
            search.problems.add(notFound(ingredient, from));
            return null;
        }
        RecipeReading reading = new RecipeReader(ounce).read(revision.get().text());
        if (reading instanceof RecipeReading.Refused refused) {
            search.problems.addAll(refused.problems());
            return null;
        }
        search.used.put(from, revision.get());
        List<String> longer = new ArrayList<>(chain);
        longer.add(from);
        return making(((RecipeReading.Understood) reading).recipe(), search, longer);
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

    private Optional<Revision> revision(String from) {
        Revision settled = pinned.get(from);
        if (settled != null) {
            return Optional.of(settled);
        }
        return recipes.heads(false).stream()
                .filter(head -> head.revision() > 0 && isMeant(head, from))
                .findFirst()
                .flatMap(head -> recipes.latest(head.id()));
    }

    private boolean isMeant(RecipeHead head, String from) {
        String file = from.substring(from.lastIndexOf('/') + 1);
        return head.id().equals(from)
                || alike(head.title()).equals(alike(file))
                || fileName(head.title()).equals(file)
                || recipes.revision(head.id(), 1)
                        .map(Revision::note)
                        .filter(file::equals)
                        .isPresent();
    }

    private static String alike(String name) {
        return name.replaceFirst("\\.ya?ml$", "").replace('-', ' ').strip().toLowerCase(Locale.ROOT);
    }
}
