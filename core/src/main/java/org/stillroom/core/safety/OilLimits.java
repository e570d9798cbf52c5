package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;

/**
 * What the law's maxima leave room for of essential oils in a litre of drink, so that oils can be chosen within them.
 *
 * <p>Each oil is judged by the same rules as a drink, alone and at {@value ByName#TRIAL} g/L: what comes of a watched substance, by the most
 * adverse source group, grows in proportion with the dose.
 *
 * @param oils in the order asked
 * @param maxima mg per kg of the drink by watched substance, the strictest where several hold
 */
public record OilLimits(List<OfOil> oils, Map<String, Maximum> maxima) {
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
            Drink drink = ByName.ofOil(name, strength, grounds);
            Map<String, Double> reach = new TreeMap<>();
            List<String> unknown = new ArrayList<>();
            for (Amount amount : drink.amounts()) {
                String substance = amount.watched().name();
                Maximum strictest = strictest(drink, amount.watched());
                if (strictest != null) {
                    maxima.merge(substance, strictest, OilLimits::stricter);
                    reach.put(substance, amount.perKilogram().most() / ByName.TRIAL);
                    if (!amount.isKnown()) {
                        unknown.add(substance);
                    }
                }
            }
            oils.add(new OfOil(name, ByName.stops(drink), reach, unknown));
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
            Drink drink = ByName.ofOil(name, ByName.ANY, grounds);
            List<Finding> its = ByName.against(drink);
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
}
