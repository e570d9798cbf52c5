package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Bottles;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.Wait;
import org.stillroom.core.recipe.Aim;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Loss;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.Purpose;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.reference.Finding;

/** Recipes for tests, written as a maker types them. */
final class Kitchen {
    static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);

    private final List<Ingredient> ingredients = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private @Nullable Typed<Span> volume;
    private @Nullable Typed<Span> strength;
    private @Nullable Typed<Span> sugar;
    private @Nullable Typed<Span> acidity;
    private @Nullable Aim aim;
    private @Nullable Typed<Loss> loss;
    private @Nullable Purpose makes;
    private @Nullable Typed<Bottles> bottles;
    private @Nullable Typed<Volume> vessel;
    private @Nullable Typed<Wait> rest;
    private SugarBasis sugarBasis = SugarBasis.AS_DISSOLVED;
    private List<String> steps = List.of();

    static <Q> Typed<Q> typed(Understanding<Q> understanding) {
        if (understanding instanceof Understanding.Understood<Q> understood) {
            return understood.typed();
        }
        throw new AssertionError(understanding.toString());
    }

    Kitchen volume(String text) {
        volume = typed(TEXT.volumeSpan(text));
        return this;
    }

    Kitchen strength(String text) {
        strength = typed(TEXT.strengthSpan(text));
        return this;
    }

    Kitchen sugar(String text) {
        sugar = typed(TEXT.sugarSpan(text));
        return this;
    }

    Kitchen sugarAs(SugarBasis basis) {
        sugarBasis = basis;
        return this;
    }

    Kitchen bottles(String text) {
        bottles = typed(TEXT.bottles(text));
        return this;
    }

    Kitchen vessel(String text) {
        vessel = typed(TEXT.volume(text));
        return this;
    }

    Kitchen rest(String text) {
        rest = typed(TEXT.wait(text));
        return this;
    }

    Kitchen steps(String... own) {
        steps = List.of(own);
        return this;
    }

    Kitchen acidity(String text) {
        acidity = typed(TEXT.aciditySpan(text));
        return this;
    }

    Kitchen aim(Aim.What what) {
        aim = Aim.of(what);
        return this;
    }

    Kitchen useUp(String... ingredients) {
        aim = Aim.usingUp(List.of(ingredients));
        return this;
    }

    Kitchen loss(Loss value) {
        loss = new Typed<>("", value);
        return this;
    }

    Kitchen spirit(String name, String percent, @Nullable String atHand, @Nullable String price) {
        ingredients.add(new Ingredient(
                name,
                Kind.SPIRIT,
                typed(TEXT.strength(percent)),
                null,
                null,
                null,
                null,
                null,
                price == null ? null : typed(TEXT.price(price)),
                atHand == null ? null : typed(TEXT.amount(atHand)),
                null,
                Map.of(),
                null,
                null,
                null,
                null,
                null));
        return this;
    }

    /** An ingredient of which, beside name and kind, only what is bought and had is known. */
    Kitchen bought(
            String name,
            Kind kind,
            @Nullable String drop,
            @Nullable String price,
            @Nullable String atHand,
            @Nullable String pack) {
        ingredients.add(new Ingredient(
                name,
                kind,
                null,
                null,
                null,
                null,
                null,
                drop == null ? null : typed(TEXT.amount(drop)),
                price == null ? null : typed(TEXT.price(price)),
                atHand == null ? null : typed(TEXT.amount(atHand)),
                pack == null ? null : typed(TEXT.amount(pack)),
                Map.of(),
                null,
                null,
                null,
                null,
                null));
        return this;
    }

    Kitchen ingredient(Ingredient ingredient) {
        ingredients.add(ingredient);
        return this;
    }

    Kitchen contains(String name, Kind kind, Map<Substance, String> shares) {
        Map<Substance, Typed<org.stillroom.core.quantity.Share>> contains = new java.util.EnumMap<>(Substance.class);
        shares.forEach((substance, text) -> contains.put(substance, typed(TEXT.share(text))));
        ingredients.add(Ingredient.named(name, kind).containing(contains));
        return this;
    }

    Kitchen stage(String name, Kind kind, String from) {
        ingredients.add(new Ingredient(
                name, kind, null, null, null, null, null, null, null, null, null, Map.of(), null, null, null, from,
                null));
        return this;
    }

    Kitchen free(String... names) {
        for (String name : names) {
            lines.add(new Line(name, new LineAmount.Free(), null, null));
        }
        return this;
    }

    Kitchen amount(String name, String amount) {
        lines.add(new Line(name, new LineAmount.Fixed(typed(TEXT.amount(amount))), null, null));
        return this;
    }

    Kitchen dose(String name, String dose) {
        lines.add(new Line(name, new LineAmount.PerLitre(typed(TEXT.dose(dose))), null, null));
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

    Kitchen makes(Purpose purpose) {
        makes = purpose;
        return this;
    }

    Recipe recipe() {
        return new Recipe(
                "test",
                makes,
                new Target(volume, bottles, strength, sugar, sugarBasis, acidity),
                ingredients,
                lines,
                List.of(),
                null,
                null,
                vessel,
                aim,
                rest,
                loss,
                null,
                null,
                steps,
                null);
    }

    Plan plan() {
        return plan(Map.of());
    }

    Plan plan(Measure measure) {
        return plan(new Making(recipe().measuredWith(List.of(measure)), Map.of()));
    }

    Plan plan(Map<String, Making> stages) {
        return plan(new Making(recipe(), stages));
    }

    private static Plan plan(Making making) {
        Planning planning = Planner.plan(making);
        if (planning instanceof Planning.Planned planned) {
            return planned.plan();
        }
        throw new AssertionError(planning.toString());
    }

    /** What keeps the recipe from being planned. */
    List<Finding> refused() {
        return refused(Map.of());
    }

    List<Finding> refused(Map<String, Making> stages) {
        Planning planning = Planner.plan(new Making(recipe(), stages));
        if (planning instanceof Planning.Refused refused) {
            return refused.problems();
        }
        throw new AssertionError(planning.toString());
    }

    static double grams(Plan plan, String name) {
        return plan.lines().stream()
                .filter(line -> line.name().equals(name))
                .mapToDouble(PlannedLine::grams)
                .sum();
    }

    /** The finding of a rule, which there must be just once. */
    static Finding finding(List<Finding> findings, String rule) {
        List<Finding> found =
                findings.stream().filter(each -> each.rule().equals(rule)).toList();
        assertThat(found).as("%s among %s", rule, findings).hasSize(1);
        return found.get(0);
    }
}
