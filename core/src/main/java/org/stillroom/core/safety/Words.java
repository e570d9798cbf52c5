package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Finds known names as whole words in what a maker wrote, the longest first, so that star anise is not anise.
 *
 * <p>Names are kept in one plain form: small letters, one blank before each word, none at the end.
 */
final class Words {
    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}']+");
    private static final String TAKEN = " | ";

    private Words() {}

    /** Returns a text in small letters with one blank before each word. */
    static String plain(String text) {
        String small = text.toLowerCase(Locale.ROOT).replace('’', '\'');
        String bare = NO_WORD.matcher(small).replaceAll(" ").strip();
        return bare.isEmpty() ? "" : " " + bare;
    }

    /** Returns the cells of a list that has semicolons between. */
    static List<String> list(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split(";", -1));
    }

    /** Returns such cells as names to look for. */
    static List<String> names(String cell) {
        return list(cell).stream().map(Words::plain).toList();
    }

    /** Returns whether a plain name stands in a plain text as whole words, or as more than one of it. */
    static boolean holds(String text, String name) {
        int at = text.indexOf(name);
        while (at >= 0) {
            int end = at + name.length();
            if (ends(text, end) || (text.charAt(end) == 's' && ends(text, end + 1))) {
                return true;
            }
            at = text.indexOf(name, at + 1);
        }
        return false;
    }

    private static boolean ends(String text, int at) {
        return at == text.length() || text.charAt(at) == ' ';
    }

    /** Returns whether one of the plain names stands in a text as it was written. */
    static boolean any(String text, List<String> names) {
        String plain = plain(text);
        return names.stream().anyMatch(name -> holds(plain, name));
    }

    private record Hit<T>(String name, T thing) {}

    /** Returns the things that the text names, each once; a word that belongs to a longer name counts for that name alone. */
    static <T> List<T> named(String text, List<T> things, Function<T, List<String>> names) {
        String rest = plain(text);
        List<Hit<T>> hits = new ArrayList<>();
        for (T thing : things) {
            for (String name : names.apply(thing)) {
                if (holds(rest, name)) {
                    hits.add(new Hit<>(name, thing));
                }
            }
        }
        hits.sort(Comparator.comparingInt((Hit<T> hit) -> -hit.name().length()));
        return longest(rest, hits);
    }

    private static <T> List<T> longest(String text, List<Hit<T>> hits) {
        String rest = text;
        Set<T> found = new LinkedHashSet<>();
        String taken = "";
        for (Hit<T> hit : hits) {
            boolean again = hit.name().equals(taken);
            if (again || holds(rest, hit.name())) {
                found.add(hit.thing());
                taken = hit.name();
                rest = (rest + " ")
                        .replace(taken + " ", TAKEN)
                        .replace(taken + "s ", TAKEN)
                        .stripTrailing();
            }
        }
        return List.copyOf(found);
    }
}
