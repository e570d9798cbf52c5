package org.stillroom.planner.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;

/** Answers "what if": plans a recipe again with something changed. */
public final class Explorations {
    private Explorations() {}

    /**
     * Plans a recipe with each of several strengths in place of that of its spirits.
     *
     * <p>Changed are the spirits of free lines in the recipe itself, not in its stages. Their price and the amount at hand are
     * left as they are, since nothing says what another bottle costs.
     *
     * @param strengths % vol; stated at 20 °C
     */
    public static Exploration spirits(Making making, List<AlcoholByVolume> strengths) {
        Map<String, Ingredient> spirits = freeSpirits(making.recipe());
        if (spirits.isEmpty()) {
            return new Exploration(List.of(), List.of());
        }
        List<Exploration.Row> rows = new ArrayList<>();
        for (AlcoholByVolume strength : strengths) {
            Recipe changed = with(making.recipe(), spirits, strength);
            rows.add(row(strength, Planner.plan(new Making(changed, making.stages()))));
        }
        return new Exploration(List.copyOf(spirits.keySet()), rows);
    }

    private static Map<String, Ingredient> freeSpirits(Recipe recipe) {
        Map<String, Ingredient> spirits = new LinkedHashMap<>();
        for (Line line : recipe.lines()) {
            Ingredient ingredient = named(recipe, line.use());
            if (line.amount() instanceof LineAmount.Free
                    && ingredient != null
                    && ingredient.kind() == Kind.SPIRIT
                    && ingredient.from() == null) {
                spirits.put(line.use(), ingredient);
            }
        }
        return spirits;
    }

    private static @Nullable Ingredient named(Recipe recipe, String name) {
        for (Ingredient ingredient : recipe.ingredients()) {
            if (ingredient.name().equals(name)) {
                return ingredient;
            }
        }
        Generic generic = Generics.find(name);
        return generic == null ? null : generic.ingredient();
    }

    private static Recipe with(Recipe recipe, Map<String, Ingredient> spirits, AlcoholByVolume strength) {
        Typed<Strength> typed = new Typed<>(QuantityWords.plain(strength.percent()) + " %", strength);
        List<Ingredient> ingredients = new ArrayList<>();
        // A generic is used under one of several names; the changed one must be found under the name that the line
        // says.
        spirits.forEach(
                (name, spirit) -> ingredients.add(spirit.ofStrength(typed).called(name)));
        recipe.ingredients().stream()
                .filter(ingredient -> !spirits.containsKey(ingredient.name()))
                .forEach(ingredients::add);
        return recipe.withIngredients(ingredients);
    }

    private static Exploration.Row row(AlcoholByVolume strength, Planning planning) {
        if (planning instanceof Planning.Refused refused) {
            return new Exploration.Row(strength, false, List.of(), null, refused.problems());
        }
        Plan plan = ((Planning.Planned) planning).plan();
        return new Exploration.Row(
                strength,
                plan.reached(),
                plan.lines(),
                Essentials.of(plan.liquid().toGrams()),
                plan.findings());
    }
}
