package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.stillroom.core.aroma.CommonNames;

/**
 * Finds known names as whole words in what a maker wrote, the longest first, so that star anise is not anise.
 *
 * <p>Names are kept in one plain form: small letters, one blank before each word, none at the end.
 */
final class Words {
    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}']+");
    private static final Pattern HYPHEN = Pattern.compile("(?<=\\p{L})[-\u2010\u2011](?=\\p{L})");
    private static final String TAKEN = " |";

    /** Words of fewer letters are not joined with others: "p.a." is no "pa". */
    private static final int SHORTEST_JOINED = 3;

    private Words() {}

    /** Returns a text in small letters with one blank before each word. */
    static String plain(String text) {
        String small = text.toLowerCase(Locale.ROOT).replace('’', '\'');
        String bare = NO_WORD.matcher(small).replaceAll(" ").strip();
        return bare.isEmpty() ? "" : " " + bare;
    }

    /** Returns a text and behind it the same with words joined where a hyphen stands: "fox-glove" is foxglove, "star-anise" star anise. */
    static String withAndWithoutHyphens(String text) {
        String joined = HYPHEN.matcher(text).replaceAll("");
        return joined.equals(text) ? text : text + "; " + joined;
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
        int second = name.indexOf(' ', 1);
        String start = second > 0 ? name.substring(0, second) : name.substring(0, name.length() - 1);
        if (!text.contains(start)) {
            return false;
        }
        String whole = text + " ";
        return forms(name).stream().anyMatch(form -> whole.contains(form + " "));
    }

    /** Returns a text in plain form, as it stands and in each way in which its botanical names can be meant. */
    static List<String> readings(String text) {
        Set<String> readings = new LinkedHashSet<>();
        readings.add(plain(text));
        CommonNames.readings(text).forEach(reading -> readings.add(plain(reading)));
        return List.copyOf(readings);
    }

    /**
     * Returns the {@link #readings} of a text and of the names that stand turned round in it. These add what a text may name; they clear
     * nothing that another reading says.
     */
    static List<String> readingsTurned(String text) {
        Set<String> all = new LinkedHashSet<>(readings(text));
        TurnedNames.in(text).forEach(turned -> all.addAll(readings(turned)));
        return List.copyOf(all);
    }

    /** Returns whether one of the plain names stands in a text as it was written, turned round, or by its botanical name. */
    static boolean any(String text, List<String> names) {
        return readingsTurned(text).stream().anyMatch(plain -> names.stream().anyMatch(name -> holds(plain, name)));
    }

    private record Hit<T>(String name, T thing) {}

    /**
     * Things that a text names.
     *
     * @param things each once
     * @param rest the plain text without their names
     */
    record Named<T>(List<T> things, String rest) {}

    /** Returns the things that the text names, each once; a word that belongs to a longer name counts for that name alone. */
    static <T> List<T> named(String text, List<T> things, Function<T, List<String>> names) {
        return named(readingsTurned(text), things, names);
    }

    /** Returns the same of readings of a text. */
    static <T> List<T> named(List<String> readings, List<T> things, Function<T, List<String>> names) {
        Set<T> found = new LinkedHashSet<>();
        for (String reading : readings) {
            found.addAll(read(reading, things, names).things());
        }
        return List.copyOf(found);
    }

    /** Returns what one reading of a text names, and what of the text is left. */
    static <T> Named<T> read(String reading, List<T> things, Function<T, List<String>> names) {
        List<Hit<T>> hits = new ArrayList<>();
        for (T thing : things) {
            for (String name : names.apply(thing)) {
                if (holds(reading, name)) {
                    hits.add(new Hit<>(name, thing));
                }
            }
        }
        hits.sort(Comparator.comparingInt((Hit<T> hit) -> -hit.name().length()));
        return longest(reading, hits);
    }

    private static <T> Named<T> longest(String text, List<Hit<T>> hits) {
        String rest = text;
        Set<T> found = new LinkedHashSet<>();
        String taken = "";
        for (Hit<T> hit : hits) {
            boolean again = hit.name().equals(taken);
            if (again || holds(rest, hit.name())) {
                found.add(hit.thing());
                taken = hit.name();
                rest = without(rest, taken);
            }
        }
        return new Named<>(List.copyOf(found), rest);
    }

    private static String without(String text, String name) {
        String rest = text + " ";
        for (String form : forms(name)) {
            rest = rest.replace(form + " ", TAKEN + " ");
        }
        return rest.stripTrailing();
    }

    /** Returns a name and its forms for more than one, one of two words also joined: sweetflag. */
    private static List<String> forms(String name) {
        List<String> forms = new ArrayList<>(manyOf(name));
        int second = name.indexOf(' ', 1);
        boolean ofTwo = second > 0 && second == name.lastIndexOf(' ');
        if (ofTwo && second > SHORTEST_JOINED && name.length() - second > SHORTEST_JOINED) {
            forms.addAll(manyOf(name.substring(0, second) + name.substring(second + 1)));
        }
        return forms;
    }

    private static List<String> manyOf(String name) {
        List<String> forms = new ArrayList<>(List.of(name, name + "s", name + "es"));
        if (name.endsWith("y")) {
            forms.add(name.substring(0, name.length() - 1) + "ies");
        }
        return forms;
    }
}
