package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Plants that are refused whatever the kind of ingredient, also where steps and notes name them, and plants that ask for care. */
final class PoisonousPlants {
    /** Words of a sentence that warns of a plant, or says of what it is no kin. */
    private static final Pattern WARNS =
            Pattern.compile("\\b(confus|mistak|looks? (just )?like|look-?alike|resembl|beware of|watch out for"
                    + "|verwechs|vorsicht vor|warnung vor)|ähnlich|aehnlich|(sieht|sehen) .*\\baus\\b");

    /** Plants whose names hold that of a poisonous one and do not mean it. */
    private static final Knowledge.Poison OTHER = new Knowledge.Poison(
            "", "", "", RowStatus.MEMORY, Words.names(String.join(";", WordList.OTHER_PLANTS.words())), false);

    private PoisonousPlants() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        Set<Knowledge.Poison> ofLines = new HashSet<>();
        for (PlannedLine line : drink.lines()) {
            for (Knowledge.Poison row : named(line.words(), drink.knowledge())) {
                ofLines.add(row);
                findings.add(row.stops() ? poisonous(row, line.name()) : withCare(row, line.name()));
            }
        }
        for (Passages.Passage passage : Passages.of(drink.plan())) {
            inWords(passage, drink.knowledge(), findings);
            careInWords(passage, drink.knowledge()).stream()
                    .filter(row -> !ofLines.contains(row))
                    .forEach(row -> findings.add(withCare(row, passage.where())));
        }
        return findings;
    }

    private static Finding poisonous(Knowledge.Poison row, String where) {
        return ofPlant(row, Severity.STOP, where, "poisonous", "Leave it out.");
    }

    private static Finding withCare(Knowledge.Poison row, String where) {
        return ofPlant(
                row,
                Severity.CAUTION,
                where,
                "with care",
                "Know the kind and the dose, and keep to the limits of law.");
    }

    private static Finding ofPlant(
            Knowledge.Poison row, Severity severity, String where, String verdict, String remedy) {
        return new Finding(
                "plant",
                severity,
                where,
                "",
                verdict,
                told(row),
                row.status().mayClear() ? "" : "general knowledge, from memory; on the cautious side",
                remedy,
                null,
                Sources.blocked(row.status()));
    }

    /** Returns the plants that ask for care of which words say that they go in. */
    private static List<Knowledge.Poison> careInWords(Passages.Passage passage, Knowledge knowledge) {
        String text = passage.goingIn();
        return named(text, knowledge).stream()
                .filter(row -> !row.stops() && !warns(text))
                .filter(row -> !TextWords.isOnlySpokenOf(text, TextWords.phrases(row.names())))
                .toList();
    }

    private static boolean warns(String sentence) {
        return WARNS.matcher(sentence.toLowerCase(Locale.ROOT)).find();
    }

    /** What a step or a note names need not go in, so that it asks and does not stop; where each sentence of it warns, it is only told. */
    private static void inWords(Passages.Passage passage, Knowledge knowledge, List<Finding> findings) {
        Set<Knowledge.Poison> warnedOf = new HashSet<>();
        Set<Knowledge.Poison> used = new HashSet<>();
        for (String sentence : Passages.sentences(passage.text())) {
            (warns(sentence) ? warnedOf : used).addAll(named(sentence, knowledge));
        }
        for (Knowledge.Poison row : named(passage.text(), knowledge)) {
            if (row.stops()) {
                boolean warning = warnedOf.contains(row) && !used.contains(row);
                findings.add(new Finding(
                        "plant",
                        warning ? Severity.NOTE : Severity.CAUTION,
                        passage.where(),
                        "",
                        "poisonous",
                        (warning
                                        ? "These words seem to warn of a poisonous plant, which must not touch the drink. "
                                        : "These words name a poisonous plant, which must not touch the drink. ")
                                + told(row),
                        row.status().mayClear() ? "" : "general knowledge, from memory; on the cautious side",
                        warning
                                ? "Take nothing of which you are not certain that it is the other plant."
                                : "Leave it out, and what it touched.",
                        null,
                        Sources.blocked(row.status())));
            }
        }
    }

    private static List<Knowledge.Poison> named(String text, Knowledge knowledge) {
        List<Knowledge.Poison> rows = new ArrayList<>(knowledge.poisons());
        rows.add(OTHER);
        return Words.named(Words.withAndWithoutHyphens(text), rows, Knowledge.Poison::names).stream()
                .filter(row -> !row.equals(OTHER))
                .toList();
    }

    private static String told(Knowledge.Poison row) {
        return capital(row.plant()) + " (" + row.botanical() + "): " + row.reason() + ".";
    }

    private static String capital(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
