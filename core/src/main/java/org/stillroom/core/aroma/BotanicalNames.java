package org.stillroom.core.aroma;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * Puts botanical names in what people write into the common names that all tables know.
 *
 * <p>Genus and species are compared, subspecies and variety where the table has them; the names of botanists behind them and the cross
 * of a hybrid are passed over. A species that is not in the table is taken for its genus where that is, and its own name stays in the
 * text, so that nobody takes it for known. Names: aroma/botanical_names.csv, in part from memory.
 */
final class BotanicalNames {
    private static final Set<String> BOTANISTS = botanists(Tables.open("aroma/botanists.csv"));
    private static final Set<String> BETWEEN_BOTANISTS = Set.of("et", "ex", "and", "in");
    private static final Set<String> RANKS = Set.of("var", "subsp");
    private static final Set<String> ANY_SPECIES = Set.of("sp", "spp", "species");
    private static final Set<String> HYBRID = Set.of("x", "×");

    /** By genus, the longest names first. */
    private static final Map<String, List<Entry>> BY_GENUS = read(Tables.open("aroma/botanical_names.csv"));

    /** A text with so many readings is a list of plants, of which the first stand for all. */
    private static final int MOST_READINGS = 12;

    private BotanicalNames() {}

    private record Entry(List<String> words, List<String> common) {
        boolean isGenus() {
            return words.size() == 1;
        }
    }

    /** What was found in a text, up to but without the word at {@code end}. */
    private record Match(int end, List<String> common) {}

    /**
     * Returns a text with common names in place of botanical ones, in each way in which it can be meant; the text itself where it
     * holds none.
     */
    static List<String> readings(String text) {
        List<String> words = words(text);
        List<String> readings = List.of("");
        boolean found = false;
        int at = 0;
        while (at < words.size()) {
            Match match = match(words, at);
            found |= match != null;
            readings = followed(readings, match == null ? List.of(words.get(at)) : match.common());
            at = match == null ? at + 1 : match.end();
        }
        return found ? readings : List.of(text);
    }

    private static List<String> followed(List<String> readings, List<String> next) {
        List<String> longer = new ArrayList<>();
        for (String reading : readings) {
            for (String name : next) {
                if (longer.size() < MOST_READINGS) {
                    longer.add(reading.isEmpty() ? name : reading + " " + name);
                }
            }
        }
        return longer;
    }

    private static @Nullable Match match(List<String> words, int at) {
        String first = words.get(at);
        if (first.length() == 1) {
            return ofInitial(words, at);
        }
        for (Entry entry : BY_GENUS.getOrDefault(first, List.of())) {
            int end = end(entry, words, at);
            if (end >= 0) {
                return new Match(end, entry.common());
            }
        }
        return null;
    }

    /** "A. absinthium": every genus with that initial and a species of that name is meant. */
    private static @Nullable Match ofInitial(List<String> words, int at) {
        List<String> common = new ArrayList<>();
        int furthest = -1;
        for (List<Entry> genus : BY_GENUS.values()) {
            for (Entry entry : genus) {
                int end =
                        entry.isGenus() || !entry.words().get(0).startsWith(words.get(at)) ? -1 : end(entry, words, at);
                if (end > furthest) {
                    common.clear();
                    furthest = end;
                }
                if (end >= 0 && end == furthest) {
                    entry.common().stream()
                            .filter(name -> !common.contains(name))
                            .forEach(common::add);
                }
            }
        }
        return furthest < 0 ? null : new Match(furthest, common);
    }

    /** Returns where an entry ends whose genus stands at a word, or -1 where the text goes on otherwise. */
    private static int end(Entry entry, List<String> words, int at) {
        int next = at + 1;
        for (String wanted : entry.words().subList(1, entry.words().size())) {
            if (RANKS.contains(wanted)) {
                next = behindBotanists(words, next);
            } else if (next < words.size() && HYBRID.contains(words.get(next))) {
                next++;
            }
            if (next >= words.size() || !words.get(next).equals(wanted)) {
                return -1;
            }
            next++;
        }
        if (entry.isGenus()) {
            return next < words.size() && ANY_SPECIES.contains(words.get(next)) ? next + 1 : next;
        }
        return behindBotanists(words, next);
    }

    private static int behindBotanists(List<String> words, int at) {
        int next = at;
        while (next < words.size() && isBotanist(words, next)) {
            next++;
        }
        return next;
    }

    private static boolean isBotanist(List<String> words, int at) {
        boolean between = BETWEEN_BOTANISTS.contains(words.get(at))
                && at + 1 < words.size()
                && BOTANISTS.contains(words.get(at + 1));
        return between || BOTANISTS.contains(words.get(at));
    }

    /** Returns the words of a text in small letters, "ssp." as "subsp". */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        for (char c : (text.toLowerCase(Locale.ROOT) + " ").replace('’', '\'').toCharArray()) {
            if (Character.isLetterOrDigit(c) || c == '\'' || c == '×') {
                word.append(c);
            } else if (word.length() > 0) {
                words.add(word.toString().equals("ssp") ? "subsp" : word.toString());
                word.setLength(0);
            }
        }
        return words;
    }

    private static Map<String, List<Entry>> read(Table table) {
        Map<String, List<Entry>> byGenus = new HashMap<>();
        for (Table.Row row : table.rows()) {
            List<String> words = words(row.text("botanical"));
            byGenus.computeIfAbsent(words.get(0), any -> new ArrayList<>())
                    .add(new Entry(words, List.of(row.text("names").split(";", -1))));
        }
        Comparator<Entry> longest =
                Comparator.comparingInt(entry -> -entry.words().size());
        byGenus.values().forEach(entries -> entries.sort(longest));
        return byGenus;
    }

    private static Set<String> botanists(Table table) {
        Set<String> names = new HashSet<>();
        table.rows().forEach(row -> names.add(row.text("abbreviation")));
        return names;
    }
}
