package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * What a laboratory found in the drink itself, in place of what its ingredients can bring.
 *
 * <p>It holds for the drink that was looked at and for no other. Where it lies far from what surely goes in, or from the most that can, the more
 * adverse of both counts and the maker is asked, so that no slip of a unit lifts a limit.
 */
final class AnalysedDrink {
    /** Name of the rule. */
    static final String NAME = "analysis-of-drink";

    /** So many times less than the least, or more than the most, is far. Own judgement. */
    private static final double FAR = 3.0;

    private static final String PLACE = "the drink";

    private AnalysedDrink() {}

    /** Returns how much there is of a watched substance by the analysis, where it tells, else by what goes in. */
    static @Nullable Amount amount(Drink drink, Watched watched, @Nullable Amount mixed) {
        @Nullable Range fractions = fractions(drink, watched);
        if (fractions == null) {
            return mixed;
        }
        Range perKilogram = fractions.times(1e6);
        Range perLitre = perKilogram.times(drink.kilograms() / drink.litres());
        if (mixed == null || !isFar(mixed, perKilogram)) {
            List<String> from = mixed == null ? List.of(PLACE) : mixed.places();
            return new Amount(
                    watched, perKilogram, perLitre, List.of(), from, RowStatus.READ, List.of(LotAnalyses.OF_DRINK));
        }
        List<String> basis = new ArrayList<>(mixed.basis());
        basis.add(LotAnalyses.OF_DRINK);
        return new Amount(
                watched,
                FarAnalysis.hull(perKilogram, mixed.perKilogram()),
                FarAnalysis.hull(perLitre, mixed.perLitre()),
                mixed.notKnownFrom(),
                mixed.from(),
                mixed.status(),
                basis);
    }

    /** Returns whether an analysis of the drink tells of a watched substance. */
    static boolean tells(Drink drink, String watched) {
        return drink.knowledge().watched().stream()
                .anyMatch(each -> each.name().equals(watched) && fractions(drink, each) != null);
    }

    private static @Nullable Range fractions(Drink drink, Watched watched) {
        return drink.analyses().drink().fractions(watched, OptionalDouble.of(drink.kilograms() / drink.litres()));
    }

    private static boolean isFar(Amount mixed, Range found) {
        Range known = mixed.perKilogram();
        boolean below = found.most() < known.least() / FAR;
        boolean above = mixed.isKnown() && known.most() > 0.0 && found.least() > known.most() * FAR;
        return below || above;
    }

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (Watched watched : drink.knowledge().watched()) {
            @Nullable Range fractions = fractions(drink, watched);
            if (fractions != null) {
                @Nullable Amount mixed = drink.asMixed(watched.name());
                findings.add(told(watched, fractions.times(1e6), mixed));
            }
        }
        return findings;
    }

    private static Finding told(Watched watched, Range found, @Nullable Amount mixed) {
        boolean far = mixed != null && isFar(mixed, found);
        String name = Limit.capital(watched.name());
        return new Finding(
                NAME,
                far ? Severity.CAUTION : Severity.NOTE,
                PLACE,
                "",
                far ? "is this meant?" : "analysed",
                name + ": the analysis of the drink says " + found.told() + " mg/kg; " + byWhatGoesIn(mixed)
                        + ". It holds for that drink alone.",
                far ? "far is a third of what surely goes in, or three times the most that can; own judgement" : "",
                far
                        ? "Look at the figure and its unit, and whether it is of this drink. The more adverse of both counts."
                        : "Have it done again when a bottle, a plant, a time or an amount changes.",
                null,
                null);
    }

    private static String byWhatGoesIn(@Nullable Amount mixed) {
        if (mixed == null) {
            return "of what goes in nothing is known to bring any";
        }
        if (mixed.from().isEmpty()) {
            return "what goes in brings nobody knows how much";
        }
        return "by what goes in it is " + mixed.perKilogram().told() + " mg/kg"
                + (mixed.isKnown() ? "" : ", and more that is not known");
    }
}
