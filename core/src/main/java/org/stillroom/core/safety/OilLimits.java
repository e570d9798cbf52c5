package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
import org.stillroom.core.reference.Source;

/**
 * What the law's maxima leave room for of essential oils in a litre of drink, so that oils can be chosen within them.
 *
 * <p>Each oil is judged by the same rules as a drink, alone and at {@value #TRIAL} g/L: what comes of a watched substance, by the most
 * adverse source group, grows in proportion with the dose.
 *
 * @param oils in the order asked
 * @param maxima mg per kg of the drink by watched substance, the strictest where several hold
 */
public record OilLimits(List<OfOil> oils, Map<String, Maximum> maxima) {
    /** The dose at which an oil is judged, g/L. */
    private static final double TRIAL = 0.01;
    /** Strength of a drink where none is asked; what is said of names does not depend on it. */
    private static final AlcoholByVolume ANY = AlcoholByVolume.at20(30.0);

    public OilLimits {
        oils = List.copyOf(oils);
        maxima = Map.copyOf(maxima);
    }

    /** A maximum in the drink as consumed, mg/kg, whose it is and where it stands; a house rule stands in no law. */
    public record Maximum(
            double milligramsPerKilogram,
            String whose,
            @Nullable Source source) {}

    /**
     * One oil.
     *
     * @param stops why it must not go into a drink at all; empty where nothing says so
     * @param reach mg per kg of drink at most that a g/L of it brings, by watched substance that has a maximum
     * @param unknown watched substances with a maximum that it brings, nobody can say how much
     */
    public record OfOil(String name, List<Finding> stops, Map<String, Double> reach, List<String> unknown) {
        public OfOil {
            stops = List.copyOf(stops);
            reach = Map.copyOf(reach);
            unknown = List.copyOf(unknown);
        }

        /** Returns whether it may go into a drink. */
        public boolean isAllowed() {
            return stops.isEmpty();
        }
    }

    /**
     * Returns what the maxima leave room for.
     *
     * @param names of essential oils
     * @param strength of the drink
     * @param grounds what is known of compositions and limits
     * @throws IllegalArgumentException when no drink of oil, spirit and water has that strength
     */
    public static OilLimits of(List<String> names, AlcoholByVolume strength, Grounds grounds) {
        List<OfOil> oils = new ArrayList<>();
        Map<String, Maximum> maxima = new TreeMap<>();
        for (String name : names) {
            Drink drink = drink(name, strength, grounds);
            Map<String, Double> reach = new TreeMap<>();
            List<String> unknown = new ArrayList<>();
            for (Amount amount : drink.amounts()) {
                String substance = amount.watched().name();
                Maximum strictest = strictest(drink, amount.watched());
                if (strictest != null) {
                    maxima.merge(substance, strictest, OilLimits::stricter);
                    reach.put(substance, amount.perKilogram().most() / TRIAL);
                    if (!amount.isKnown()) {
                        unknown.add(substance);
                    }
                }
            }
            oils.add(new OfOil(name, stops(drink), reach, unknown));
        }
        return new OilLimits(oils, maxima);
    }

    /**
     * Returns what is said of oils by their names alone, however little of them is taken: not for drinking, poisonous, what calls for care,
     * banned, left out by a rule of the house, on no list, not known. That an oil is listed is not said here, and silence clears none: amounts are judged in the drink.
     *
     * @param names of essential oils, at which the findings are
     */
    public static List<Finding> told(List<String> names, Grounds grounds) {
        List<Finding> told = new ArrayList<>();
        for (String name : names) {
            Drink drink = drink(name, ANY, grounds);
            List<Finding> its = against(drink);
            its.addAll(UsListing.judge(drink, grounds.serving()));
            its.addAll(NotKnown.judge(drink, grounds.serving()));
            its.removeIf(
                    finding -> UsListing.isListed(finding) || finding.rule().equals(NotKnown.OF_FLAVOUR));
            its.forEach(finding -> told.add(finding.at(finding.where().replace("line 1, " + name, name))));
        }
        return told.stream().distinct().toList();
    }

    static Maximum stricter(Maximum one, Maximum other) {
        return one.milligramsPerKilogram() <= other.milligramsPerKilogram() ? one : other;
    }

    private static @Nullable Maximum strictest(Drink drink, Watched watched) {
        Maximum strictest = watched.name().equals("thujone") ? UsLaw.maximum(drink.knowledge(), "thujone") : null;
        Maximum house = HouseRules.maxima(drink).get(watched.name());
        if (house != null) {
            strictest = strictest == null ? house : stricter(strictest, house);
        }
        for (Knowledge.EuMaximum row : drink.knowledge().maxima()) {
            if (row.isMaximum()
                    && !watched.euName().isEmpty()
                    && row.substance().equals(watched.euName())
                    && EuMaxima.applies(row.category(), drink)) {
                Maximum its = new Maximum(row.milligramsPerKilogram(), Place.EU.label(), Source.EU_1334_2008);
                strictest = strictest == null ? its : stricter(strictest, its);
            }
        }
        return strictest;
    }

    private static List<Finding> stops(Drink drink) {
        List<Finding> stops = against(drink);
        stops.removeIf(finding -> finding.severity() != Severity.STOP);
        return stops;
    }

    /** Returns what speaks against an oil, or calls for care with it, at any dose. */
    private static List<Finding> against(Drink drink) {
        List<Finding> against = new ArrayList<>(NotForDrinking.judge(drink, Serving.USUAL));
        against.addAll(PoisonousPlants.judge(drink, Serving.USUAL));
        against.addAll(NamedCautions.judge(drink, Serving.USUAL));
        against.addAll(UsLaw.prohibited(drink, Serving.USUAL));
        against.addAll(EuLaw.restrictedPlants(drink, Serving.USUAL));
        against.addAll(HouseRules.leftOut(drink));
        return against;
    }

    private static Drink drink(String name, AlcoholByVolume strength, Grounds grounds) {
        Dose dose = new Dose(new Mass(TRIAL));
        List<Line> lines = List.of(
                new Line(name, new LineAmount.PerLitre(new Typed<>("trial", dose)), null, null),
                new Line("spirit 96 %", new LineAmount.Free(), null, null),
                new Line("water", new LineAmount.Free(), null, null));
        Target target = new Target(
                new Typed<>("1 L", Span.exactly(1000.0)),
                null,
                new Typed<>("strength", Span.exactly(strength.percent())),
                null,
                SugarBasis.AS_DISSOLVED,
                null);
        Recipe recipe = Recipe.plain(name, target, List.of(Ingredient.named(name, Kind.ESSENTIAL_OIL)), lines);
        Planning planning = Planner.plan(Making.alone(recipe));
        if (planning instanceof Planning.Planned planned && planned.plan().reached()) {
            return Drink.of(planned.plan(), grounds);
        }
        throw new IllegalArgumentException(
                "a drink lies above 0 and below 96 % vol, not at " + strength.percent() + " % vol");
    }
}
