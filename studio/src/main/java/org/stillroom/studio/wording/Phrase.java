package org.stillroom.studio.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One phrase of the book: how the program writes it in English, and how it is said in the other language.
 *
 * <p>It is matched from left to right, each placeholder as short as the text allows; no regular expression is made of it,
 * so that no text can make it run away.
 */
final class Phrase {
    private static final Pattern BLANK = Pattern.compile("\\{(\\w)}");

    private final List<String> literals = new ArrayList<>();
    private final List<Character> blanks = new ArrayList<>();
    private final String translation;

    /** @throws IllegalArgumentException when the two sides cannot belong together */
    Phrase(String english, String translation) {
        this.translation = translation;
        Matcher found = BLANK.matcher(english);
        int from = 0;
        while (found.find()) {
            literals.add(english.substring(from, found.start()));
            blanks.add(found.group(1).charAt(0));
            from = found.end();
        }
        literals.add(english.substring(from));
        check();
    }

    private void check() {
        if (literals.stream().allMatch(String::isEmpty)) {
            throw new IllegalArgumentException("it says nothing of its own");
        }
        if (literals.subList(1, Math.max(1, literals.size() - 1)).contains("")) {
            throw new IllegalArgumentException("nothing stands between two of its placeholders");
        }
        if (blanks.stream().distinct().count() < blanks.size()) {
            throw new IllegalArgumentException("a placeholder stands in the English twice");
        }
        if (!BLANK.matcher(translation)
                .results()
                .map(found -> found.group(1).charAt(0))
                .collect(Collectors.toSet())
                .equals(Set.copyOf(blanks))) {
            throw new IllegalArgumentException("the two sides have not the same placeholders");
        }
    }

    /** Returns whether it has no placeholder, so that it is the very text or not. */
    boolean isFixed() {
        return blanks.isEmpty();
    }

    /** Returns how many letters are its own; of two that fit, the one with more of them says it better. */
    int weight() {
        return literals.stream().mapToInt(String::length).sum();
    }

    /** Returns the text in the other language, or null when it is no text of this phrase. */
    @Nullable
    String put(String text, Search search) {
        if (text.length() < weight() + blanks.size() || !text.startsWith(literals.get(0))) {
            return null;
        }
        if (!text.endsWith(literals.get(literals.size() - 1))) {
            return null;
        }
        Map<Character, String> values = new LinkedHashMap<>();
        return fill(0, literals.get(0).length(), text, search, values) ? filled(values) : null;
    }

    private boolean fill(int blank, int from, String text, Search search, Map<Character, String> values) {
        if (blank == blanks.size()) {
            return from == text.length();
        }
        String next = literals.get(blank + 1);
        if (blank == blanks.size() - 1) {
            return take(blank, text, from, text.length() - next.length(), search, values);
        }
        for (int at = text.indexOf(next, from + 1); at >= 0 && search.goesOn(); at = text.indexOf(next, at + 1)) {
            if (take(blank, text, from, at, search, values)
                    && fill(blank + 1, at + next.length(), text, search, values)) {
                return true;
            }
        }
        return false;
    }

    private boolean take(int blank, String text, int from, int to, Search search, Map<Character, String> values) {
        char name = blanks.get(blank);
        String value = from < to ? search.value(name, text.substring(from, to)) : null;
        if (value != null) {
            values.put(name, value);
        }
        return value != null;
    }

    private String filled(Map<Character, String> values) {
        return BLANK.matcher(translation)
                .replaceAll(found -> Matcher.quoteReplacement(
                        values.getOrDefault(found.group(1).charAt(0), "")));
    }
}
