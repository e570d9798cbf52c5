package org.stillroom.studio.usecase.compose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Scaling;
import org.stillroom.core.recipe.Target;
import org.stillroom.studio.recipefile.RecipeForm;

/** The changes to a form that a press of a button asks for. */
public final class EditRecipe {
    private final Composed composed;
    private final RecipeForm form;

    private EditRecipe(Composed composed) {
        this.composed = composed;
        this.form = composed.form();
    }

    /**
     * Returns the form after a change.
     *
     * @param asked what the button says: a word, and after a colon what it is about, such as "remove:lines.2"; what is not known
     *     changes nothing
     */
    public static RecipeForm after(Composed composed, String asked) {
        int colon = asked.indexOf(':');
        String word = colon < 0 ? asked : asked.substring(0, colon);
        return new EditRecipe(composed).after(word, asked.substring(colon + 1));
    }

    /** Returns the form with a line dosed with a dropper, which is listed among the measures in place of one of its name. */
    public static RecipeForm dosing(RecipeForm form, int line, Measure dropper) {
        Recipe alone = Recipe.plain("", Target.OPEN, List.of(), List.of()).measuredWith(List.of(dropper));
        Map<String, String> fields = new LinkedHashMap<>();
        String start = "measures.0.";
        RecipeForm.of(alone).fields().forEach((key, text) -> {
            if (key.startsWith(start)) {
                fields.put(key.substring(start.length()), text);
            }
        });
        RecipeForm without = form;
        for (int i = form.count("measures") - 1; i >= 0; i--) {
            if (form.typed("measures." + i + ".name").equals(dropper.name())) {
                without = without.minus("measures", i);
            }
        }
        return without.plus("measures", fields).with("lines." + line + ".with", dropper.name());
    }

    private RecipeForm after(String word, String about) {
        return switch (word) {
            case "add" -> added(about);
            case "remove" -> removed(about);
            case "put-back" -> form.restored();
            case "free" -> form.with("lines." + about + ".amount", "free");
            case "hold" -> held(about);
            case "choose" -> chosen(about);
            case "take" -> taken(about);
            case "scale" -> scaled(about);
            default -> form;
        };
    }

    private RecipeForm added(String list) {
        return switch (list) {
            case "lines" -> form.plus(list, Map.of("use", "", "amount", ""));
            case "ingredients" -> form.plus(list, Map.of("name", "", "kind", "spirit"));
            case "measures" -> form.plus(list, Map.of("name", "", "kind", "scale"));
            case "steps" -> form.plus(list, Map.of("", ""));
            default -> form;
        };
    }

    private RecipeForm removed(String item) {
        int dot = item.indexOf('.');
        return dot < 0 ? form : form.minus(item.substring(0, dot), number(item.substring(dot + 1)));
    }

    private static int number(String digits) {
        return digits.matches("\\d{1,3}") ? Integer.parseInt(digits) : -1;
    }

    /** Holds a line at the amount that the plan gives it. */
    private RecipeForm held(String index) {
        PlannedLine line = composed.planned(number(index));
        if (line == null) {
            return form;
        }
        return form.with(
                "lines." + index + ".amount", QuantityWords.fixed(line.grams(), line.grams() < 10 ? 2 : 1) + " g");
    }

    /** Takes one of the meanings that a text may have. */
    private RecipeForm chosen(String fieldAndText) {
        int equal = fieldAndText.indexOf('=');
        return equal < 0 ? form : form.with(fieldAndText.substring(0, equal), fieldAndText.substring(equal + 1));
    }

    /** Takes fields of one item, such as "ingredients.0|strength=95.2 %|tolerance=0.3 %". */
    private RecipeForm taken(String itemAndFields) {
        String[] parts = itemAndFields.split("\\|", -1);
        RecipeForm now = form;
        for (int i = 1; i < parts.length; i++) {
            int equal = parts[i].indexOf('=');
            now = equal < 0
                    ? now
                    : now.with(parts[0] + "." + parts[i].substring(0, equal), parts[i].substring(equal + 1));
        }
        return now;
    }

    /** Makes it in another size: fixed amounts and the volume in proportion; doses and strengths stay. */
    private RecipeForm scaled(String size) {
        Double factor = factor(size);
        Making making = composed.making();
        return making == null || factor == null || factor <= 0.0
                ? form
                : RecipeForm.of(
                        Scaling.times(Making.alone(making.recipe()), factor).recipe());
    }

    private @Nullable Double factor(String size) {
        if (size.equals("half") || size.equals("twice")) {
            return size.equals("half") ? 0.5 : 2.0;
        }
        Understanding<Volume> wanted = new QuantityText(OunceMeaning.US_FLUID).volume(size);
        return wanted instanceof Understanding.Understood<Volume> understood && composed.worked() != null
                ? understood.typed().value().millilitres()
                        / composed.worked().plan().millilitres()
                : null;
    }
}
