package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Collects everything that is wrong with a file, to be told at once and in the order of its lines. */
final class Problems {
    /** More than this is not read by anybody; the rest is counted. */
    static final int MOST_TOLD = 100;

    /**
     * A finding and the line that it is told of.
     *
     * @param choices texts to choose from that would each be understood; mostly empty
     */
    record Told(int line, Finding finding, List<String> choices) {}

    private final Function<Place, String> placeInWords;

    private final List<Told> told = new ArrayList<>();
    private final Set<String> assumptions = new HashSet<>();
    private final List<Told> assumed = new ArrayList<>();

    /** Collects what is wrong with a file; places are its lines. */
    Problems() {
        this(Place::inWords);
    }

    /**
     * Collects what is wrong with something else than a file.
     *
     * @param placeInWords what a reader is told of a place; empty where the page shows it
     */
    Problems(Function<Place, String> placeInWords) {
        this.placeInWords = placeInWords;
    }

    /**
     * Notes a problem.
     *
     * @param what the part of the recipe in words, such as "neutral spirit, strength", or empty
     */
    void add(String rule, Place place, String what, String verdict, String message, String remedy) {
        Finding finding = Finding.of(rule, Severity.STOP, where(place, what), verdict, message, remedy);
        told.add(new Told(place.line(), finding, List.of()));
    }

    /** Notes that a text has several meanings. */
    void ask(Place place, String what, String question, String remedy, List<String> choices) {
        Finding finding =
                Finding.of("quantity-ambiguous", Severity.STOP, where(place, what), "ambiguous", question, remedy);
        told.add(new Told(place.line(), finding, choices));
    }

    /** Notes what was taken for granted, one sentence; told once for all places. */
    void assume(Place place, String what, String assumption) {
        if (!assumptions.add(assumption)) {
            return;
        }
        Finding finding =
                Finding.of("quantity-assumed", Severity.NOTE, where(place, what), "taken for granted", assumption, "");
        assumed.add(new Told(place.line(), finding, List.of()));
    }

    private String where(Place place, String what) {
        String line = placeInWords.apply(place);
        return what.isEmpty() || line.isEmpty() ? line + what : line + ", " + what;
    }

    /** Returns whether so much is wrong that nothing more is shown. */
    boolean full() {
        return told.size() >= MOST_TOLD;
    }

    int count() {
        return told.size();
    }

    /** Returns what was taken for granted, by line. */
    List<Finding> notes() {
        return byLine(assumed);
    }

    /** Returns the problems and the lines that they stand on. */
    List<Told> told() {
        return List.copyOf(told);
    }

    /** Returns what was taken for granted, and the lines that it stands on. */
    List<Told> assumed() {
        return List.copyOf(assumed);
    }

    /** Returns the problems by line; those of one line in the order in which they were noted. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(byLine(told));
        if (told.size() > MOST_TOLD) {
            findings.add(Finding.of(
                    "file-more-problems",
                    Severity.STOP,
                    "",
                    "more problems",
                    "There are " + (told.size() - MOST_TOLD) + " further problems that are not listed.",
                    "Put right the ones above and read the file again."));
        }
        return List.copyOf(findings);
    }

    private static List<Finding> byLine(List<Told> told) {
        return told.stream()
                .sorted(Comparator.comparingInt(Told::line))
                .map(Told::finding)
                .limit(MOST_TOLD)
                .toList();
    }
}
