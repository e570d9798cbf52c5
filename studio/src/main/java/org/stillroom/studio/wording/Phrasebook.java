package org.stillroom.studio.wording;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * What the program says in English while it works, put into another language for the pages: the findings above all.
 *
 * <p>The English in the code is the key. The head of {@code findings_de.txt} says how the book is written.
 */
final class Phrasebook {
    /** Names of the files that a book is written in. */
    private static final List<String> PARTS = List.of("findings", "desk", "sheet");

    private static final Map<Language, Optional<Phrasebook>> BOOKS = new ConcurrentHashMap<>();
    /** The group that any rule may take from. */
    private static final String ANY = "*";

    private final Map<String, PhraseGroup> groups = new TreeMap<>();

    /** Returns the book of a language, or nothing for the language that the program itself is written in. */
    static Optional<Phrasebook> of(Language language) {
        return BOOKS.computeIfAbsent(language, Phrasebook::read);
    }

    private static Optional<Phrasebook> read(Language language) {
        Phrasebook book = new Phrasebook();
        for (String part : PARTS) {
            String name = part + "_" + language.tag() + ".txt";
            try (InputStream file = Phrasebook.class.getResourceAsStream(name)) {
                if (file != null) {
                    book.take(name, new InputStreamReader(file, StandardCharsets.UTF_8));
                }
            } catch (IOException e) {
                throw new UncheckedIOException("the phrases " + name + " of the program cannot be read", e);
            }
        }
        return book.groups.isEmpty() ? Optional.empty() : Optional.of(book);
    }

    /**
     * Reads a book.
     *
     * @param name what it is called where something is wrong in it
     */
    static Phrasebook read(String name, Reader text) {
        Phrasebook book = new Phrasebook();
        book.take(name, text);
        return book;
    }

    private void take(String name, Reader text) {
        List<String> lines = new BufferedReader(text).lines().map(String::strip).toList();
        List<String> rules = List.of();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith("[") && line.endsWith("]")) {
                rules = List.of(line.substring(1, line.length() - 1).split(" +"));
                rules.forEach(rule -> groups.computeIfAbsent(rule, any -> new PhraseGroup()));
            } else if (!line.isEmpty() && !line.startsWith("#")) {
                i++;
                add(rules, line, i < lines.size() ? lines.get(i) : "", name + ", line " + i);
            }
        }
    }

    private void add(List<String> rules, String english, String translation, String where) {
        try {
            if (rules.isEmpty() || translation.isEmpty()) {
                throw new IllegalArgumentException("it stands in no group, or its translation is missing");
            }
            Phrase phrase = new Phrase(english, translation);
            for (String rule : rules) {
                groups.computeIfAbsent(rule, any -> new PhraseGroup()).add(english, phrase, translation);
            }
        } catch (IllegalArgumentException wrong) {
            throw new IllegalStateException(where + ", “" + english + "”: " + wrong.getMessage(), wrong);
        }
    }

    /** Returns the rules that have phrases of their own. */
    Set<String> rules() {
        Set<String> rules = new TreeSet<>(groups.keySet());
        rules.remove(ANY);
        return rules;
    }

    /** Returns the text in the language of this book, or nothing when the book does not have it whole. */
    Optional<String> translate(String rule, String english, UnaryOperator<String> marked) {
        return english.isBlank()
                ? Optional.empty()
                : Optional.ofNullable(new Search(this, rule, marked).phrase(english));
    }

    @Nullable
    String find(String rule, String text, Search search) {
        PhraseGroup own = groups.get(rule);
        String found = own == null ? null : own.find(text, search);
        if (found != null) {
            return found;
        }
        PhraseGroup shared = groups.get(ANY);
        return shared == null ? null : shared.find(text, search);
    }
}
