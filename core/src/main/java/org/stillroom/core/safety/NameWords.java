package org.stillroom.core.safety;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** The words of a name, one at a time: which plant they can mean, which part of it, or nothing that tells plants apart. */
final class NameWords {
    /** What a word says. */
    enum Role {
        /** A part of a plant. */
        PART,
        /** A form or a quality, whatever the plant. */
        PLAIN,
        /** What was made of it. */
        MADE
    }

    private record Known(Role role, String sameAs) {}

    private static final Map<String, Known> KNOWN = read(Tables.open("safety/name_words.csv"));

    private NameWords() {}

    private static Map<String, Known> read(Table table) {
        Map<String, Known> words = new HashMap<>();
        for (Table.Row row : table.rows()) {
            Role role = switch (row.text("role")) {
                case "part" -> Role.PART;
                case "plain" -> Role.PLAIN;
                case "made" -> Role.MADE;
                default -> throw row.fault("role", "is no role of a word");
            };
            words.put(row.text("word"), new Known(role, row.text("same_as")));
        }
        return words;
    }

    /** Returns the words of a text, each in one form: "Bay Leaves" are bay and leaf, in whatever order they stand. */
    static Set<String> of(String text) {
        Set<String> words = new LinkedHashSet<>();
        for (String word : Words.plain(text).strip().split(" ", -1)) {
            if (!word.isEmpty()) {
                words.add(single(word));
            }
        }
        return words;
    }

    /** Returns the one form of a word, in the singular. */
    static String single(String word) {
        Known known = KNOWN.get(word);
        return known == null ? singular(word) : known.sameAs();
    }

    private static String singular(String word) {
        boolean many = word.length() > 3
                && word.endsWith("s")
                && !word.endsWith("ss")
                && !word.endsWith("us")
                && !word.endsWith("is")
                && !word.endsWith("'s");
        if (!many) {
            return word;
        }
        if (word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        boolean hissing = word.endsWith("ches") || word.endsWith("shes") || word.endsWith("xes");
        return word.substring(0, word.length() - (hissing ? 2 : 1));
    }

    private static @Nullable Role role(String word) {
        Known known = KNOWN.get(word);
        return known == null ? null : known.role();
    }

    static boolean isPart(String word) {
        return role(word) == Role.PART;
    }

    /** Returns whether a word is a form, a quality or a number, which say nothing of the plant. */
    static boolean isPlain(String word) {
        return role(word) == Role.PLAIN || word.chars().allMatch(Character::isDigit);
    }

    /** Returns whether a word tells no plant from another. */
    static boolean saysNothing(String word) {
        return role(word) != null || isPlain(word);
    }
}
