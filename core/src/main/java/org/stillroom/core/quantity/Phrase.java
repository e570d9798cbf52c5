package org.stillroom.core.quantity;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A typed text while it is being read from left to right; spaces, dashes and degree signs are already made alike. */
final class Phrase {
    private static final int LONGEST_QUOTE = 40;

    private final String text;
    private final Units units;
    private final Set<String> assumed;
    private int at;

    Phrase(String text, Units units) {
        this(text, units, new LinkedHashSet<>());
    }

    private Phrase(String text, Units units, Set<String> assumed) {
        this.text = text;
        this.units = units;
        this.assumed = assumed;
    }

    /** Returns another text read in the same breath: what is assumed there is assumed here. */
    Phrase aside(String other) {
        return new Phrase(other, units, assumed);
    }

    /** Makes alike what keyboards write differently, and drops needless space. */
    static String alike(String typed) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < typed.length(); i++) {
            String one = alike(typed.charAt(i));
            boolean spaceAgain = one.equals(" ") && (out.length() == 0 || out.charAt(out.length() - 1) == ' ');
            out.append(spaceAgain ? "" : one);
        }
        return out.toString().strip();
    }

    private static String alike(char c) {
        return switch (c) {
            case '\u00a0', '\u2007', '\u2008', '\u2009', '\u200a', '\u202f', '\t', '\n', '\r' -> " ";
            case '\u2212' -> "-";
            case '\u2044', '\u2215' -> "/";
            case '\u2019', '\u02bc' -> "'";
            case '\u03bc' -> "µ";
            case '\u00ba', '\u02da' -> "°";
            case '\u2103' -> "°C";
            case '\u2109' -> "°F";
            case '\u00b3' -> "3";
            case '\u2026' -> "..";
            default -> String.valueOf(c);
        };
    }

    static String shorten(String text) {
        return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
    }

    String text() {
        return text;
    }

    List<String> assumed() {
        return new ArrayList<>(assumed);
    }

    void assume(String sentence) {
        assumed.add(sentence);
    }

    /** Reads the number here; the example shows what to write where there is none. */
    TypedNumber number(String example) throws NotUnderstood {
        if (isAtEnd()) {
            throw NotUnderstood.because("a number is missing; write for instance " + example);
        }
        if (text.charAt(at) == '-') {
            throw NotUnderstood.because(
                    "\"" + shorten(text) + "\" is below zero, which cannot be; write for instance " + example);
        }
        if (!NumberScan.startsNumber(text, at)) {
            throw NotUnderstood.because("\"" + shorten(text.substring(at))
                    + "\" is not a number with its unit; write for instance " + example);
        }
        NumberScan scan = new NumberScan(text, at);
        TypedNumber number = scan.number();
        at = scan.end();
        return number;
    }

    boolean atNumber() {
        skipSpace();
        return NumberScan.startsNumber(text, at);
    }

    /** Takes the word or sign if it comes next; a word must end where it ends. */
    boolean accept(String word) {
        skipSpace();
        if (!text.regionMatches(true, at, word, 0, word.length()) || runsOn(word)) {
            return false;
        }
        at += word.length();
        return true;
    }

    private boolean runsOn(String word) {
        int next = at + word.length();
        return Character.isLetter(word.charAt(word.length() - 1))
                && next < text.length()
                && Character.isLetter(text.charAt(next));
    }

    boolean acceptPer() {
        return accept("/") || accept("per");
    }

    boolean acceptAt() {
        return accept("@") || accept("at");
    }

    /** Takes the words up to "/", "per", "at", "@" or the end. */
    String words() {
        skipSpace();
        int from = at;
        while (at < text.length() && !wordsEnd()) {
            at++;
        }
        return text.substring(from, at).strip();
    }

    private boolean wordsEnd() {
        char c = text.charAt(at);
        if (c == '/' || c == '@') {
            return true;
        }
        boolean wordStarts = at == 0 || !Character.isLetter(text.charAt(at - 1));
        return wordStarts && (wordIs("per") || wordIs("at"));
    }

    private boolean wordIs(String word) {
        return text.regionMatches(true, at, word, 0, word.length()) && !runsOn(word);
    }

    boolean isAtEnd() {
        skipSpace();
        return at >= text.length();
    }

    /** Returns what is left without taking it. */
    String peek() {
        skipSpace();
        return text.substring(at);
    }

    /** Takes the words up to "at", "@" or the end. */
    String wordsBeforeAt() {
        StringBuilder words = new StringBuilder(words());
        while (at < text.length() && text.charAt(at) == '/') {
            at++;
            words.append('/').append(words());
        }
        return words.toString();
    }

    String rest() {
        skipSpace();
        String rest = text.substring(at);
        at = text.length();
        return rest;
    }

    /** Takes the words of a unit, and asks or refuses where they are none. */
    Unit unit(String example) throws NotUnderstood {
        skipSpace();
        int from = at;
        String words = words();
        Unit unit = units.named(words);
        if (unit == null || UnitSlips.isOne(words)) {
            throw UnitSlips.about(words, text.substring(0, from), text.substring(at), example);
        }
        if (unit.assumed() != null) {
            assume(unit.assumed());
        }
        return unit;
    }

    /** Takes the words of a unit of one kind; a unit of another kind is named in the refusal. */
    Unit unit(Unit.Kind wanted, String example) throws NotUnderstood {
        skipSpace();
        int from = at;
        Unit unit = unit(example);
        String words = text.substring(from, at).strip();
        if (unit.kind() == wanted) {
            return unit;
        }
        String key = Units.key(words);
        if (wanted == Unit.Kind.MASS && (key.startsWith("oz") || key.startsWith("ounce"))) {
            throw NotUnderstood.asking(
                    "\"" + words + "\" is read as a fluid ounce, which is a volume; are ounces by weight meant?",
                    text.substring(0, from).strip() + " oz av" + text.substring(at));
        }
        throw NotUnderstood.because("\"" + words + "\" is " + unit.kind().label() + "; " + wanted.label()
                + " is wanted, such as " + wanted.example());
    }

    void end(String example) throws NotUnderstood {
        if (!isAtEnd()) {
            throw NotUnderstood.because("\"" + shorten(text.substring(at))
                    + "\" at the end is not understood; write for instance " + example);
        }
    }

    private void skipSpace() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }
}
