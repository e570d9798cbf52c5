package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Aim;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.Purpose;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.recipe.Treatment;

/**
 * Reads the YAML of a recipe file; the format is described in docs/recipe-file.md.
 *
 * <p>It reads one file and opens no other: the recipes that a file names with "from" are opened by {@link RecipeShelf}.
 */
public final class RecipeReader {
    /** The version of the format that is read and written. */
    public static final String FORMAT = "1";

    private final OunceMeaning usualOunce;

    /**
     * Makes a reader.
     *
     * @param usualOunce what "oz" means in files that do not say
     */
    public RecipeReader(OunceMeaning usualOunce) {
        this.usualOunce = usualOunce;
    }

    /** Reads a file's bytes: UTF-8, with or without a byte order mark, of at most 1 MB. */
    public RecipeReading read(byte[] bytes) {
        return result(draft(() -> FileText.of(bytes)));
    }

    /** Reads a text of at most 1 MB. */
    public RecipeReading read(String text) {
        return result(draft(() -> FileText.checked(text)));
    }

    /** A text that may turn out to be none. */
    interface TextSource {
        String text() throws Unreadable;
    }

    /**
     * What was read so far.
     *
     * @param recipe null as long as a problem stands against it
     * @param sources where the file names other recipes
     */
    record Draft(@Nullable Recipe recipe, List<SourceName> sources, Problems problems) {}

    /** A file name that an ingredient gives with "from". */
    record SourceName(String ingredient, String from, Place place) {}

    Draft draft(TextSource source) {
        Problems problems = new Problems();
        try {
            return draft(TreeBuilder.build(source.text(), problems), problems);
        } catch (Unreadable trouble) {
            trouble.tell(problems);
            return new Draft(null, List.of(), problems);
        }
    }

    private static RecipeReading result(Draft draft) {
        Problems problems = draft.problems();
        return draft.recipe() == null
                ? new RecipeReading.Refused(problems.findings())
                : new RecipeReading.Understood(draft.recipe(), problems.notes());
    }

    /** Reads a tree, wherever it comes from. */
    Draft draft(Node root, Problems problems) {
        Fields top = ofThisFormat(root, problems);
        if (top == null) {
            return new Draft(null, List.of(), problems);
        }
        String title = top.required("title", "Write what is made: “title: Quince and bay”.");
        Typed<OunceMeaning> ounce = ounce(top);
        QuantityText quantities = new QuantityText(ounce == null ? usualOunce : ounce.value());
        Target target = TargetReader.read(top, quantities, problems);
        MeasureReader measureReader = new MeasureReader(quantities, problems);
        IngredientReader ingredientReader = new IngredientReader(quantities, problems);
        LineReader lineReader = new LineReader(quantities, problems);
        List<Read<Measure>> measures = measureReader.all(top);
        List<Read<Ingredient>> ingredients = ingredientReader.all(top);
        List<Read<Line>> lines = lineReader.all(top);
        Aim aim = AimText.read(top, values(lines).stream().map(Line::use).toList());
        new Agreement(problems, top, ingredients, measures).check(lines, target, aim);
        Recipe recipe = new Recipe(
                Objects.requireNonNullElse(title, ""),
                top.choice("makes", List.of(Purpose.values()), Purpose::label),
                target,
                values(ingredients),
                values(lines),
                values(measures),
                ounce,
                top.quantity("room", quantities::temperature, "“room: 18 °C”"),
                top.quantity("vessel", quantities::volume, "“vessel: 5 L”"),
                aim,
                top.quantity("rest", quantities::wait, "“rest: 14 days”"),
                top.quantity(
                        "loss",
                        text -> LossText.read(text, quantities),
                        "“loss: 5 %”, “loss: 30 ml” or “loss: 1.5 ml/g”"),
                top.quantity("ph", quantities::ph, "“ph: 3.4”"),
                top.choice("pasteurised", List.of(Treatment.values()), Treatment::label),
                steps(top),
                top.text("notes"));
        return new Draft(problems.count() == 0 ? recipe : null, sources(ingredients), problems);
    }

    /** Returns the keys of the whole file, or null, noted, when it is no recipe file of this format. */
    private static @Nullable Fields ofThisFormat(Node root, Problems problems) {
        String format = Fields.peek(root, "stillroom");
        if (format != null && !format.equals(FORMAT)) {
            problems.add(
                    "file-format",
                    root.place(),
                    "stillroom",
                    "other format",
                    "The file is of format " + Shown.quoted(format) + "; this program reads format " + FORMAT + ".",
                    "Write “stillroom: 1” if the file follows docs/recipe-file.md, else open it with a newer program.");
            return null;
        }
        Fields top = Fields.of(root, "", Keys.RECIPE, problems);
        if (top != null) {
            top.required("stillroom", "Make “stillroom: 1” the first line: it says which format the file is of.");
        }
        return top;
    }

    private static @Nullable Typed<OunceMeaning> ounce(Fields top) {
        Ounce ounce = top.choice("ounce", List.of(Ounce.values()), Ounce::label);
        return ounce == null ? null : new Typed<>(ounce.label(), ounce.meaning());
    }

    private static List<String> steps(Fields top) {
        List<String> steps = new ArrayList<>();
        for (Node item : top.items("steps")) {
            String step = top.text(item, "steps");
            if (step != null) {
                steps.add(step);
            }
        }
        return steps;
    }

    private static <T> List<T> values(List<Read<T>> read) {
        return read.stream().map(Read::value).toList();
    }

    private static List<SourceName> sources(List<Read<Ingredient>> ingredients) {
        List<SourceName> sources = new ArrayList<>();
        for (Read<Ingredient> read : ingredients) {
            String from = read.value().from();
            if (from != null) {
                sources.add(
                        new SourceName(read.value().name(), from, read.fields().placeOf("from")));
            }
        }
        return List.copyOf(sources);
    }
}
