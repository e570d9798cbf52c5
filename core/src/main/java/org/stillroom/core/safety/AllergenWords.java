package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.aroma.CommonNames;

/**
 * Finds the names of a table of allergens in a text, whole words and of one allergen the longest first: almond milk is no milk, but
 * almond.
 */
final class AllergenWords {
    private AllergenWords() {}

    private record Hit(TextWords.Phrase phrase, TextWords.Place place, AllergenName row) {
        int letters() {
            return phrase.words().stream()
                    .mapToInt(stem -> stem.text().length())
                    .sum();
        }

        boolean isWordOf(Hit other) {
            return place.overlaps(other.place());
        }

        boolean isSameAs(Hit other) {
            return place.equals(other.place()) && phrase.equals(other.phrase());
        }
    }

    /** Returns what a text names that is not denied in it, each once. */
    static List<AllergenName> in(String text, List<AllergenName> rows) {
        Set<AllergenName> named = new LinkedHashSet<>();
        Set<String> readings = new LinkedHashSet<>(List.of(text));
        readings.addAll(CommonNames.readings(text));
        Map<String, List<AllergenName>> ofOne = new LinkedHashMap<>();
        rows.forEach(row ->
                ofOne.computeIfAbsent(row.allergen(), any -> new ArrayList<>()).add(row));
        for (String reading : readings) {
            TextWords words = TextWords.of(reading);
            ofOne.values().forEach(same -> longest(words, same).forEach(hit -> named.add(hit.row())));
        }
        return List.copyOf(named);
    }

    /** Returns the rows of what a word means: of an allergen, or of a group of them by its own name. */
    static List<AllergenName> meant(String word, List<AllergenName> rows) {
        List<AllergenName> meant = new ArrayList<>(in(word.strip(), rows));
        rows.stream().filter(row -> isGroup(word, row)).forEach(meant::add);
        return meant.stream()
                .filter(row -> row.says() == AllergenName.Says.CONTAINS && !row.isAbout(AllergenName.ANY))
                .distinct()
                .toList();
    }

    /** Returns whether a word, in the plain form of {@link Words}, is the name of the group of a row: nuts, milk, eggs, sulphites. */
    static boolean isGroup(String word, AllergenName row) {
        return Words.holds(word, Words.plain(row.allergen())) && word.strip().split(" ", -1).length == 1;
    }

    private static List<Hit> longest(TextWords text, List<AllergenName> rows) {
        List<Hit> hits = new ArrayList<>();
        for (AllergenName row : rows) {
            for (TextWords.Phrase phrase : row.names()) {
                text.places(phrase).forEach(place -> hits.add(new Hit(phrase, place, row)));
            }
        }
        hits.sort(Comparator.comparingInt(Hit::letters).reversed());
        List<Hit> taken = new ArrayList<>();
        for (Hit hit : hits) {
            if (taken.stream().allMatch(other -> !hit.isWordOf(other) || hit.isSameAs(other))) {
                taken.add(hit);
            }
        }
        return taken;
    }
}
