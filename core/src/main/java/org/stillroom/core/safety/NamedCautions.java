package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.OilPart;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;

/** Look-alikes, kernels, medicines, materials and methods: what a name calls for. */
final class NamedCautions {
    private NamedCautions() {}

    /** Rules of names that steps and notes are read for elsewhere, or that ask about a line. */
    private static final Set<String> OF_LINES = Set.of("wrong-alcohol", "not-food-grade", "kind-not-said");

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (PlannedLine line : drink.lines()) {
            judge(line, drink).stream()
                    .filter(row -> !isSettledByWords(row, line, drink))
                    .forEach(row -> findings.add(finding(row, line.name())));
        }
        return findings;
    }

    private static boolean isSettledByWords(Knowledge.NamedCaution row, PlannedLine line, Drink drink) {
        return TextCautions.say(row, TextCautions.whole(line), TextCaution.Of.INGREDIENTS, drink)
                || Passages.of(drink.plan()).stream()
                        .filter(passage -> passage.of() == Passages.Of.STEP)
                        .anyMatch(step -> TextCautions.say(row, step.text(), TextCaution.Of.TEXTS, drink));
    }

    /** Returns what the names of all lines call for. */
    static Set<Knowledge.NamedCaution> ofLines(Drink drink) {
        Set<Knowledge.NamedCaution> ofLines = new HashSet<>();
        drink.lines().forEach(line -> ofLines.addAll(judge(line, drink)));
        return ofLines;
    }

    /** Returns what a sentence calls for that no line does: of a fresh plant or anything else; it need not go in, so that nothing stops. */
    static List<Finding> inWords(Passages.Passage passage, Set<Knowledge.NamedCaution> ofLines, Drink drink) {
        String text = passage.goingIn();
        Named named =
                named(text, drink, row -> applies(row, Kind.FRESH_PLANT) && !OF_LINES.contains(row.rule()), Set.of());
        return named.rows().stream()
                .filter(row -> !ofLines.contains(row))
                .filter(row -> !TextCautions.say(row, passage.text(), TextCaution.Of.TEXTS, drink))
                .filter(row -> !TextWords.isOnlySpokenOf(text, TextWords.phrases(row.names())))
                .map(row -> finding(row, passage.where()).withoutStop())
                .toList();
    }

    /** The oils that are named in an essence are looked at one by one, as oils; what they settle its own name does not ask again. */
    private static List<Knowledge.NamedCaution> judge(PlannedLine line, Drink drink) {
        Kind kind = line.ingredient().kind();
        List<String> oils = kind == Kind.ESSENCE ? oils(line) : List.of();
        List<Knowledge.NamedCaution> found = new ArrayList<>();
        Set<String> settled = new HashSet<>();
        for (String oil : oils) {
            Named named = named(oil, drink, row -> applies(row, Kind.ESSENTIAL_OIL), Set.of());
            found.addAll(named.rows());
            settled.addAll(named.settled());
        }
        String own =
                oils.isEmpty() ? line.words() : line.ingredient().ingredient().words();
        found.addAll(named(
                        own + said(kind),
                        drink,
                        row -> applies(row, kind) || (kind == Kind.ESSENCE && isInPlace(row, drink)),
                        settled)
                .rows());
        return found;
    }

    private static List<String> oils(PlannedLine line) {
        return line.ingredient().oilParts().stream()
                .map(OilPart::name)
                .filter(name -> !name.equals(line.ingredient().name()))
                .toList();
    }

    /** Returns whether a row stands in the place of another that it settles. */
    private static boolean isInPlace(Knowledge.NamedCaution row, Drink drink) {
        return drink.knowledge().cautions().stream()
                .anyMatch(other -> other.unless().equals(row.verdict()));
    }

    /** A honey is such by its kind, whatever it is called. */
    private static String said(Kind kind) {
        return kind == Kind.HONEY ? "; " + kind.label() : "";
    }

    /**
     * What a text names.
     *
     * @param rows that it calls for
     * @param settled names of rows in whose place others stand
     */
    private record Named(List<Knowledge.NamedCaution> rows, Set<String> settled) {}

    /**
     * Names are found among the rows of one rule at a time: bitter orange oil is still bitter orange.
     *
     * @param settled names that need no asking any more where another row can stand in their place
     */
    private static Named named(String text, Drink drink, Predicate<Knowledge.NamedCaution> which, Set<String> settled) {
        Map<String, List<Knowledge.NamedCaution>> families = new LinkedHashMap<>();
        drink.knowledge().cautions().stream()
                .filter(which)
                .forEach(row -> families.computeIfAbsent(row.rule(), any -> new ArrayList<>())
                        .add(row));
        List<Knowledge.NamedCaution> named = families.values().stream()
                .flatMap(rows -> named(text, rows, drink))
                .toList();
        List<Knowledge.NamedCaution> left = new ArrayList<>();
        Set<String> settledHere = new HashSet<>();
        for (Knowledge.NamedCaution row : named) {
            List<Knowledge.NamedCaution> inPlace = named.stream()
                    .filter(other -> other.verdict().equals(row.unless()))
                    .toList();
            boolean sameQuestion =
                    inPlace.stream().anyMatch(other -> other.rule().equals(row.rule()));
            boolean asksOn = row.unless().isEmpty() || !settled.containsAll(asked(text, row, inPlace));
            if (!sameQuestion && asksOn) {
                left.add(row);
            } else if (!sameQuestion) {
                row.names().stream()
                        .filter(name -> Words.any(text, List.of(name)))
                        .forEach(settledHere::add);
            }
        }
        return new Named(left, settledHere);
    }

    /** What only a name turned round says stands in no other's place: it may ask, and settles nothing. */
    private static Stream<Knowledge.NamedCaution> named(String text, List<Knowledge.NamedCaution> rows, Drink drink) {
        List<Knowledge.NamedCaution> asWritten = Words.named(Words.readings(text), rows, Knowledge.NamedCaution::names);
        return Words.named(text, rows, Knowledge.NamedCaution::names).stream()
                .filter(row -> asWritten.contains(row) || !isInPlace(row, drink));
    }

    /** Returns the names of a row that a text still says when those of the rows in its place are taken out: of two fruits one may be settled. */
    private static Set<String> asked(String text, Knowledge.NamedCaution row, List<Knowledge.NamedCaution> inPlace) {
        Set<String> asked = new HashSet<>();
        for (String reading : Words.readingsTurned(text)) {
            String rest =
                    Words.read(reading, inPlace, Knowledge.NamedCaution::names).rest();
            row.names().stream().filter(name -> Words.holds(rest, name)).forEach(asked::add);
        }
        return asked;
    }

    private static boolean applies(Knowledge.NamedCaution row, Kind kind) {
        boolean plant = kind == Kind.FRESH_PLANT || kind == Kind.DRIED_PLANT;
        boolean place = row.place().equals("ingredients") || (row.place().equals("plants") && plant);
        return place && (row.kinds().isEmpty() || row.kinds().contains(kind.label()));
    }

    private static Finding finding(Knowledge.NamedCaution row, String where) {
        return new Finding(
                row.rule(),
                row.severity(),
                where,
                "",
                row.verdict(),
                row.message(),
                row.status().mayClear() ? "" : "general knowledge, from memory",
                row.remedy(),
                null,
                source(row));
    }

    private static Source source(Knowledge.NamedCaution row) {
        return row.status().mayClear() ? Source.NOT_FOR_DRINKING : Source.HANDLING_CAUTIONS;
    }
}
