package org.stillroom.core.aroma;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * Puts German names of plants into the English ones that all tables know: "Zitronenschalenöl" is the oil of lemon peel.
 *
 * <p>A compound is read from its end: parts of plants and what is made of them, before them the plant. What no row of the table and no
 * compound of its rows is stays as it was written, so that nobody takes it for known. Names: aroma/german_names.csv, from memory.
 */
final class GermanNames {
    private static final List<String> ENDINGS = List.of("e", "er", "es", "en", "em");
    private static final List<String> LINKS = List.of("", "n", "en", "s", "es");
    private static final GermanNames SHIPPED = new GermanNames(Tables.open("aroma/german_names.csv"));

    private final Map<String, String> words = new HashMap<>();
    private final Map<String, String> heads = new HashMap<>();
    private final Map<String, String> qualities = new HashMap<>();
    private final List<Map.Entry<String, String>> parts = new ArrayList<>();
    /** Names of several words, by the first of them. */
    private final Map<String, List<Phrase>> phrases = new HashMap<>();

    private record Phrase(List<String> words, String english) {}

    GermanNames(Table table) {
        for (Table.Row row : table.rows()) {
            String english = row.text("names");
            for (String german : row.text("german").split(";", -1)) {
                take(row, folded(german), english);
            }
            for (String head : row.textOrEmpty("before").split(";", -1)) {
                heads.put(folded(head), english);
            }
        }
        heads.remove("");
        parts.sort(Comparator.comparingInt(part -> -part.getKey().length()));
    }

    private void take(Table.Row row, String german, String english) {
        switch (row.text("role")) {
            case "plant" -> {
                List<String> its = List.of(german.split(" ", -1));
                if (its.size() == 1) {
                    words.put(german, english);
                    heads.put(german, english);
                } else {
                    phrases.computeIfAbsent(its.get(0), any -> new ArrayList<>())
                            .add(new Phrase(its, english));
                }
            }
            case "part" -> {
                words.put(german, english);
                parts.add(Map.entry(german, english));
            }
            case "end" -> parts.add(Map.entry(german, english));
            case "quality" -> qualities.put(german, english);
            case "word" -> words.put(german, english);
            default -> throw row.fault("role", "is neither plant, part, end, quality nor word");
        }
    }

    /** Returns a text with English names in place of German ones; the very text where it holds none. */
    static String english(String text) {
        return SHIPPED.inEnglish(text);
    }

    private String inEnglish(String text) {
        List<String> written = List.of(text.strip().split("[^\\p{L}\\p{N}'’×]+", -1));
        List<String> folded = written.stream()
                .map(word -> folded(word.toLowerCase(Locale.ROOT)))
                .toList();
        List<String> english = new ArrayList<>();
        boolean found = false;
        int at = 0;
        while (at < folded.size()) {
            Phrase phrase = phraseAt(folded, at);
            if (phrase != null) {
                english.add(phrase.english());
                at += phrase.words().size();
                found = true;
                continue;
            }
            String its = word(folded.get(at));
            found |= its != null && !its.equals(folded.get(at));
            english.add(its == null ? written.get(at) : its);
            at++;
        }
        return found ? String.join(" ", english) : text;
    }

    private @Nullable Phrase phraseAt(List<String> folded, int at) {
        for (Phrase phrase : phrases.getOrDefault(folded.get(at), List.of())) {
            int end = at + phrase.words().size();
            if (end <= folded.size() && folded.subList(at, end).equals(phrase.words())) {
                return phrase;
            }
        }
        return null;
    }

    private @Nullable String word(String folded) {
        String whole = words.get(folded);
        if (whole != null) {
            return whole;
        }
        String compound = compound(folded);
        return compound == null ? quality(folded) : compound;
    }

    private @Nullable String compound(String folded) {
        for (Map.Entry<String, String> part : parts) {
            if (folded.length() > part.getKey().length() && folded.endsWith(part.getKey())) {
                String head =
                        head(folded.substring(0, folded.length() - part.getKey().length()));
                if (head != null) {
                    return head + " " + part.getValue();
                }
            }
        }
        return null;
    }

    private @Nullable String head(String before) {
        for (String link : LINKS) {
            if (before.endsWith(link)) {
                String english = heads.get(before.substring(0, before.length() - link.length()));
                if (english != null) {
                    return english;
                }
            }
        }
        return compound(before);
    }

    /** A quality of three letters needs an ending: "rot" is an English word too. */
    private @Nullable String quality(String folded) {
        String bare = folded.length() > 3 ? qualities.get(folded) : null;
        for (String ending : ENDINGS) {
            if (bare == null && folded.endsWith(ending)) {
                bare = qualities.get(folded.substring(0, folded.length() - ending.length()));
            }
        }
        return bare;
    }

    private static String folded(String word) {
        return word.replace("ä", "ae").replace("ö", "oe").replace("ü", "ue").replace("ß", "ss");
    }
}
