package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Finds known names as whole words in what a maker wrote, the longest first, so that star anise is not anise. */
final class Words {
    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}']+");
    private static final String TAKEN = " | ";

    private Words() {}

    /** Returns a text in small letters with one blank between its words and one at each end. */
    static String plain(String text) {
        String small = text.toLowerCase(Locale.ROOT).replace('’', '\'');
        return " " + NO_WORD.matcher(small).replaceAll(" ").strip() + " ";
    }

    /** Returns the cells of a list that has semicolons between. */
    static List<String> list(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split(";", -1));
    }

    /** Returns whether one of the names stands in the text. */
    static boolean any(String text, List<String> names) {
        return !named(text, names, List::of).isEmpty();
    }

    /** Returns the things that the text names, each once; a word that belongs to a longer name counts for that name alone. */
    static <T> List<T> named(String text, List<T> things, Function<T, List<String>> names) {
        record Name<T>(String plain, T thing) {}
        List<Name<T>> all = new ArrayList<>();
        for (T thing : things) {
            names.apply(thing).forEach(name -> all.add(new Name<>(plain(name).strip(), thing)));
        }
        all.sort(Comparator.comparingInt((Name<T> name) -> -name.plain().length()));
        String rest = plain(text);
        Set<T> found = new LinkedHashSet<>();
        for (int i = 0; i < all.size(); i++) {
            String name = all.get(i).plain();
            String left = without(rest, name);
            if (!left.equals(rest)) {
                all.stream().filter(other -> other.plain().equals(name)).forEach(other -> found.add(other.thing()));
                rest = left;
            }
        }
        return List.copyOf(found);
    }

    private static String without(String text, String name) {
        return text.replace(" " + name + " ", TAKEN).replace(" " + name + "s ", TAKEN);
    }
}
