package org.stillroom.studio.recipefile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;

/**
 * Writes a recipe as a file: one line for each ingredient and each thing that goes in, every quantity as it was typed.
 *
 * <p>Reading what was written gives the same recipe. Comments of a file that was read are not part of the recipe and are
 * not written.
 */
public final class RecipeWriter {
    private static final int WIDEST = 120;

    private final StringBuilder out = new StringBuilder();

    /** Whether a list was written last, after which a blank line reads better. */
    private boolean between;

    private RecipeWriter() {}

    /** Returns the recipe as the text of a file. */
    public static String write(Recipe recipe) {
        RecipeWriter writer = new RecipeWriter();
        writer.recipe(recipe);
        return writer.out.toString();
    }

    private void recipe(Recipe recipe) {
        out.append("stillroom: ").append(RecipeReader.FORMAT).append('\n');
        text("title", recipe.title());
        if (!recipe.target().equals(Target.OPEN)) {
            out.append("target: ").append(braces(target(recipe.target()))).append('\n');
        }
        text("ounce", recipe.ounce() == null ? null : ounce(recipe.ounce().value()));
        text("room", typed(recipe.room()));
        text("vessel", typed(recipe.vessel()));
        list("measures", recipe.measures().stream().map(RecipeWriter::measure).toList());
        text("aim", recipe.aim() == null ? null : AimText.written(recipe.aim()));
        list(
                "ingredients",
                recipe.ingredients().stream().map(RecipeWriter::ingredient).toList());
        list("lines", recipe.lines().stream().map(RecipeWriter::line).toList());
        text("rest", typed(recipe.rest()));
        text("loss", typed(recipe.loss()));
        if (!recipe.steps().isEmpty()) {
            if (between) {
                blankLine();
            }
            out.append("steps:\n");
            recipe.steps()
                    .forEach(step ->
                            out.append("  - ").append(value(step, "    ")).append('\n'));
        }
        text("notes", recipe.notes());
    }

    private static Map<String, Object> target(Target target) {
        Map<String, Object> fields = new LinkedHashMap<>();
        put(fields, "volume", typed(target.volume()));
        put(fields, "bottles", typed(target.bottles()));
        put(fields, "strength", typed(target.strength()));
        put(fields, "sugar", sugar(target));
        put(fields, "acidity", typed(target.acidity()));
        return fields;
    }

    private static @Nullable String sugar(Target target) {
        String text = typed(target.sugar());
        boolean said = target.sugarBasis() == SugarBasis.AS_DISSOLVED
                || (text != null
                        && text.strip().endsWith(" " + target.sugarBasis().label()));
        return text == null || said ? text : text + " " + target.sugarBasis().label();
    }

    private static String ounce(OunceMeaning meaning) {
        return meaning == OunceMeaning.US_FLUID ? Ounce.US.label() : Ounce.THIRTY.label();
    }

    private static Map<String, Object> measure(Measure measure) {
        Map<String, Object> fields = new LinkedHashMap<>();
        put(fields, "name", measure.name());
        put(fields, "kind", measure.kind().label());
        put(fields, "marks", typed(measure.marks()));
        put(fields, "tolerance", typed(measure.tolerance()));
        put(fields, "holds", typed(measure.holds()));
        if (!measure.sizes().isEmpty()) {
            fields.put("sizes", measure.sizes().stream().map(Typed::text).toList());
        }
        return fields;
    }

    private static Map<String, Object> ingredient(Ingredient ingredient) {
        Map<String, Object> fields = new LinkedHashMap<>();
        put(fields, "name", ingredient.name());
        put(fields, "kind", ingredient.kind().label());
        put(fields, "strength", typed(ingredient.strength()));
        put(fields, "tolerance", typed(ingredient.tolerance()));
        put(fields, "sugar", typed(ingredient.sugar()));
        put(fields, "acidity", typed(ingredient.acidity()));
        put(fields, "density", typed(ingredient.density()));
        put(fields, "drop", typed(ingredient.drop()));
        put(fields, "price", typed(ingredient.price()));
        put(fields, "at hand", typed(ingredient.atHand()));
        put(fields, "pack", typed(ingredient.pack()));
        if (!ingredient.contains().isEmpty()) {
            Map<String, Object> parts = new LinkedHashMap<>();
            ingredient.contains().forEach((substance, share) -> parts.put(substance.label(), share.text()));
            fields.put("contains", parts);
        }
        put(fields, "from", ingredient.from());
        put(fields, "note", ingredient.note());
        return fields;
    }

    private static Map<String, Object> line(Line line) {
        Map<String, Object> fields = new LinkedHashMap<>();
        put(fields, "use", line.use());
        LineAmount amount = line.amount();
        if (amount instanceof LineAmount.PerLitre perLitre) {
            fields.put("dose", perLitre.dose().text());
        } else {
            fields.put("amount", amount(amount));
        }
        put(fields, "with", line.with());
        put(fields, "note", line.note());
        return fields;
    }

    private static String amount(LineAmount amount) {
        if (amount instanceof LineAmount.Fixed fixed) {
            return fixed.amount().text();
        }
        if (amount instanceof LineAmount.All) {
            return LineReader.ALL;
        }
        return amount instanceof LineAmount.MakeUp ? LineReader.MAKE_UP : LineReader.FREE;
    }

    private static void put(Map<String, Object> fields, String key, @Nullable String text) {
        if (text != null) {
            fields.put(key, text);
        }
    }

    private static @Nullable String typed(@Nullable Typed<?> typed) {
        return typed == null ? null : typed.text();
    }

    private void text(String key, @Nullable String text) {
        if (text != null) {
            if (between) {
                blankLine();
            }
            out.append(key).append(": ").append(value(text, "  ")).append('\n');
        }
    }

    private void list(String key, List<Map<String, Object>> groups) {
        if (groups.isEmpty()) {
            return;
        }
        blankLine();
        out.append(key).append(":\n");
        for (Map<String, Object> group : groups) {
            String braces = braces(group);
            boolean block = group.values().stream().anyMatch(v -> v instanceof String s && YamlText.isBlock(s));
            if (braces.length() > WIDEST || block) {
                underEachOther(group);
            } else {
                out.append("  - ").append(braces).append('\n');
            }
        }
        between = true;
    }

    private void blankLine() {
        out.append('\n');
        between = false;
    }

    private void underEachOther(Map<String, Object> group) {
        String start = "  - ";
        for (Map.Entry<String, Object> field : group.entrySet()) {
            String value = field.getValue() instanceof String text ? value(text, "      ") : inBraces(field.getValue());
            out.append(start).append(field.getKey()).append(": ").append(value).append('\n');
            start = "    ";
        }
    }

    private static String value(String text, String indent) {
        return YamlText.isBlock(text) ? YamlText.block(text, indent) : YamlText.onItsOwn(text);
    }

    private static String braces(Map<?, ?> fields) {
        List<String> parts = fields.entrySet().stream()
                .map(field -> field.getKey() + ": " + inBraces(field.getValue()))
                .toList();
        return "{" + String.join(", ", parts) + "}";
    }

    private static String inBraces(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            return braces(map);
        }
        if (value instanceof List<?> list) {
            return "["
                    + String.join(
                            ", ", list.stream().map(RecipeWriter::inBraces).toList()) + "]";
        }
        return YamlText.inBraces(String.valueOf(value));
    }
}
