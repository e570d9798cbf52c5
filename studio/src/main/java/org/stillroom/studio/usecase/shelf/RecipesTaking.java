package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;

/**
 * Tells which recipes take what, and how much of it.
 *
 * <p>A revision never changes, so what was once worked out of it is kept, for the latest {@value #MOST_KEPT} of them.
 */
public final class RecipesTaking {
    private static final int MOST_KEPT = 500;

    private final Recipes recipes;
    private final Map<String, List<TakenBy>> worked = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, List<TakenBy>> eldest) {
            return size() > MOST_KEPT;
        }
    };

    public RecipesTaking(Recipes recipes) {
        this.recipes = recipes;
    }

    /**
     * Returns what each recipe at work takes by its latest revision.
     *
     * @param ounce what "oz" means in recipes that do not say
     */
    public List<TakenBy> all(OunceMeaning ounce) {
        List<TakenBy> all = new ArrayList<>();
        for (RecipeHead head : recipes.heads(false)) {
            if (head.revision() > 0) {
                all.addAll(taken(head, ounce));
            }
        }
        return all;
    }

    /** Returns those of them that take an ingredient of that name. */
    public static List<TakenBy> of(String name, List<TakenBy> all) {
        return all.stream()
                .filter(taken -> Generics.same(name, taken.ingredient()))
                .toList();
    }

    private synchronized List<TakenBy> taken(RecipeHead head, OunceMeaning ounce) {
        String key = head.id() + "/" + head.revision() + "/" + ounce;
        List<TakenBy> known = worked.get(key);
        if (known == null) {
            known = recipes.revision(head.id(), head.revision())
                    .map(revision -> taken(revision, ounce))
                    .orElse(List.of());
            worked.put(key, known);
        }
        return known;
    }

    private static List<TakenBy> taken(Revision revision, OunceMeaning ounce) {
        if (!(new RecipeReader(ounce).read(revision.text()) instanceof RecipeReading.Understood understood)) {
            return List.of();
        }
        Recipe recipe = understood.recipe();
        if (Planner.plan(Making.alone(recipe)) instanceof Planning.Planned planned) {
            Plan plan = planned.plan();
            return plan.lines().stream()
                    .map(line -> taken(revision, line, plan))
                    .toList();
        }
        return recipe.lines().stream().map(line -> named(revision, line)).toList();
    }

    private static TakenBy taken(Revision revision, PlannedLine line, Plan plan) {
        return new TakenBy(
                revision.recipe(),
                revision.title(),
                line.name(),
                OptionalDouble.of(line.grams()),
                line.millilitres(),
                OptionalDouble.of(plan.millilitres()));
    }

    private static TakenBy named(Revision revision, Line line) {
        OptionalDouble unknown = OptionalDouble.empty();
        return new TakenBy(revision.recipe(), revision.title(), line.use(), unknown, unknown, unknown);
    }
}
