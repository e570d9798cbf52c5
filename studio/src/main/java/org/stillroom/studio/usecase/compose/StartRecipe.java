package org.stillroom.studio.usecase.compose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Target;
import org.stillroom.studio.recipefile.RecipeForm;

/** Where a recipe starts: from one bottle, never from an empty page. */
public final class StartRecipe {
    private static final String SPIRIT = "spirit 40 %";

    private StartRecipe() {}

    /**
     * Returns a recipe of one litre around what a bottle holds: an ordinary liqueur of 25 % vol and 200 g/L of sugar where that can
     * be. Common practice, no source: see {@link org.stillroom.core.recipe.StartingPoints}.
     *
     * @param title what it is called
     */
    public static RecipeForm from(String title, Ingredient bottle) {
        RecipeForm form = RecipeForm.of(Map.of("title", title, "target.volume", "1 L", "target.sugar", "200 g/L"));
        return switch (bottle.kind()) {
            case SPIRIT, DISTILLATE -> free(free(free(asking(form), bottle.name(), bottle), "white sugar"), "water");
            case WINE, LIQUEUR -> free(free(form, bottle.name(), bottle), "white sugar");
            case WATER -> around(asking(form));
            case SUGAR, SYRUP, HONEY -> free(free(free(asking(form), bottle.name(), bottle), SPIRIT), "water");
            default -> around(listed(asking(form), bottle).plus("lines", line(bottle.name(), part(bottle.kind()))));
        };
    }

    private static RecipeForm asking(RecipeForm form) {
        return form.with("target.strength", "25 %");
    }

    /** A part that shows without ruling; the maker knows better. */
    private static String part(Kind kind) {
        return switch (kind) {
            case ESSENTIAL_OIL -> "2 drops/L";
            case ESSENCE -> "4 ml/L";
            case TINCTURE, MACERATE, HYDROSOL -> "20 ml/L";
            case JUICE, DAIRY -> "200 ml/L";
            case ACID, SALT -> "1 g/L";
            default -> "20 g/L";
        };
    }

    /** Spirit, sugar and water; the maker has none of them in hand yet. */
    private static RecipeForm around(RecipeForm form) {
        return free(free(free(form, SPIRIT), "white sugar"), "water");
    }

    private static RecipeForm free(RecipeForm form, String name, Ingredient bottle) {
        return free(listed(form, bottle), name);
    }

    private static RecipeForm free(RecipeForm form, String name) {
        return form.plus("lines", line(name, "free"));
    }

    private static Map<String, String> line(String use, String amount) {
        Map<String, String> line = new LinkedHashMap<>();
        line.put("use", use);
        line.put("amount", amount);
        return line;
    }

    /** Built-in ingredients need no listing. */
    private static RecipeForm listed(RecipeForm form, Ingredient ingredient) {
        Generic generic = Generics.find(ingredient.name());
        return generic != null && generic.ingredient().equals(ingredient) ? form : with(form, ingredient);
    }

    /** Returns the form with what an ingredient is, in place of what was listed under its name. */
    public static RecipeForm with(RecipeForm form, Ingredient ingredient) {
        for (int i = 0; i < form.count("ingredients"); i++) {
            if (Generics.same(form.typed("ingredients." + i + ".name"), ingredient.name())) {
                return form.minus("ingredients", i).plus("ingredients", fields(ingredient));
            }
        }
        return form.plus("ingredients", fields(ingredient));
    }

    /** Returns the form with an ingredient and a free line of it. */
    public static RecipeForm pouring(RecipeForm form, Ingredient ingredient) {
        return free(form, ingredient.name(), ingredient);
    }

    /** Returns the form with a line using another ingredient. */
    public static RecipeForm swapping(RecipeForm form, int line, Ingredient other) {
        return listed(form, other).with("lines." + line + ".use", other.name()).with("lines." + line + ".meant", "");
    }

    private static Map<String, String> fields(Ingredient ingredient) {
        Recipe alone = Recipe.plain("", Target.OPEN, List.of(ingredient), List.of());
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
