package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.reference.Finding;

/**
 * Reads an ingredient or a measure from texts typed field by field, as a form or a table has them, by the same readers as a
 * recipe file.
 *
 * <p>Fields go by the keys of the recipe file; what is under {@code contains} there is a field of its own here, under the
 * name of the substance. A blank field is taken as left out.
 */
public final class SheetReader {
    /** Keys of the fields of an ingredient besides its name and kind, in the order of the recipe file. */
    public static final List<String> INGREDIENT_FIELDS = ingredientFields();

    /** Keys of the fields of a measure besides its name and kind. */
    public static final List<String> MEASURE_FIELDS = List.of("marks", "tolerance", "holds", "sizes", "drop");

    private static final String INCOMPLETE = "ingredient-incomplete";

    /** What a recipe file writes before a value; a field needs the value alone. */
    private static final Pattern KEY_BEFORE_EXAMPLE = Pattern.compile(
            "(“|such as |or |, )(?:" + String.join("|", INGREDIENT_FIELDS) + "|marks|holds|sizes): \\[?");

    private static final Pattern PARTS_BEFORE_EXAMPLE = Pattern.compile("contains: \\{([^}]*)}");

    /** Sizes stand in a row; a comma within a number has no blank after it. */
    private static final Pattern BETWEEN_SIZES = Pattern.compile("\\s*;\\s*|,\\s+");

    private final QuantityText quantities;

    /**
     * Makes a reader.
     *
     * @param ounce what "oz" means
     */
    public SheetReader(OunceMeaning ounce) {
        this.quantities = new QuantityText(ounce);
    }

    private static List<String> ingredientFields() {
        List<String> keys = new ArrayList<>(Keys.INGREDIENT);
        keys.removeAll(List.of("name", "kind", "contains", "from"));
        keys.addAll(Keys.CONTAINS);
        return List.copyOf(keys);
    }

    /** Reads an ingredient that says enough to be counted. */
    public SheetReading<Ingredient> ingredient(String name, String kind, Map<String, String> typed) {
        Problems problems = new Problems();
        Fields fields = fields(name, kind, typed, Keys.INGREDIENT, problems);
        Ingredient ingredient = new IngredientReader(quantities, problems).ingredient(fields, name.strip());
        return problems.count() > 0 ? refused(problems) : complete(ingredient, problems.notes());
    }

    private static SheetReading<Ingredient> complete(Ingredient ingredient, List<Finding> notes) {
        Resolution resolution = Resolution.of(ingredient);
        if (resolution.resolved() != null) {
            return new SheetReading.Understood<>(ingredient, notes);
        }
        return new SheetReading.Refused<>(resolution.findings().stream()
                .map(finding -> new SheetProblem(
                        finding.rule().equals(INCOMPLETE) ? lastOf(finding.where()) : "", ofField(finding)))
                .toList());
    }

    /** Reads a measure. */
    public SheetReading<Measure> measure(String name, String kind, Map<String, String> typed) {
        Problems problems = new Problems();
        Fields fields = fields(name, kind, typed, Keys.MEASURE, problems);
        Measure measure = new MeasureReader(quantities, problems).measure(fields, name.strip());
        return problems.count() > 0 ? refused(problems) : new SheetReading.Understood<>(measure, problems.notes());
    }

    /**
     * Reads one quantity of a field that no recipe file has.
     *
     * @param example what could be written, in quotation marks
     */
    public <Q> SheetReading<Typed<Q>> quantity(
            String key, String text, BiFunction<QuantityText, String, Understanding<Q>> how, String example) {
        Problems problems = new Problems();
        Fields fields = fields("", "", Map.of(), List.of(), problems);
        Typed<Q> typed =
                fields.understood(text, Place.WHOLE_FILE, key, written -> how.apply(quantities, written), example);
        return typed == null ? refused(problems) : new SheetReading.Understood<>(typed, problems.notes());
    }

    private static <T> SheetReading<T> refused(Problems problems) {
        return new SheetReading.Refused<>(problems.findings().stream()
                .map(finding -> new SheetProblem(lastOf(finding.where()), ofField(finding)))
                .toList());
    }

    private static Fields fields(
            String name, String kind, Map<String, String> typed, List<String> known, Problems problems) {
        List<Node.Entry> entries = new ArrayList<>();
        List<Node.Entry> parts = new ArrayList<>();
        add(entries, "name", name);
        add(entries, "kind", kind);
        typed.forEach((key, text) -> {
            if (key.equals("sizes") && !text.isBlank()) {
                entries.add(new Node.Entry(scalar(key), sizes(text)));
            } else {
                add(Keys.CONTAINS.contains(key) ? parts : entries, key, text);
            }
        });
        if (!parts.isEmpty()) {
            entries.add(new Node.Entry(scalar("contains"), new Node.Mapping(parts, false, Place.WHOLE_FILE)));
        }
        Fields fields = Fields.of(new Node.Mapping(entries, false, Place.WHOLE_FILE), "", known, problems);
        if (fields == null) {
            throw new IllegalStateException("a group of keys is a group of keys");
        }
        return fields;
    }

    private static void add(List<Node.Entry> entries, String key, String text) {
        if (!text.isBlank()) {
            entries.add(new Node.Entry(scalar(key), scalar(text.strip())));
        }
    }

    private static Node.Sequence sizes(String text) {
        List<Node> items = Arrays.stream(BETWEEN_SIZES.split(text.strip()))
                .<Node>map(SheetReader::scalar)
                .toList();
        return new Node.Sequence(items, Place.WHOLE_FILE);
    }

    private static Node.Scalar scalar(String text) {
        return new Node.Scalar(text, false, Place.WHOLE_FILE);
    }

    private static String lastOf(String where) {
        String last = where.substring(where.lastIndexOf(", ") + 1).strip();
        return last.equals("contains") ? "" : last;
    }

    private static Finding ofField(Finding finding) {
        String remedy = PARTS_BEFORE_EXAMPLE.matcher(finding.remedy()).replaceAll("$1");
        return Finding.of(
                finding.rule(),
                finding.severity(),
                finding.where(),
                finding.verdict(),
                finding.message(),
                KEY_BEFORE_EXAMPLE.matcher(remedy).replaceAll("$1").replace("]”", "”"));
    }
}
