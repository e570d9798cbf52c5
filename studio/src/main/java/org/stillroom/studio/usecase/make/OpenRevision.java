package org.stillroom.studio.usecase.make;

import java.util.ArrayList;
import java.util.HashMap;
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
 * Opens a saved revision with the recipes of the studio that its ingredients come from.
 *
 * <p>A "from" names a recipe by its title, with or without ".yaml", hyphens as good as blanks; or by its id.
 */
public final class OpenRevision {
    private static final int LONGEST_CHAIN = 12;

    private final Recipes recipes;
    private final RecipeReader reader;
    private final Map<String, MakeStart.Pinned> pinned;
    private final Map<String, MakeStart.Pinned> used = new LinkedHashMap<>();
    private final List<Finding> problems = new ArrayList<>();

    private OpenRevision(Recipes recipes, OunceMeaning ounce, Map<String, MakeStart.Pinned> pinned) {
        this.recipes = recipes;
        this.reader = new RecipeReader(ounce);
        this.pinned = pinned;
    }

    /** What comes of it. */
    public sealed interface Outcome {
        /**
         * It can be planned.
         *
         * @param stages the revisions that it uses
         */
        record Opened(Making making, Map<String, MakeStart.Pinned> stages) implements Outcome {}

        /** It cannot; everything that is in the way. */
        record Refused(List<Finding> problems) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    /**
     * Returns a revision ready to be planned.
     *
     * @param pinned revisions to use for stages, by the text of "from"; others take the latest
     */
    public static Outcome answer(
            Recipes recipes, Revision revision, Map<String, MakeStart.Pinned> pinned, OunceMeaning ounce) {
        OpenRevision opening = new OpenRevision(recipes, ounce, pinned);
        Making making = opening.open(revision, 0);
        return making == null || !opening.problems.isEmpty()
                ? new Outcome.Refused(opening.problems)
                : new Outcome.Opened(making, opening.used);
    }

    private @Nullable Making open(Revision revision, int depth) {
        RecipeReading reading = reader.read(revision.text());
        if (reading instanceof RecipeReading.Refused refused) {
            problems.addAll(refused.problems());
            return null;
        }
        Recipe recipe = ((RecipeReading.Understood) reading).recipe();
        Map<String, Making> stages = new HashMap<>();
        for (Ingredient ingredient : recipe.ingredients()) {
            Making stage = ingredient.from() == null ? null : stage(ingredient.name(), ingredient.from(), depth);
            if (stage != null && ingredient.from() != null) {
                stages.put(ingredient.from(), stage);
            }
        }
        return new Making(recipe, stages);
    }

    private @Nullable Making stage(String ingredient, String from, int depth) {
        Optional<Revision> revision = depth >= LONGEST_CHAIN ? Optional.empty() : revision(from);
        if (revision.isEmpty()) {
            problems.add(Finding.of(
                    "recipe-not-found",
                    Severity.STOP,
                    ingredient + ", from",
                    "not found",
                    depth >= LONGEST_CHAIN
                            ? "Recipes come from each other in a circle, or in a chain of more than " + LONGEST_CHAIN
                                    + "."
                            : "No recipe of this studio is called “" + from + "”.",
                    "Save that recipe first, or give the ingredient's own figures instead of “from”."));
            return null;
        }
        used.put(
                from,
                new MakeStart.Pinned(revision.get().recipe(), revision.get().number()));
        return open(revision.get(), depth + 1);
    }

    private Optional<Revision> revision(String from) {
        MakeStart.Pinned known = pinned.get(from);
        if (known != null) {
            return recipes.revision(known.recipe(), known.revision());
        }
        return recipes.heads(false).stream()
                .filter(head -> isMeant(head, from))
                .findFirst()
                .flatMap(head -> recipes.latest(head.id()));
    }

    private static boolean isMeant(RecipeHead head, String from) {
        return head.id().equals(from) || alike(head.title()).equals(alike(from));
    }

    private static String alike(String name) {
        return name.replaceFirst("\\.ya?ml$", "").replace('-', ' ').strip().toLowerCase(Locale.ROOT);
    }
}
