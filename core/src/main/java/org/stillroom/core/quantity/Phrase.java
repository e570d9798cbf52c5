package org.stillroom.core.quantity;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A typed text while it is being read from left to right, its spelling already made alike. */
final class Phrase {
    /** "Per" in English and German. */
    private static final List<String> PER = List.of("per", "je", "pro");

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

    String text() {
        return text;
    }

    List<String> assumed() {
        return List.copyOf(assumed);
    }

    void assume(String sentence) {
        assumed.add(sentence);
    }

    /** Reads the number here; the example shows what to write where there is none. */
    TypedNumber number(String example) throws NotUnderstood {
        NumberScan scan = scan(example);
        TypedNumber number = scan.number();
        at = scan.end();
        return number;
    }

    /** Reads a number that is no fraction: "12" of "$12/750 ml". */
    TypedNumber numberBeforeSlash(String example) throws NotUnderstood {
        NumberScan scan = scan(example);
        TypedNumber number = scan.numberBeforeSlash();
        at = scan.end();
        return number;
    }

    private NumberScan scan(String example) throws NotUnderstood {
        if (isAtEnd()) {
            throw NotUnderstood.because("a number is missing; write for instance " + example);
        }
        if (text.charAt(at) == '-') {
            throw NotUnderstood.because(
                    Spelling.quoted(text) + " is below zero, which cannot be; write for instance " + example);
        }
        if (!NumberScan.startsNumber(text, at)) {
            throw NotUnderstood.because(
                    Spelling.quoted(peek()) + " does not start with a number; write for instance " + example);
        }
        return new NumberScan(text, at);
    }

    boolean atNumber() {
        skipSpace();
        return NumberScan.startsNumber(text, at);
    }

    boolean isAtEnd() {
        skipSpace();
        return at >= text.length();
    }

    /** Takes the word or sign if it comes next; a word must end where it ends. */
    boolean accept(String word) {
        skipSpace();
        if (!comesNext(word)) {
            return false;
        }
        at += word.length();
        return true;
    }

    boolean acceptPer() {
        return accept("/") || PER.stream().anyMatch(this::accept);
    }

    boolean acceptAt() {
        return accept("@") || accept("at");
    }

    /** Takes the words up to "/", a word for "per", "at", "@" or the end. */
    String words() {
        skipSpace();
        int from = at;
        while (at < text.length() && !atSlashOrPer() && !atBasis()) {
            at++;
        }
        return text.substring(from, at).strip();
    }

    /** Takes the words up to "at", "@" or the end; a slash belongs to them, as in "% v/v". */
    String wordsBeforeAt() {
        skipSpace();
        int from = at;
        while (at < text.length() && !atBasis()) {
            at++;
        }
        return text.substring(from, at).strip();
    }

    /** Returns what is left without taking it. */
    String peek() {
        skipSpace();
        return text.substring(at);
    }

    String rest() {
        String rest = peek();
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
    Unit unit(Unit.Kind wanted) throws NotUnderstood {
        skipSpace();
        int from = at;
        Unit unit = unit(wanted.example());
        if (unit.kind() == wanted) {
            return unit;
        }
        String words = text.substring(from, at).strip();
        throw UnitSlips.otherKind(words, unit, wanted, text.substring(0, from).strip());
    }

    void end(String example) throws NotUnderstood {
        if (!isAtEnd()) {
            throw NotUnderstood.because(
                    Spelling.quoted(peek()) + " at the end is not understood; write for instance " + example);
        }
    }

    private boolean atSlashOrPer() {
        return text.charAt(at) == '/' || (wordStarts() && PER.stream().anyMatch(this::comesNext));
    }

    private boolean atBasis() {
        return text.charAt(at) == '@' || (wordStarts() && comesNext("at"));
    }

    private boolean wordStarts() {
        return at == 0 || !Character.isLetter(text.charAt(at - 1));
    }

    private boolean comesNext(String word) {
        int next = at + word.length();
        boolean runsOn = Character.isLetter(word.charAt(word.length() - 1))
                && next < text.length()
                && Character.isLetter(text.charAt(next));
        return text.regionMatches(true, at, word, 0, word.length()) && !runsOn;
    }

    private void skipSpace() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }
}
