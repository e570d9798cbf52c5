package org.stillroom.core.safety;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How much of a watched substance is in a drink.
 *
 * @param watched which
 * @param perKilogram mg in a kilogram of the drink, of what is known
 * @param perLitre mg in a litre of it at 20 °C, of what is known
 * @param notKnownFrom places that bring some, nobody can say how much; empty when all is known
 * @param from places that bring what is known
 * @param status the weakest standing among the figures used
 * @param basis the most adverse source groups
 */
public record Amount(
        Watched watched,
        Range perKilogram,
        Range perLitre,
        List<String> notKnownFrom,
        List<String> from,
        RowStatus status,
        List<String> basis) {
    public Amount {
        notKnownFrom = List.copyOf(notKnownFrom);
        from = List.copyOf(from);
        basis = List.copyOf(basis);
    }

    /** Returns the amount of something that is weighed in, of which nothing is not known. */
    static Amount weighed(String name, double grams, List<String> from, Drink drink) {
        return weighed(name, new Range(grams, grams), from, List.of(), drink);
    }

    /** Returns the amount of something that is weighed in. */
    static Amount weighed(String name, Range grams, List<String> from, List<String> notKnownFrom, Drink drink) {
        return new Amount(
                new Watched(name, List.of(name), List.of(), "", false),
                grams.times(1000.0 / drink.kilograms()),
                grams.times(1000.0 / drink.litres()),
                notKnownFrom,
                from,
                RowStatus.DERIVED,
                List.of());
    }

    /** Returns the same of which more can come from these places. */
    Amount andNotKnownFrom(List<String> places) {
        Set<String> all = new LinkedHashSet<>(notKnownFrom);
        all.addAll(places);
        return new Amount(watched, perKilogram, perLitre, List.copyOf(all), from, status, basis);
    }

    /** Returns whether the most that can be in it is known. */
    public boolean isKnown() {
        return notKnownFrom.isEmpty();
    }

    /** Returns whether all of it is counted by an analysis. */
    public boolean isAnalysed() {
        return analysis() != null;
    }

    /** Returns the analysis by which all of it is counted, of the lots or of the drink; null where it is not. */
    public @Nullable String analysis() {
        boolean one = isKnown() && basis.size() == 1;
        return one && isAnalysis(basis.get(0)) ? basis.get(0) : null;
    }

    /** Returns whether a basis is an analysis of what is in the bottle, and not a table. */
    static boolean isAnalysis(String basis) {
        return basis.equals(LotAnalyses.BASIS) || basis.equals(LotAnalyses.OF_DRINK);
    }

    /** Returns the milligrams of what is known on one day. */
    public Range perDay(Serving serving) {
        return perLitre.times(serving.litresPerDay());
    }

    /** Returns where it comes from, or may come from, each once. */
    List<String> places() {
        return Stream.concat(from.stream(), notKnownFrom.stream()).distinct().toList();
    }

    /** Returns the same in one text. */
    String where() {
        return String.join("; ", places());
    }
}
