package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What is said of an ingredient by what it is called, however little of it is taken. */
public final class ByName {
    /** The dose at which it is judged, g/L. */
    static final double TRIAL = 0.01;
    /** Strength of a drink where none is asked; what is said of names does not depend on it. */
    static final AlcoholByVolume ANY = AlcoholByVolume.at20(30.0);

    private ByName() {}

    /**
     * Returns why it must not go into a drink at all: not for drinking, poisonous, banned, left out by a rule of the house. Nothing where
     * nothing says so or the ingredient does not say enough to be counted, which clears nothing: amounts are judged in the drink.
     */
    public static List<Finding> stops(Ingredient ingredient, Grounds grounds) {
        Drink drink = drink(plain(ingredient), ANY, grounds);
        return drink == null
                ? List.of()
                : stops(drink).stream()
                        .map(finding -> finding.at(ingredient.name()))
                        .distinct()
                        .toList();
    }

    /** Returns what is said of kernels, stones, seeds and leaves that set hydrogen cyanide free; nothing where it is none of them. */
    public static List<Finding> ofKernels(Ingredient ingredient, Grounds grounds) {
        Drink drink = drink(plain(ingredient), ANY, grounds);
        return drink == null
                ? List.of()
                : Kernels.judge(drink, Serving.USUAL).stream()
                        .filter(finding -> finding.rule().equals(Kernels.NAME))
                        .map(finding -> finding.at(ingredient.name()))
                        .toList();
    }

    /** Leaves out how much of it there is, where it came from and what it cost. */
    private static Ingredient plain(Ingredient of) {
        return new Ingredient(
                of.name(),
                of.kind(),
                of.strength(),
                of.tolerance(),
                of.sugar(),
                of.acidity(),
                of.density(),
                of.drop(),
                null,
                null,
                null,
                of.contains(),
                of.aroma(),
                of.plant(),
                of.ratio(),
                null,
                null);
    }

    static List<Finding> stops(Drink drink) {
        List<Finding> stops = against(drink);
        stops.removeIf(finding -> finding.severity() != Severity.STOP);
        return stops;
    }

    /** Returns what speaks against it, or calls for care with it, at any dose. */
    static List<Finding> against(Drink drink) {
        List<Finding> against = new ArrayList<>(NotForDrinking.judge(drink, Serving.USUAL));
        against.addAll(PoisonousPlants.judge(drink, Serving.USUAL));
        against.addAll(NamedCautions.judge(drink, Serving.USUAL));
        against.addAll(TextCautions.judge(drink, Serving.USUAL));
        against.addAll(UsLaw.prohibited(drink, Serving.USUAL));
        against.addAll(EuLaw.restrictedPlants(drink, Serving.USUAL));
        against.addAll(HouseRules.leftOut(drink));
        return against;
    }

    /** Returns a litre of a drink of spirit and water with {@value #TRIAL} g of it; null where there is none of that strength. */
    private static @Nullable Drink drink(Ingredient ingredient, AlcoholByVolume strength, Grounds grounds) {
        Dose dose = new Dose(new Mass(TRIAL));
        List<Line> lines = List.of(
                new Line(ingredient.name(), new LineAmount.PerLitre(new Typed<>("trial", dose)), null, null),
                new Line("spirit 96 %", new LineAmount.Free(), null, null),
                new Line("water", new LineAmount.Free(), null, null));
        Target target = new Target(
                new Typed<>("1 L", Span.exactly(1000.0)),
                null,
                new Typed<>("strength", Span.exactly(strength.percent())),
                null,
                SugarBasis.AS_DISSOLVED,
                null);
        Recipe recipe = Recipe.plain(ingredient.name(), target, List.of(ingredient), lines);
        return Planner.plan(Making.alone(recipe)) instanceof Planning.Planned planned
                        && planned.plan().reached()
                ? Drink.of(planned.plan(), grounds)
                : null;
    }

    /**
     * The same of an essential oil of a name.
     *
     * @throws IllegalArgumentException when there is none of that strength
     */
    static Drink ofOil(String name, AlcoholByVolume strength, Grounds grounds) {
        Drink drink = drink(Ingredient.named(name, Kind.ESSENTIAL_OIL), strength, grounds);
        if (drink == null) {
            throw new IllegalArgumentException(
                    "a drink lies above 0 and below 96 % vol, not at " + strength.percent() + " % vol");
        }
        return drink;
    }
}
