package org.stillroom.studio.usecase.compose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Target;
import org.stillroom.studio.recipefile.RecipeForm;

/** Where a recipe starts: from one bottle, never from an empty page. */
public final class StartRecipe {
    private StartRecipe() {}

    /**
     * Returns a recipe of one litre that brings a bottle down to a usual liqueur; common practice, see StartingPoints.
     *
     * @param name of the ingredient
     * @param fields of the ingredient by the keys of a recipe file; empty for one that is built in
     */
    public static RecipeForm from(String name, Map<String, String> fields) {
        RecipeForm form = RecipeForm.of(Map.of(
                "title", "From " + name, "target.volume", "1 L", "target.strength", "25 %", "target.sugar", "200 g/L"));
        if (!fields.isEmpty()) {
            form = form.plus("ingredients", fields);
        }
        return form.plus("lines", line(name)).plus("lines", line("white sugar")).plus("lines", line("water"));
    }

    private static Map<String, String> line(String use) {
        Map<String, String> line = new LinkedHashMap<>();
        line.put("use", use);
        line.put("amount", "free");
        return line;
    }

    /** Returns the fields of an ingredient by the keys of a recipe file. */
    public static Map<String, String> fieldsOf(Ingredient ingredient) {
        Recipe alone = new Recipe(
                "",
                Target.OPEN,
                List.of(ingredient),
                List.of(),
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                null);
        Map<String, String> fields = new LinkedHashMap<>();
        String start = "ingredients.0.";
        RecipeForm.of(alone).fields().forEach((key, text) -> {
            if (key.startsWith(start)) {
                fields.put(key.substring(start.length()), text);
            }
        });
        return fields;
    }
}
