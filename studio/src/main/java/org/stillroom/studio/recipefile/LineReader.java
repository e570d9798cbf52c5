package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Meant;

/** Reads what goes in. */
final class LineReader {
    static final String FREE = "free";
    static final String ALL = "all";
    static final String MAKE_UP = "make up";

    private static final String AMOUNTS = "“330 ml”, or “free”, “all” or “make up”";

    /** Stands in for an amount that was noted as a problem, so that the other checks go on. */
    private static final LineAmount NOT_UNDERSTOOD = new LineAmount.Fixed(new Typed<>("", new Mass(0)));

    private final QuantityText quantities;
    private final Problems problems;

    LineReader(QuantityText quantities, Problems problems) {
        this.quantities = quantities;
        this.problems = problems;
    }

    List<Read<Line>> all(Fields top) {
        List<Node> items = top.items("lines");
        if (!top.has("lines") || (items.isEmpty() && top.node("lines") instanceof Node.Sequence)) {
            top.problem(
                    "lines",
                    "recipe-no-lines",
                    "missing",
                    "The recipe has no lines: nothing goes in.",
                    "List what goes in: “lines:” and under it “- {use: water, amount: free}”.");
        }
        List<Read<Line>> lines = new ArrayList<>();
        int number = 0;
        for (Node item : items) {
            number++;
            String use = Fields.peek(item, "use");
            String called = use == null ? "recipe line " + number : "use of " + use;
            Fields fields = Fields.of(item, called, Keys.LINE, problems);
            if (fields != null) {
                lines.add(new Read<>(line(fields), fields));
            }
        }
        return lines;
    }

    private Line line(Fields fields) {
        String use = fields.required("use", "Name the ingredient: “use: white sugar”.");
        return new Line(
                Objects.requireNonNullElse(use, ""),
                Objects.requireNonNullElse(amount(fields), NOT_UNDERSTOOD),
                fields.text("with"),
                fields.text("note"),
                fields.quantity("meant", text -> Meant.read(text, quantities), "“meant: 4.2 g/L of clove oil”"));
    }

    private @Nullable LineAmount amount(Fields fields) {
        if (fields.has("amount") && fields.has("dose")) {
            fields.problem(
                    "dose",
                    "line-amount-twice",
                    "said twice",
                    "The line has an amount and a dose.",
                    "Keep “amount” for a fixed amount, or “dose” for so much per litre of finished liquid.");
            return null;
        }
        if (fields.has("dose")) {
            Typed<Dose> dose = fields.quantity("dose", quantities::dose, "“dose: 24 drops/L” or “dose: 0.4 g/L”");
            return dose == null ? null : new LineAmount.PerLitre(dose);
        }
        if (!fields.has("amount")) {
            fields.problem(
                    "line-no-amount",
                    "missing",
                    "The line does not say how much.",
                    "Write “amount:” with an amount such as " + AMOUNTS + "; or “dose:” such as “0.4 g/L”.");
            return null;
        }
        String text = fields.text("amount");
        return text == null ? null : amount(text, fields);
    }

    private @Nullable LineAmount amount(String text, Fields fields) {
        return switch (text) {
            case FREE -> new LineAmount.Free();
            case ALL -> new LineAmount.All();
            case MAKE_UP -> new LineAmount.MakeUp();
            default -> fixed(text, fields);
        };
    }

    private @Nullable LineAmount fixed(String text, Fields fields) {
        if (quantities.dose(text) instanceof Understanding.Understood<Dose>) {
            fields.problem(
                    "amount",
                    "line-amount-is-dose",
                    "a dose",
                    "“" + text + "” is so much per litre, and an amount is all that goes in.",
                    "Write it as “dose: " + text + "”.");
            return null;
        }
        Typed<Amount> amount = fields.understood(text, fields.placeOf("amount"), "amount", quantities::amount, AMOUNTS);
        return amount == null ? null : new LineAmount.Fixed(amount);
    }
}
