package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;

/** Reads the YAML of an essence file; the format is described in docs/essence-file.md. */
public final class EssenceReader {
    static final List<String> KEYS = List.of(
            "stillroom essence",
            "title",
            "oils",
            "by",
            "together",
            "carrier",
            "dose",
            "measure",
            "marks",
            "batch",
            "tolerance",
            "batches");
    static final List<String> OIL = List.of("oil", "parts", "drop", "density");

    private static final double USUAL_TOLERANCE = 2.0;
    private static final int USUAL_BATCHES = 10;
    private static final int MOST_BATCHES = 100;
    static final int MOST_OILS = 12;

    private final Problems problems = new Problems();
    private final QuantityText quantities = new QuantityText(OunceMeaning.US_FLUID);

    private EssenceReader() {}

    /** Reads a file's bytes: UTF-8, with or without a byte order mark, of at most 1 MB. */
    public static EssenceReading read(byte[] bytes) {
        return new EssenceReader().reading(() -> FileText.of(bytes));
    }

    /** Reads a text. */
    public static EssenceReading read(String text) {
        return new EssenceReader().reading(() -> FileText.checked(text));
    }

    /** Reads what was typed field by field. */
    public static EssenceReading read(EssenceForm form) {
        EssenceReader reader = new EssenceReader();
        return reader.reading(reader.sheet(tree(form)));
    }

    private static Node tree(EssenceForm form) {
        List<Node.Entry> entries = new ArrayList<>();
        entries.add(entry("stillroom essence", "1"));
        for (String key : KEYS) {
            if (!form.typed(key).isEmpty()) {
                entries.add(entry(key, form.typed(key)));
            }
        }
        List<Node> oils = form.rows().mapToObj(row -> oil(form, row)).toList();
        if (!oils.isEmpty()) {
            entries.add(new Node.Entry(scalar("oils"), new Node.Sequence(oils, Place.WHOLE_FILE)));
        }
        return new Node.Mapping(entries, false, Place.WHOLE_FILE);
    }

    private static Node oil(EssenceForm form, int row) {
        List<Node.Entry> entries = new ArrayList<>();
        for (String key : OIL) {
            String text = form.typed(EssenceForm.ofOil(row, key));
            if (!text.isEmpty()) {
                entries.add(entry(key, text));
            }
        }
        return new Node.Mapping(entries, false, Place.WHOLE_FILE);
    }

    private static Node.Entry entry(String key, String text) {
        return new Node.Entry(scalar(key), scalar(text));
    }

    private static Node.Scalar scalar(String text) {
        return new Node.Scalar(text, false, Place.WHOLE_FILE);
    }

    private EssenceReading reading(RecipeReader.TextSource source) {
        EssenceSheet sheet = null;
        try {
            sheet = sheet(TreeBuilder.build(source.text(), problems));
        } catch (Unreadable trouble) {
            trouble.tell(problems);
        }
        return reading(sheet);
    }

    private EssenceReading reading(@Nullable EssenceSheet sheet) {
        return sheet == null || problems.count() > 0
                ? new EssenceReading.Refused(problems.findings())
                : new EssenceReading.Understood(sheet, problems.notes());
    }

    private @Nullable EssenceSheet sheet(Node tree) {
        Fields top = Fields.of(tree, "", KEYS, problems);
        return top == null ? null : sheet(top);
    }

    private @Nullable EssenceSheet sheet(Fields top) {
        format(top);
        String title = top.required("title", "Write what it is called: “title: Winter citrus”.");
        EssenceSheet.By by = top.choice("by", List.of(EssenceSheet.By.values()), EssenceSheet.By::label);
        List<EssenceSheet.Oil> oils = oils(top);
        Mass together = perLitre(top, "together", Mass.class, "“together: 0.4 g/L”");
        Volume dose = perLitre(top, "dose", Volume.class, "“dose: 5 ml/L”");
        Typed<Strength> carrier = needed(top, "carrier", quantities::strength, "“carrier: 96 %”");
        Typed<Volume> mark = aboveZero(top, "marks", needed(top, "marks", quantities::volume, "“marks: 0.1 ml”"));
        Typed<Volume> batch = aboveZero(top, "batch", needed(top, "batch", quantities::volume, "“batch: 1 L”"));
        Typed<Double> tolerance = top.quantity("tolerance", quantities::percent, "“tolerance: 2 %”");
        int batches = batches(top);
        if (title == null
                || together == null
                || dose == null
                || carrier == null
                || mark == null
                || batch == null
                || oils.isEmpty()) {
            return null;
        }
        return new EssenceSheet(
                title,
                oils,
                by == null ? EssenceSheet.By.MASS : by,
                together,
                carrier,
                Objects.requireNonNullElse(top.text("measure"), "the measure"),
                mark.value(),
                dose,
                batch.value(),
                tolerance == null ? USUAL_TOLERANCE : tolerance.value(),
                batches);
    }

    private void format(Fields top) {
        String format = top.required(
                "stillroom essence",
                "Make “stillroom essence: 1” the first line: it says which format the file is of.");
        if (format != null && !format.equals("1")) {
            top.problem(
                    "stillroom essence",
                    "file-format",
                    "other format",
                    "The file is of format " + Shown.quoted(format) + "; this program reads format 1.",
                    "Write “stillroom essence: 1” if the file follows docs/essence-file.md.");
        }
    }

    private List<EssenceSheet.Oil> oils(Fields top) {
        List<EssenceSheet.Oil> oils = new ArrayList<>();
        Set<String> names = new HashSet<>();
        if (!top.has("oils")) {
            top.problem(
                    "field-missing",
                    "missing",
                    "“oils” is missing.",
                    "List them: “oils:” and below it “- {oil: lemon, parts: 10}”.");
        }
        for (Node item : top.items("oils")) {
            String called = Objects.requireNonNullElse(Fields.peek(item, "oil"), "oil " + (oils.size() + 1));
            Fields fields = Fields.of(item, called, OIL, problems);
            EssenceSheet.Oil oil = fields == null ? null : oil(fields);
            if (oil != null) {
                oils.add(oil);
                if (!names.add(oil.name())) {
                    problems.add(
                            "oil-twice",
                            item.place(),
                            called,
                            "named twice",
                            "This oil stands in the list twice.",
                            "Put its parts together, or give the second a name of its own.");
                }
            }
        }
        boolean none = oils.isEmpty() && top.has("oils") && problems.count() == 0;
        if (none || oils.size() > MOST_OILS) {
            top.problem(
                    "oils",
                    "oils",
                    "too few or too many",
                    "An essence has 1 to " + MOST_OILS + " oils here, not " + oils.size() + ".",
                    "Make part of it an essence of its own.");
        }
        return oils;
    }

    private EssenceSheet.@Nullable Oil oil(Fields fields) {
        String name = fields.required("oil", "Name it, such as “oil: lemon”.");
        fields.required("parts", "Say how much against the others, such as “parts: 10”.");
        Typed<Double> parts = fields.quantity("parts", EssenceReader::parts, "“parts: 10”");
        Typed<Mass> drop = aboveZero(fields, fields.quantity("drop", quantities::mass, "“drop: 20.5 mg”"));
        Typed<Density> density = fields.quantity("density", quantities::density, "“density: 0.852 g/ml”");
        return name == null || parts == null
                ? null
                : new EssenceSheet.Oil(
                        name,
                        parts.value(),
                        drop == null ? null : drop.value(),
                        density == null ? null : density.value());
    }

    private static Understanding<Double> parts(String text) {
        if (text.strip().matches("\\d{1,6}([.,]\\d{1,6})?")) {
            double parts = Double.parseDouble(text.strip().replace(',', '.'));
            if (parts > 0.0) {
                return new Understanding.Understood<>(new Typed<>(text, parts));
            }
        }
        return new Understanding.Refused<>(text, "parts are a number above zero, without a unit");
    }

    private static @Nullable Typed<Mass> aboveZero(Fields fields, @Nullable Typed<Mass> drop) {
        if (drop != null && !(drop.value().grams() > 0.0 && drop.value().grams() < 0.5)) {
            fields.problem(
                    "drop",
                    "quantity",
                    "cannot be",
                    "A drop weighs from a few to a hundred mg, not " + Shown.quoted(drop.text()) + ".",
                    "Write it such as “drop: 20.5 mg”.");
            return null;
        }
        return drop;
    }

    private static @Nullable Typed<Volume> aboveZero(Fields top, String key, @Nullable Typed<Volume> volume) {
        if (volume != null && !(volume.value().millilitres() > 0.0)) {
            top.problem(
                    key,
                    "quantity",
                    "cannot be",
                    Shown.quoted(volume.text()) + " is nothing.",
                    "Write a volume above zero.");
            return null;
        }
        return volume;
    }

    private <Q> @Nullable Typed<Q> needed(
            Fields top, String key, Function<String, Understanding<Q>> reader, String example) {
        if (!top.has(key)) {
            top.problem("field-missing", "missing", "“" + key + "” is missing.", "Write it such as " + example + ".");
        }
        return top.quantity(key, reader, example);
    }

    private <A extends Amount> @Nullable A perLitre(Fields top, String key, Class<A> kind, String example) {
        Typed<Dose> dose = needed(top, key, quantities::dose, example);
        if (dose == null) {
            return null;
        }
        Amount amount = dose.value().perLitre();
        boolean above = amount instanceof Mass mass
                ? mass.grams() > 0.0
                : amount instanceof Volume volume && volume.millilitres() > 0.0;
        if (kind.isInstance(amount) && above) {
            return kind.cast(amount);
        }
        top.problem(
                key,
                "quantity",
                "cannot be used",
                Shown.quoted(dose.text()) + " is not what is wanted here.",
                "Write it such as " + example + ".");
        return null;
    }

    private static int batches(Fields top) {
        String text = top.text("batches");
        if (text == null) {
            return USUAL_BATCHES;
        }
        if (text.strip().matches("\\d{1,3}")) {
            int batches = Integer.parseInt(text.strip());
            if (batches >= 1 && batches <= MOST_BATCHES) {
                return batches;
            }
        }
        top.problem(
                "batches",
                "quantity",
                "cannot be used",
                Shown.quoted(text) + " is no number of batches.",
                "Write a whole number from 1 to " + MOST_BATCHES + ".");
        return USUAL_BATCHES;
    }
}
