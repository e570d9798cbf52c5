package org.stillroom.studio.recipefile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The names that fields of a form may have. */
final class FormNames {
    private static final Pattern ITEM = Pattern.compile("(measures|ingredients|lines|steps)\\.(\\d{1,3})(?:\\.(.+))?");

    private FormNames() {}

    static boolean isKnown(String name) {
        return name.startsWith(RecipeForm.TAKEN_OUT)
                ? ITEM.matcher(name.substring(RecipeForm.TAKEN_OUT.length())).matches()
                        && isOfRecipe(name.substring(RecipeForm.TAKEN_OUT.length()))
                : isOfRecipe(name);
    }

    private static boolean isOfRecipe(String name) {
        Matcher item = ITEM.matcher(name);
        if (item.matches()) {
            String key = item.group(3);
            return switch (item.group(1)) {
                case "measures" -> key != null && (Keys.MEASURE.contains(key) || key.matches("sizes\\.\\d{1,2}"));
                case "ingredients" -> key != null && isOfIngredient(key);
                case "lines" -> key != null && Keys.LINE.contains(key);
                default -> key == null;
            };
        }
        if (name.startsWith("target.")) {
            return Keys.TARGET.contains(name.substring("target.".length()));
        }
        return Keys.RECIPE.contains(name) && !name.equals("stillroom") && !name.equals("target");
    }

    private static boolean isOfIngredient(String key) {
        String contains = "contains.";
        return key.startsWith(contains)
                ? Keys.CONTAINS.contains(key.substring(contains.length()))
                : Keys.INGREDIENT.contains(key);
    }
}
