package org.stillroom.core.extraction;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The words of a plant's name as the table of plants is searched for them: in one form, and in no order. */
final class PlantWords {
    /** Words that do not say which plant it is, nor in what state. */
    private static final Set<String> NOTHING = Set.of(
            "of",
            "and",
            "the",
            "a",
            "an",
            "whole",
            "cut",
            "organic",
            "bio",
            "untreated",
            "unsprayed",
            "unwaxed",
            "good",
            "my",
            "own",
            "ripe",
            "washed",
            "picked",
            "pitted",
            "stoned",
            "destoned",
            "deseeded",
            "chopped",
            "sliced",
            "halved",
            "quartered",
            "diced",
            "crushed",
            "coarsely",
            "finely",
            "roughly",
            "freshly",
            "frozen",
            "thawed");

    /** Parts that many plants have: sharing one makes no plants alike. */
    private static final Set<String> COMMON = Set.of(
            "dried",
            "fresh",
            "ground",
            "root",
            "leaf",
            "peel",
            "seed",
            "bean",
            "berry",
            "flower",
            "herb",
            "bark",
            "zest",
            "without",
            "with",
            "part",
            "alone",
            "coloured",
            "sweetened",
            "unripe",
            "white",
            "black",
            "green",
            "sweet",
            "sour",
            "bitter",
            "red");

    /** What means the same, and plurals that no rule makes. */
    private static final Map<String, String> SAME = Map.of(
            "dry",
            "dried",
            "leaves",
            "leaf",
            "rind",
            "peel",
            "pod",
            "bean",
            "powder",
            "ground",
            "powdered",
            "ground",
            "rhizome",
            "root",
            "hulls",
            "hull");

    /** Whether a plant is dried or fresh, as far as a name says. */
    enum State {
        DRIED,
        FRESH,
        NOT_SAID
    }

    private PlantWords() {}

    /** Returns the words that count, in one form and in the order of the alphabet. */
    static String key(String name) {
        return words(name).stream().sorted().distinct().collect(Collectors.joining(" "));
    }

    /** Returns the same without "dried" and "fresh". */
    static String withoutState(String name) {
        return words(name).stream()
                .filter(word -> !word.equals("dried") && !word.equals("fresh"))
                .sorted()
                .distinct()
                .collect(Collectors.joining(" "));
    }

    static State state(String name) {
        List<String> words = words(name);
        boolean dried = words.contains("dried");
        boolean fresh = words.contains("fresh");
        return dried == fresh ? State.NOT_SAID : dried ? State.DRIED : State.FRESH;
    }

    /** Returns the state in which the table has a plant. */
    static State stateOf(Plant plant) {
        return plant.isDried() ? State.DRIED : State.FRESH;
    }

    /** Returns the words by which one plant is told from another. */
    static List<String> tellingWords(String name) {
        return words(name).stream().filter(word -> !COMMON.contains(word)).toList();
    }

    private static List<String> words(String name) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+", -1))
                .map(PlantWords::single)
                .filter(word -> !word.isEmpty() && !NOTHING.contains(word))
                .toList();
    }

    private static String single(String word) {
        String plain = SAME.getOrDefault(word, word);
        String one;
        if (plain.endsWith("ies") && plain.length() > 4) {
            one = plain.substring(0, plain.length() - 3) + "y";
        } else if (plain.endsWith("oes") || plain.endsWith("ches") || plain.endsWith("shes")) {
            one = plain.substring(0, plain.length() - 2);
        } else {
            boolean many = plain.endsWith("s") && plain.length() > 3 && !plain.endsWith("ss") && !plain.endsWith("us");
            one = many ? plain.substring(0, plain.length() - 1) : plain;
        }
        return SAME.getOrDefault(one, one);
    }
}
