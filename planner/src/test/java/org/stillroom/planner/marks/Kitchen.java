package org.stillroom.planner.marks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;

/** Recipes with measures for tests, written as a maker types them. */
public final class Kitchen {
    public static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);

    private final List<Ingredient> ingredients = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Measure> measures = new ArrayList<>();
    private @Nullable Typed<Span> volume;
    private @Nullable Typed<Span> strength;
    private @Nullable Typed<Span> sugar;
    private @Nullable Typed<Span> acidity;
    private @Nullable Typed<Temperature> room;
    private @Nullable Typed<OunceMeaning> ounce;

    /** Returns what a text was understood as. */
    public static <Q> Typed<Q> typed(Understanding<Q> understanding) {
        if (understanding instanceof Understanding.Understood<Q> understood) {
            return understood.typed();
        }
        throw new AssertionError(understanding.toString());
    }

    public Kitchen volume(String text) {
        volume = typed(TEXT.volumeSpan(text));
        return this;
    }

    public Kitchen strength(String text) {
        strength = typed(TEXT.strengthSpan(text));
        return this;
    }

    public Kitchen sugar(String text) {
        sugar = typed(TEXT.sugarSpan(text));
        return this;
    }

    public Kitchen acidity(String text) {
        acidity = typed(TEXT.aciditySpan(text));
        return this;
    }

    Kitchen room(String text) {
        room = typed(TEXT.temperature(text));
        return this;
    }

    Kitchen barOunce() {
        ounce = new Typed<>("30 ml", OunceMeaning.THIRTY_MILLILITRES);
        return this;
    }

    public Kitchen ingredient(Ingredient ingredient) {
        ingredients.add(ingredient);
        return this;
    }

    public Kitchen free(String... names) {
        for (String name : names) {
            lines.add(new Line(name, new LineAmount.Free(), null, null));
        }
        return this;
    }

    Kitchen freeWith(String name, String with) {
        lines.add(new Line(name, new LineAmount.Free(), with, null));
        return this;
    }

    public Kitchen amount(String name, String amount) {
        lines.add(new Line(name, new LineAmount.Fixed(typed(TEXT.amount(amount))), null, null));
        return this;
    }

    /** Adds an amount that was worked out in another size: it is told in fewer digits than it has. */
    Kitchen rescaled(String name, String words, double grams) {
        lines.add(new Line(name, new LineAmount.Fixed(new Typed<>(words, new Mass(grams))), null, null));
        return this;
    }

    Kitchen dose(String name, String dose, @Nullable String with) {
        lines.add(new Line(name, new LineAmount.PerLitre(typed(TEXT.dose(dose))), with, null));
        return this;
    }

    Kitchen all(String name) {
        lines.add(new Line(name, new LineAmount.All(), null, null));
        return this;
    }

    Kitchen makeUp(String name) {
        lines.add(new Line(name, new LineAmount.MakeUp(), null, null));
        return this;
    }

    /** Adds an instrument with marks. */
    Kitchen marked(MeasureKind kind, String marks, @Nullable String holds) {
        measures.add(new Measure(
                kind.label(), kind, amount(marks), null, holds == null ? null : amount(holds), List.of(), null));
        return this;
    }

    /** Adds a set of sizes; without sizes, the usual ones. */
    Kitchen sized(MeasureKind kind, String... sizes) {
        List<Typed<Volume>> each =
                Arrays.stream(sizes).map(size -> typed(TEXT.volume(size))).toList();
        measures.add(new Measure(kind.label(), kind, null, null, null, each, null));
        return this;
    }

    /** Adds a dropper that was weighed with water. */
    Kitchen dropper(String name, String waterDrop) {
        measures.add(new Measure(name, MeasureKind.DROPPER, null, null, null, List.of(), typed(TEXT.mass(waterDrop))));
        return this;
    }

    private static Typed<Amount> amount(String text) {
        return typed(TEXT.amount(text));
    }

    public Recipe recipe() {
        return new Recipe(
                "test",
                null,
                new Target(volume, null, strength, sugar, SugarBasis.AS_DISSOLVED, acidity),
                ingredients,
                lines,
                measures,
                ounce,
                room,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                null);
    }

    public Plan plan() {
        Planning planning = Planner.plan(Making.alone(recipe()));
        if (planning instanceof Planning.Planned planned) {
            return planned.plan();
        }
        throw new AssertionError(planning.toString());
    }

    Measured measured() {
        return Measuring.of(plan());
    }
}
