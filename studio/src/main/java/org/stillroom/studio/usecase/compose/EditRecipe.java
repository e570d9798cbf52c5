package org.stillroom.studio.usecase.compose;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Scaling;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.usecase.WorkedPlan;

/** The changes to a form that a press of a button asks for. */
public final class EditRecipe {
    private EditRecipe() {}

    /**
     * Returns the form after a change.
     *
     * @param asked what the button says, such as "remove-line:2"; what is not known changes nothing
     * @param worked the plan of the form, for changes that take figures from it, or null
     */
    public static RecipeForm after(RecipeForm form, String asked, @Nullable WorkedPlan worked) {
        String what = asked.contains(":") ? asked.substring(0, asked.indexOf(':')) : asked;
        int at = number(asked);
        return switch (what) {
            case "add-line" -> form.plus("lines", Map.of("use", "", "amount", ""));
            case "remove-line" -> form.minus("lines", at);
            case "free-line" -> form.with("lines." + at + ".amount", "free");
            case "hold-line" -> held(form, at, worked);
            case "add-ingredient" -> form.plus("ingredients", Map.of("name", "", "kind", "spirit"));
            case "remove-ingredient" -> form.minus("ingredients", at);
            case "add-measure" -> form.plus("measures", Map.of("name", "", "kind", "scale"));
            case "remove-measure" -> form.minus("measures", at);
            case "add-step" -> form.plus("steps", Map.of("", ""));
            case "remove-step" -> form.minus("steps", at);
            case "double" -> scaled(form, worked, 2.0);
            case "halve" -> scaled(form, worked, 0.5);
            default -> form;
        };
    }

    private static int number(String asked) {
        String digits = asked.substring(asked.indexOf(':') + 1);
        return digits.matches("\\d{1,3}") ? Integer.parseInt(digits) : -1;
    }

    /** Holds a line at the amount that the plan gives it. */
    private static RecipeForm held(RecipeForm form, int at, @Nullable WorkedPlan worked) {
        if (worked == null || at < 0 || at >= worked.plan().lines().size()) {
            return form;
        }
        double grams = worked.plan().lines().get(at).grams();
        return form.with("lines." + at + ".amount", QuantityWords.fixed(grams, grams < 10 ? 2 : 1) + " g");
    }

    /** Makes it so many times as large: fixed amounts and the size; doses and strengths stay. */
    private static RecipeForm scaled(RecipeForm form, @Nullable WorkedPlan worked, double factor) {
        if (worked == null) {
            return form;
        }
        Making making = Scaling.times(Making.alone(worked.plan().recipe()), factor);
        return RecipeForm.of(making.recipe());
    }
}
