package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.stillroom.core.aroma.CommonNames;

/**
 * Names that stand turned round, as lists and laws print them, put into the order in which people say them: "almond, bitter oil" is
 * bitter almond oil, "leaves of rhubarb" are rhubarb leaves, "star anise (Japanese)" is Japanese star anise.
 *
 * <p>What turns is one name with commas, brackets or dashes in it; between names that are listed stand semicolons.
 */
final class TurnedNames {
    /** What a quality stands behind, or within. */
    private static final Pattern CUTS = Pattern.compile("[()\\[\\]]|,(?!\\d)|\\s[-–—]\\s|[–—]");

    /** Without one of these nothing is turned round. */
    private static final Pattern MAY_TURN =
            Pattern.compile("[,(\\[–—]|\\s-\\s|\\b(of|from|von|vom|aus|der|des)\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern ENDS = Pattern.compile("[;:.!?\\n]+\\s|[;\\n]");
    private static final Pattern BLANKS = Pattern.compile("[^\\p{L}\\p{N}'’.×-]+");

    /** What stands between a part and its plant. */
    private static final Set<String> OF = Set.of("of", "from", "von", "vom", "aus", "der", "des");

    private static final Set<String> ARTICLES = Set.of("the", "a", "an", "der", "dem", "den", "einer", "einem");

    /** What makes two things of it. */
    private static final Set<String> AND = Set.of("and", "or", "und", "oder", "with", "mit", "plus");

    /** A quality is no longer. */
    private static final int MOST_WORDS = 3;

    /** So much of what stands before it can belong to the name. */
    private static final int FURTHEST_BACK = 6;

    private TurnedNames() {}

    /** Returns the turned names of a text, each in the order in which it is said; nothing where none can be in it. */
    static List<String> in(String text) {
        if (!MAY_TURN.matcher(text).find()) {
            return List.of();
        }
        Set<String> turned = new LinkedHashSet<>();
        for (String each : ENDS.split(text, -1)) {
            List<List<String>> parts = new ArrayList<>();
            for (String part : CUTS.split(each, -1)) {
                List<String> words = words(part);
                if (!words.isEmpty()) {
                    parts.add(words);
                }
            }
            for (int i = 0; i < parts.size(); i++) {
                List<List<String>> said = i == 0 ? List.of() : behind(parts.get(i - 1), parts.get(i));
                said.forEach(words -> turned.add(String.join(" ", words)));
                said.forEach(words -> turned.addAll(partFirst(words)));
                turned.addAll(partFirst(parts.get(i)));
            }
        }
        return List.copyOf(turned);
    }

    private static List<String> words(String part) {
        List<String> words = new ArrayList<>();
        for (String word : BLANKS.split(part, -1)) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }

    /** Returns the ways in which a quality is put before a name that it stands behind; the last word of it can be a part of the plant. */
    private static List<List<String>> behind(List<String> whole, List<String> quality) {
        List<List<String>> said = new ArrayList<>();
        boolean botanical = quality.size() > 1 && CommonNames.isBotanical(String.join(" ", quality));
        if (quality.size() > MOST_WORDS || botanical || quality.stream().anyMatch(TurnedNames::turnsNothing)) {
            return said;
        }
        List<String> name = whole.subList(Math.max(0, whole.size() - FURTHEST_BACK), whole.size());
        int last = quality.size() - 1;
        for (int i = 0; i < name.size() && (i == 0 || saysNothing(name.get(i - 1))); i++) {
            List<String> before = name.subList(0, i);
            List<String> rest = name.subList(i, name.size());
            said.add(together(before, quality, rest));
            if (last > 0 && saysNothing(quality.get(last))) {
                said.add(together(before, quality.subList(0, last), rest, quality.subList(last, last + 1)));
            }
        }
        return said;
    }

    /** Returns the ways in which "part of a plant" is said with the plant first, in the singular. */
    private static List<String> partFirst(List<String> words) {
        List<String> said = new ArrayList<>();
        for (int i = 1; i + 1 < words.size(); i++) {
            if (OF.contains(small(words.get(i))) && !turnsNothing(words.get(i - 1))) {
                int from = i + 1;
                while (from + 1 < words.size() && ARTICLES.contains(small(words.get(from)))) {
                    from++;
                }
                for (int end = from + 1; end <= Math.min(words.size(), from + MOST_WORDS); end++) {
                    List<String> plant = new ArrayList<>(words.subList(from, end));
                    String last = plant.remove(plant.size() - 1);
                    List<String> part = words.subList(i - 1, i);
                    List<String> before = words.subList(0, i - 1);
                    said.add(String.join(" ", together(before, plant, List.of(last), part)));
                    said.add(String.join(" ", together(before, plant, List.of(NameWords.single(small(last))), part)));
                }
            }
        }
        return said;
    }

    private static boolean turnsNothing(String word) {
        return AND.contains(small(word)) || TextWords.isDenial(word);
    }

    /** Returns whether a word, in German too, tells no plant from another and is nothing that was made of one, such as honey. */
    private static boolean saysNothing(String word) {
        return OF.contains(small(word))
                || CommonNames.readings(word).stream()
                        .flatMap(reading -> NameWords.of(reading).stream())
                        .allMatch(single -> NameWords.isPart(single) || NameWords.isPlain(single));
    }

    private static String small(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    @SafeVarargs
    private static List<String> together(List<String>... parts) {
        List<String> together = new ArrayList<>();
        for (List<String> part : parts) {
            together.addAll(part);
        }
        return together;
    }
}
