package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.MeasureKind;

/** Reads what the maker measures with. */
final class MeasureReader {
    /** No drop of water weighs as much; from 20 to 70 mg are usual, from memory. */
    private static final double MOST_GRAMS = 0.3;

    private final QuantityText quantities;
    private final Problems problems;

    MeasureReader(QuantityText quantities, Problems problems) {
        this.quantities = quantities;
        this.problems = problems;
    }

    List<Read<Measure>> all(Fields top) {
        List<Read<Measure>> measures = new ArrayList<>();
        int number = 0;
        for (Node item : top.items("measures")) {
            number++;
            String called = Objects.requireNonNullElse(Fields.peek(item, "name"), "measure " + number);
            Fields fields = Fields.of(item, called, Keys.MEASURE, problems);
            if (fields != null) {
                measures.add(new Read<>(measure(fields, called), fields));
            }
        }
        return measures;
    }

    Measure measure(Fields fields, String called) {
        fields.requiredName("name", "Give the measure a name, such as “name: kitchen scale”.");
        fields.required("kind", "Say what it is, such as “kind: scale”.");
        MeasureKind kind = fields.choice("kind", List.of(MeasureKind.values()), MeasureKind::label);
        Typed<Mass> drop = drop(kind, fields);
        return new Measure(
                called,
                kind == null ? MeasureKind.SCALE : kind,
                amount("marks", kind, fields),
                drop == null ? amount("tolerance", kind, fields) : within(drop.value(), fields),
                amount("holds", kind, fields),
                sizes(fields),
                drop);
    }

    private @Nullable Typed<Mass> drop(@Nullable MeasureKind kind, Fields fields) {
        Typed<Mass> drop = fields.quantity("drop", quantities::mass, "“drop: 46 mg”");
        if (drop == null || kind == null) {
            return drop;
        }
        if (kind != MeasureKind.DROPPER) {
            fields.problem(
                    "drop",
                    "measure-drop",
                    "does not fit",
                    "A " + kind.label() + " has no drop.",
                    "Leave it out, or write “kind: dropper”.");
            return null;
        }
        if (!(drop.value().grams() > 0.0 && drop.value().grams() < MOST_GRAMS)) {
            fields.problem(
                    "drop",
                    "measure-drop",
                    "cannot be",
                    "A drop of water weighs 20 to 70 mg, not " + drop.text() + ".",
                    "Weigh 50 drops of water and write what one of them weighs, such as “drop: 46 mg”.");
            return null;
        }
        return drop;
    }

    /** Returns within what a drop is known. */
    private @Nullable Typed<Amount> within(Mass drop, Fields fields) {
        Typed<Mass> within = fields.quantity("tolerance", quantities::mass, "“tolerance: 0.8 mg”");
        if (within == null) {
            return null;
        }
        if (!(within.value().grams() < drop.grams())) {
            fields.problem(
                    "tolerance",
                    "measure-drop",
                    "cannot be",
                    "A drop cannot be in doubt by as much as it weighs, " + within.text() + ".",
                    "Write within what the mean drop is known, such as “tolerance: 0.8 mg”.");
            return null;
        }
        return new Typed<>(within.text(), within.value());
    }

    /** Returns the amount of a key, by mass for a scale and by volume for all others. */
    private @Nullable Typed<Amount> amount(String key, @Nullable MeasureKind kind, Fields fields) {
        boolean weighs = kind == MeasureKind.SCALE;
        String example = "“" + key + ": " + (weighs ? "1 g" : "0.2 ml") + "”";
        Typed<Amount> amount = fields.quantity(key, quantities::amount, example);
        if (amount == null || kind == null || (weighs ? Mass.class : Volume.class).isInstance(amount.value())) {
            return amount;
        }
        fields.problem(
                key,
                "quantity",
                "unit of the wrong kind",
                "A " + kind.label() + " measures " + (weighs ? "mass" : "volume") + ", so "
                        + Shown.quoted(amount.text()) + " does not fit.",
                "Write it such as " + example + ".");
        return null;
    }

    private List<Typed<Volume>> sizes(Fields fields) {
        List<Typed<Volume>> sizes = new ArrayList<>();
        for (Node item : fields.items("sizes")) {
            String text = fields.text(item, "sizes");
            Typed<Volume> size = text == null
                    ? null
                    : fields.understood(text, item.place(), "sizes", quantities::volume, "“sizes: [15 ml, 30 ml]”");
            if (size != null) {
                sizes.add(size);
            }
        }
        return sizes;
    }
}
