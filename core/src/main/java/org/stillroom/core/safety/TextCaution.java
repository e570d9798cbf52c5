package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.stillroom.core.reference.Severity;

/**
 * What the words of a step or a note call for: a row of the table of cautions that texts call for.
 *
 * @param rule name of its findings
 * @param of what is read
 * @param ways each of them suffices: sets of phrases, of each of which one has to stand near the others
 * @param near how many words may lie between
 * @param unless what, standing near, means something else
 * @param evenSo what, standing near, means it all the same
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
        List<List<List<TextWords.Phrase>>> ways,
        int near,
        List<TextWords.Phrase> unless,
        List<TextWords.Phrase> evenSo,
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

    public TextCaution {
        ways = List.copyOf(ways);
        unless = List.copyOf(unless);
        evenSo = List.copyOf(evenSo);
    }

    /** Returns phrases that are written with semicolons between. */
    static List<TextWords.Phrase> phrases(String cell) {
        return Words.list(cell).stream().map(TextWords.Phrase::of).toList();
    }

    /** Returns ways that are written "a;b & c;d | e": one of a and b near one of c and d, or e. */
    static List<List<List<TextWords.Phrase>>> ways(String cell) {
        List<List<List<TextWords.Phrase>>> ways = new ArrayList<>();
        for (String way : cell.split("\\|", -1)) {
            ways.add(Stream.of(way.split("&", -1)).map(TextCaution::phrases).toList());
        }
        return ways;
    }

    /** Returns whether a text says it. */
    boolean isSaidIn(TextWords text) {
        return ways.stream().anyMatch(way -> isSaid(way, text));
    }

    private boolean isSaid(List<List<TextWords.Phrase>> way, TextWords text) {
        for (TextWords.Place first : places(way.get(0), text)) {
            boolean together = way.stream()
                    .skip(1)
                    .allMatch(set -> places(set, text).stream()
                            .anyMatch(place -> !place.overlaps(first) && place.isWithin(first, near)));
            if (together && (!stands(unless, first, text) || stands(evenSo, first, text))) {
                return true;
            }
        }
        return false;
    }

    private boolean stands(List<TextWords.Phrase> phrases, TextWords.Place first, TextWords text) {
        return places(phrases, text).stream().anyMatch(place -> place.isWithin(first, near + FURTHER));
    }

    private static List<TextWords.Place> places(List<TextWords.Phrase> phrases, TextWords text) {
        return phrases.stream().flatMap(phrase -> text.places(phrase).stream()).toList();
    }
}
