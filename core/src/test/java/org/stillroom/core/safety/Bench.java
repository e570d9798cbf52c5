package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Aroma;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.PlantRatio;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.recipe.Condition;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Purpose;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.recipe.Treatment;
import org.stillroom.core.reference.Finding;

/** Drinks for tests: everything by the gram, so that what is in them follows by hand. */
final class Bench {
    private final List<Ingredient> ingredients = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<String> steps = new ArrayList<>();
    private final Map<String, Making> stages = new HashMap<>();
    private @Nullable Typed<Double> ph;
    private @Nullable Treatment treatment;
    private @Nullable Purpose makes;
    private @Nullable String notes;
    private Grounds grounds = Grounds.SHIPPED;

    /** Adds grams of something that needs no more than its name and kind. */
    Bench grams(String name, Kind kind, double grams) {
        return grams(Ingredient.named(name, kind), grams);
    }

    /** Adds a fresh plant with so much water. */
    Bench fresh(String name, double waterPercent, double grams) {
        return holding(name, Kind.FRESH_PLANT, Substance.WATER, waterPercent, grams);
    }

    /** Adds grams of something that holds so much of a substance. */
    Bench holding(String name, Kind kind, Substance substance, double percent, double grams) {
        Typed<Share> part = new Typed<>(percent + " %", new MassFraction(percent / 100.0));
        return grams(Ingredient.named(name, kind).containing(Map.of(substance, part)), grams);
    }

    /** Adds grams of something with alcohol. */
    Bench strong(String name, Kind kind, double percent, double grams) {
        Typed<Strength> strength = new Typed<>(percent + " %", AlcoholByVolume.at20(percent));
        return grams(Ingredient.named(name, kind).ofStrength(strength), grams);
    }

    /** Adds grams of something with alcohol whose oils and constituents are named. */
    Bench carrying(String name, Kind kind, double percent, String aroma, double grams) {
        Typed<Strength> strength = new Typed<>(percent + " %", AlcoholByVolume.at20(percent));
        Understanding<Aroma> read = Aroma.read(aroma, new QuantityText(OunceMeaning.US_FLUID));
        if (!(read instanceof Understanding.Understood<Aroma> understood)) {
            throw new AssertionError(read.toString());
        }
        Typed<Aroma> carried = understood.typed();
        return grams(
                new Ingredient(
                        name, kind, strength, null, null, null, null, null, null, null, null, Map.of(), carried, null,
                        null, null, null),
                grams);
    }

    /** Adds grams of something in which a plant stood. */
    Bench ofPlant(String name, Kind kind, double percent, @Nullable String plant, String ratio, double grams) {
        return grams(extract(name, kind, percent, plant, ratio), grams);
    }

    /** Returns something in which a plant stood. */
    static Ingredient extract(String name, Kind kind, double percent, @Nullable String plant, String ratio) {
        Understanding<PlantRatio> read = PlantRatio.read(ratio, new QuantityText(OunceMeaning.US_FLUID));
        if (!(read instanceof Understanding.Understood<PlantRatio> understood)) {
            throw new AssertionError(read.toString());
        }
        Typed<Strength> strength = new Typed<>(percent + " %", AlcoholByVolume.at20(percent));
        return Ingredient.named(name, kind).ofStrength(strength).carrying(plant, understood.typed());
    }

    Bench grams(Ingredient ingredient, double grams) {
        if (ingredients.stream().noneMatch(other -> other.name().equals(ingredient.name()))) {
            ingredients.add(ingredient);
        }
        Typed<org.stillroom.core.quantity.Amount> amount = new Typed<>(grams + " g", new Mass(grams));
        lines.add(new Line(ingredient.name(), new LineAmount.Fixed(amount), null, null));
        return this;
    }

    Bench step(String text) {
        steps.add(text);
        return this;
    }

    /** Lets the recipe say this of what it makes. */
    Bench saying(Condition condition) {
        ph = condition.ph() == null ? null : new Typed<>("" + condition.ph(), condition.ph());
        treatment = condition.treatment();
        return this;
    }

    /** Writes a note to the last line. */
    Bench note(String text) {
        Line last = lines.remove(lines.size() - 1);
        lines.add(new Line(last.use(), last.amount(), last.with(), text));
        return this;
    }

    /** Writes the notes of the recipe. */
    Bench notes(String text) {
        notes = text;
        return this;
    }

    /** Lets the rules know no more than this. */
    Bench knowing(Knowledge less) {
        grounds = Grounds.of(less);
        return this;
    }

    /** Lets lots have been analysed: for each bottle the parts by CAS number, 0 to 1. */
    Bench analysed(String ingredient, List<Map<String, Double>> lots) {
        return analysed(LotAnalyses.of(Map.of(ingredient, lots)));
    }

    Bench analysed(LotAnalyses lots) {
        grounds = grounds.with(grounds.analyses().and(lots));
        return this;
    }

    /** Lets a line be poured from these bottles. */
    Bench poured(String line, Ingredient... bottles) {
        List<Resolved> resolved = Stream.of(bottles)
                .map(bottle -> Objects.requireNonNull(
                        Resolution.of(bottle.called(line)).resolved()))
                .toList();
        grounds = grounds.with(new Drawn(Map.of(line, resolved)));
        return this;
    }

    /** Adds the rules of a house, as they are written. */
    Bench house(String text) {
        HouseRules.Reading read = HouseRules.read(text, grounds.knowledge());
        if (!read.problems().isEmpty()) {
            throw new AssertionError(read.problems().toString());
        }
        grounds = grounds.with(read.rules());
        return this;
    }

    Bench makes(Purpose purpose) {
        makes = purpose;
        return this;
    }

    /** Adds grams of what another recipe makes. */
    Bench drawing(String name, Bench stage, double grams) {
        stages.put(name, Making.alone(stage.recipe()));
        return grams(Ingredient.ofRecipe(name, Kind.MACERATE), grams);
    }

    private Recipe recipe() {
        return new Recipe(
                "test",
                makes,
                Target.OPEN,
                ingredients,
                lines,
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                ph,
                treatment,
                steps,
                notes);
    }

    Plan plan() {
        Planning planning = Planner.plan(new Making(recipe(), stages));
        if (planning instanceof Planning.Planned planned) {
            return planned.plan();
        }
        throw new AssertionError(planning.toString());
    }

    Safety safety() {
        return Safety.of(plan(), Serving.USUAL, grounds);
    }

    Amount amount(String watched) {
        Amount amount = safety().drink().amount(watched);
        if (amount == null) {
            throw new AssertionError("no " + watched);
        }
        return amount;
    }

    List<Finding> findings(String rule) {
        return safety().findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .toList();
    }

    /** Returns "STOP eu-maximum: not known" and its like, of what one rule finds. */
    List<String> verdicts(String rule) {
        return findings(rule).stream()
                .map(finding -> finding.severity() + " " + finding.jurisdiction() + " " + finding.verdict())
                .map(text -> text.replace("  ", " "))
                .toList();
    }
}
