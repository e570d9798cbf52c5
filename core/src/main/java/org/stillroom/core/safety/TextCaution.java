package org.stillroom.core.safety;

import java.util.List;
import java.util.stream.Stream;
import org.stillroom.core.reference.Severity;

/**
 * What the words of a step or a note call for: a row of the table of cautions that texts call for.
 *
 * @param rule name of its findings
 * @param of what is read
 * @param ways each of them suffices
 * @param near how many words may lie between
 * @param unless what, standing near, means something else
 * @param evenSo what, standing near, means it all the same
 * @param until what ends it: what is said behind it is of something else
 * @param onlyWithSpirit whether it is asked only where something strong goes in
 * @param severity how much it asks
 * @param verdict one or two words
 * @param message what is
 * @param remedy what to do
 * @param status how the row came to us
 */
public record TextCaution(
        String rule,
        Of of,
        List<Way> ways,
        int near,
        List<TextWords.Phrase> unless,
        List<TextWords.Phrase> evenSo,
        List<TextWords.Phrase> until,
        boolean onlyWithSpirit,
        Severity severity,
        String verdict,
        String message,
        String remedy,
        RowStatus status) {
    /** What means something else may stand a little further off than what belongs together. */
    private static final int FURTHER = 3;

    /** What is read. */
    public enum Of {
        /** Steps, notes and the vessel. */
        TEXTS,
        /** An ingredient: its name, its kind and its notes together. */
        INGREDIENTS
    }

    /**
     * A way to say it.
     *
     * @param sets phrases, of each of which one has to stand near the first
     * @param inOneClause whether they have to stand in the clause of the first
     */
    public record Way(List<List<TextWords.Phrase>> sets, boolean inOneClause) {
        public Way {
            sets = List.copyOf(sets);
        }

        static Way of(String written) {
            boolean inOneClause = written.contains("+");
            return new Way(
                    Stream.of(written.split(inOneClause ? "\\+" : "&", -1))
                            .map(TextCaution::phrases)
                            .toList(),
                    inOneClause);
        }
    }

    public TextCaution {
        ways = List.copyOf(ways);
        unless = List.copyOf(unless);
        evenSo = List.copyOf(evenSo);
        until = List.copyOf(until);
    }

    /** Returns phrases that are written with semicolons between. */
    static List<TextWords.Phrase> phrases(String cell) {
        return Words.list(cell).stream().map(TextWords.Phrase::of).toList();
    }

    /** Returns ways that are written "a;b & c;d | e": one of a and b near one of c and d, or e; with + for &, in one clause. */
    static List<Way> ways(String cell) {
        return Stream.of(cell.split("\\|", -1)).map(Way::of).toList();
    }

    /** Returns whether a text says it. */
    boolean isSaidIn(TextWords text) {
        return ways.stream().anyMatch(way -> isSaid(way, text));
    }

    private boolean isSaid(Way way, TextWords text) {
        for (TextWords.Place first : places(way.sets().get(0), text)) {
            int end = end(first, text);
            boolean together = way.sets().stream()
                    .skip(1)
                    .allMatch(set -> places(set, text).stream()
                            .anyMatch(place -> place.first() < end
                                    && !place.overlaps(first)
                                    && place.isWithin(first, near)
                                    && (!way.inOneClause() || text.areInOneClause(place, first))));
            if (together && (!stands(unless, first, text.length(), text) || stands(evenSo, first, end, text))) {
                return true;
            }
        }
        return false;
    }

    /** Returns the word behind which a text no longer speaks of what it said first. */
    private int end(TextWords.Place first, TextWords text) {
        return places(until, text).stream()
                .mapToInt(TextWords.Place::first)
                .filter(at -> at >= first.end())
                .min()
                .orElse(text.length());
    }

    private boolean stands(List<TextWords.Phrase> phrases, TextWords.Place first, int end, TextWords text) {
        return places(phrases, text).stream()
                .anyMatch(place -> place.first() < end && place.isWithin(first, near + FURTHER));
    }

    private static List<TextWords.Place> places(List<TextWords.Phrase> phrases, TextWords text) {
        return phrases.stream().flatMap(phrase -> text.places(phrase).stream()).toList();
    }
}
