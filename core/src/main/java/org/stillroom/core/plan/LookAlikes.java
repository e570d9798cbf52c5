package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.LetterSlips;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * Names dropper bottles that are easily mistaken for each other: by their names alone, since nobody knows their size and colour.
 *
 * <p>Two names are alike when they share the word that says what is in them, such as lemon oil and lemon essence 1:10, or clove bud and
 * clove leaf; or when one is a slip of a letter or two away from the other, such as mace and maca. Own judgement.
 */
public final class LookAlikes {
    /** Name of the rule. */
    public static final String NAME = "look-alike-bottles";

    /** Words that say what kind of bottle it is, how strong or of which part, and so tell bottles apart only to who reads them all. */
    private static final Set<String> NOT_TELLING = Set.of(
            "oil",
            "essence",
            "essential",
            "tincture",
            "extract",
            "of",
            "the",
            "my",
            "in",
            "strong",
            "weak",
            "old",
            "new",
            "bud",
            "leaf",
            "bark",
            "root",
            "seed",
            "peel",
            "flower",
            "fruit",
            "herb",
            "wood",
            "sweet",
            "bitter",
            "dried",
            "fresh");

    /** Words shorter than this differ too much by one letter to be taken for each other. */
    private static final int SHORT = 4;
    /** From so many letters on two may differ. */
    private static final int LONG = 7;

    private LookAlikes() {}

    /** Returns whether bottles of this kind have droppers. */
    public static boolean isDropperBottle(Kind kind) {
        return kind == Kind.ESSENTIAL_OIL || kind == Kind.ESSENCE || kind == Kind.TINCTURE;
    }

    /** Returns whether two bottles of different names are easily mistaken for each other. */
    public static boolean areAlike(String one, String other) {
        if (one.strip().equalsIgnoreCase(other.strip())) {
            return false;
        }
        List<String> words = telling(one);
        List<String> others = telling(other);
        return words.stream().anyMatch(word -> others.stream().anyMatch(each -> isAlmost(word, each)));
    }

    /** Names the dropper bottles of one recipe that are alike, each pair once, at the lines where they go in. */
    static List<Finding> among(List<PlannedLine> lines) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                PlannedLine one = lines.get(i);
                PlannedLine other = lines.get(j);
                if (isDropperBottle(one.ingredient().kind())
                        && isDropperBottle(other.ingredient().kind())
                        && areAlike(one.name(), other.name())) {
                    findings.add(Finding.of(
                            NAME,
                            Severity.NOTE,
                            one.name() + "; " + other.name(),
                            "easily mistaken",
                            "The bottles “" + one.name() + "” and “" + other.name()
                                    + "” have names that are easily mistaken.",
                            "Set them apart before you count drops, and read each label aloud."));
                }
            }
        }
        return findings;
    }

    private static List<String> telling(String name) {
        List<String> words = Stream.of(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toList());
        List<String> telling =
                words.stream().filter(word -> !NOT_TELLING.contains(word)).toList();
        return telling.isEmpty() ? words : telling;
    }

    private static boolean isAlmost(String one, String other) {
        int shorter = Math.min(one.length(), other.length());
        int most = shorter < SHORT ? 0 : shorter < LONG ? 1 : 2;
        return LetterSlips.between(one, other) <= most;
    }
}
