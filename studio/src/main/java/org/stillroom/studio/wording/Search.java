package org.stillroom.studio.wording;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Looks up one text and the texts within it, once each and not for ever. */
final class Search {
    private static final Pattern NUMBER = Pattern.compile("[-−+]?\\d+(?: \\d{3})*(?:\\.\\d+)?");
    private static final Pattern NUMBERS = Pattern.compile(NUMBER + "(?:, " + NUMBER + ")+");
    /** More tries than the longest finding needs by far; a text made to be slow ends here and stays English. */
    private static final int MOST_TRIES = 20_000;

    private static final char FIRST_OF_EITHER = 'u';

    private final Phrasebook book;
    private final String rule;
    private final UnaryOperator<String> marked;
    private final Map<String, Optional<String>> known = new HashMap<>();
    private int tries;

    Search(Phrasebook book, String rule, UnaryOperator<String> marked) {
        this.book = book;
        this.rule = rule;
        this.marked = marked;
    }

    /** Counts a try, and returns whether there are tries left. */
    boolean goesOn() {
        return ++tries < MOST_TRIES;
    }

    /** Returns the phrase in the language of the book, or null when the book does not have it. */
    @Nullable
    String phrase(String text) {
        Optional<String> before = known.get(text);
        if (before != null) {
            return before.orElse(null);
        }
        String found = book.find(rule, text, this);
        if (found == null && Character.isUpperCase(text.charAt(0))) {
            String small = book.find(rule, Character.toLowerCase(text.charAt(0)) + text.substring(1), this);
            found = small == null ? null : Character.toUpperCase(small.charAt(0)) + small.substring(1);
        }
        known.put(text, Optional.ofNullable(found));
        return found;
    }

    /**
     * Returns what stands for a value in the other language, or null when the placeholder does not take it.
     *
     * @param blank a digit takes a number or several with commas between, a capital numbers and phrases of the book, u to z a phrase of
     *     the book, several with commas between, or else the text as it stands, a to t the text as it stands
     */
    @Nullable
    String value(char blank, String text) {
        if (Character.isLowerCase(blank) && blank < FIRST_OF_EITHER) {
            return text;
        }
        if (NUMBER.matcher(text).matches()) {
            return marked.apply(text);
        }
        if (NUMBERS.matcher(text).matches()) {
            return Stream.of(text.split(", ", -1)).map(marked).collect(Collectors.joining("; "));
        }
        String phrase = Character.isDigit(blank) ? null : phrase(text);
        if (phrase == null && Character.isLowerCase(blank)) {
            phrase = eachOf(text);
        }
        return phrase == null && Character.isLowerCase(blank) ? text : phrase;
    }

    /** Returns a list of phrases with each of them in the other language; null where it is no list, or one is not in the book. */
    private @Nullable String eachOf(String text) {
        String[] parts = text.split(", ", -1);
        List<String> said = new ArrayList<>();
        for (String part : parts) {
            String phrase = parts.length > 1 && !part.isEmpty() ? phrase(part) : null;
            if (phrase == null) {
                return null;
            }
            said.add(phrase);
        }
        return String.join(", ", said);
    }
}
