package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
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

/** A recipe as texts under the keys of a recipe file, in the order in which they are written; every quantity as it was typed. */
final class RecipeTree {
    private RecipeTree() {}

    static Map<String, Object> of(Recipe recipe) {
        Map<String, Object> tree = new LinkedHashMap<>();
        put(tree, "title", recipe.title());
        put(tree, "makes", recipe.makes() == null ? null : recipe.makes().label());
        putAll(tree, "target", target(recipe.target()));
        put(tree, "ounce", recipe.ounce() == null ? null : ounce(recipe.ounce().value()));
        put(tree, "room", typed(recipe.room()));
        put(tree, "vessel", typed(recipe.vessel()));
        putAll(tree, "measures", recipe.measures(), RecipeTree::measure);
        put(tree, "aim", recipe.aim() == null ? null : AimText.written(recipe.aim()));
        putAll(tree, "ingredients", recipe.ingredients(), RecipeTree::ingredient);
        putAll(tree, "lines", recipe.lines(), RecipeTree::line);
        put(tree, "rest", typed(recipe.rest()));
        put(tree, "loss", typed(recipe.loss()));
        put(tree, "ph", typed(recipe.ph()));
        put(
                tree,
                "pasteurised",
                recipe.treatment() == null ? null : recipe.treatment().label());
        if (!recipe.steps().isEmpty()) {
            tree.put("steps", recipe.steps());
        }
        put(tree, "notes", recipe.notes());
        return tree;
    }

    private static void putAll(Map<String, Object> tree, String key, Map<String, Object> group) {
        if (!group.isEmpty()) {
            tree.put(key, group);
        }
    }

    private static <T> void putAll(
            Map<String, Object> tree, String key, List<T> items, Function<T, Map<String, Object>> group) {
        if (!items.isEmpty()) {
            List<Object> groups = new ArrayList<>();
            items.forEach(item -> groups.add(group.apply(item)));
            tree.put(key, groups);
        }
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
        put(fields, "drop", typed(measure.drop()));
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
        put(fields, "aroma", typed(ingredient.aroma()));
        put(fields, "plant", ingredient.plant());
        put(fields, "ratio", typed(ingredient.ratio()));
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
        put(fields, "meant", typed(line.meant()));
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
}
