package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Aroma;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.PlantRatio;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.reference.Finding;

/** Reads what the maker owns or buys. */
final class IngredientReader {
    /** Labels round: parts that come to 100.2 % are let pass. */
    private static final double ROUNDED = 0.002;

    private final QuantityText quantities;
    private final Problems problems;

    IngredientReader(QuantityText quantities, Problems problems) {
        this.quantities = quantities;
        this.problems = problems;
    }

    List<Read<Ingredient>> all(Fields top) {
        List<Read<Ingredient>> ingredients = new ArrayList<>();
        int number = 0;
        for (Node item : top.items("ingredients")) {
            number++;
            String called = Objects.requireNonNullElse(Fields.peek(item, "name"), "ingredient " + number);
            int before = problems.count();
            Fields fields = Fields.of(item, called, Keys.INGREDIENT, problems);
            if (fields != null) {
                Ingredient ingredient = ingredient(fields, called);
                if (problems.count() == before) {
                    askWhatIsNeeded(ingredient, fields);
                }
                ingredients.add(new Read<>(ingredient, fields));
            }
        }
        return ingredients;
    }

    /** Returns the ingredient as far as it could be read; whether that says enough is not looked at. */
    Ingredient ingredient(Fields fields, String called) {
        fields.requiredName("name", "Give the ingredient a name, such as “name: neutral spirit”.");
        fields.required("kind", "Say what it is, such as “kind: spirit”.");
        Kind kind = fields.choice("kind", List.of(Kind.values()), Kind::label);
        return new Ingredient(
                called,
                kind == null ? Kind.OTHER : kind,
                fields.quantity("strength", quantities::strength, "“strength: 40 %” or “strength: 80 proof”"),
                fields.quantity("tolerance", quantities::percent, "“tolerance: 0.3 %”"),
                fields.quantity("sugar", quantities::share, "“sugar: 12 °Bx” or “sugar: 180 g/L”"),
                fields.quantity("acidity", quantities::share, "“acidity: 45 g/L”"),
                fields.quantity("density", quantities::density, "“density: 1.042 g/ml”"),
                fields.quantity("drop", quantities::amount, "“drop: 0.021 g”"),
                fields.quantity("price", quantities::price, "“price: 22 EUR/L”"),
                fields.quantity("at hand", quantities::amount, "“at hand: 700 ml”"),
                fields.quantity("pack", quantities::amount, "“pack: 500 ml”"),
                contains(fields, called),
                aroma(fields),
                ofPlants("plant", fields, kind) ? fields.text("plant") : null,
                ofPlants("ratio", fields, kind) ? ratio(fields) : null,
                fields.text("from"),
                fields.text("note"));
    }

    private @Nullable Typed<Aroma> aroma(Fields fields) {
        return fields.several(
                "aroma", text -> Aroma.read(text, quantities), "“aroma: juniper 180 mg/L; limonene 12 mg/L”");
    }

    private @Nullable Typed<PlantRatio> ratio(Fields fields) {
        return fields.quantity("ratio", text -> PlantRatio.read(text, quantities), "“ratio: 1:5” or “ratio: 200 g/L”");
    }

    /** Returns whether plants can have stood in it; notes a key that says so of anything else. */
    private static boolean ofPlants(String key, Fields fields, @Nullable Kind kind) {
        if (kind == null || kind.isOfPlants() || !fields.has(key)) {
            return true;
        }
        fields.problem(
                key,
                "no-plant-in-it",
                "not of this kind",
                "“" + key + "” is told of what plants stood in, and this is of kind " + kind.label() + ".",
                "Leave it out, or write what it is, such as “kind: macerate”.");
        return false;
    }

    private Map<Substance, Typed<Share>> contains(Fields fields, String called) {
        Map<Substance, Typed<Share>> contains = new LinkedHashMap<>();
        Node node = fields.node("contains");
        Fields parts = node == null ? null : Fields.of(node, called + ", contains", Keys.CONTAINS, problems);
        if (parts == null) {
            return contains;
        }
        double together = 0;
        for (String label : parts.keys()) {
            Substance substance = Substance.values()[Keys.CONTAINS.indexOf(label)];
            Typed<Share> share = parts.quantity(
                    label, quantities::share, "“" + label + ": 40 %” (by mass) or “" + label + ": 120 g/L”");
            if (share != null) {
                contains.put(substance, share);
                together += share.value() instanceof MassFraction part ? part.fraction() : 0;
            }
        }
        if (together > 1 + ROUNDED) {
            parts.problem(
                    "share-beyond-whole",
                    "not possible",
                    "The parts make " + Math.round(together * 10_000) / 100.0 + " % of the whole.",
                    "Parts by mass come to 100 % at most; check them against the label.");
        }
        return contains;
    }

    /** Notes what an ingredient must be known by and is not; nothing that decides the result is guessed. */
    private void askWhatIsNeeded(Ingredient listed, Fields fields) {
        Resolution resolution = Resolution.of(listed);
        if (listed.from() != null || resolution.resolved() != null) {
            return;
        }
        for (Finding finding : resolution.findings()) {
            fields.problem(
                    finding.rule(),
                    finding.verdict(),
                    finding.message(),
                    finding.remedy() + " If it is the result of another recipe, write “from: FILE”.");
        }
    }
}
