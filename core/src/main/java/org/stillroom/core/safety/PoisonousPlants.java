package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Plants that are refused whatever the kind of ingredient, also where steps and notes name them, and plants that ask for care. */
final class PoisonousPlants {
    private PoisonousPlants() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (PlannedLine line : drink.lines()) {
            String words = Words.withAndWithoutHyphens(line.words());
            for (Knowledge.Poison row : Words.named(words, drink.knowledge().poisons(), Knowledge.Poison::names)) {
                findings.add(new Finding(
                        "plant",
                        row.stops() ? Severity.STOP : Severity.CAUTION,
                        line.name(),
                        "",
                        row.stops() ? "poisonous" : "with care",
                        told(row),
                        row.status().mayClear() ? "" : "general knowledge, from memory; on the cautious side",
                        row.stops() ? "Leave it out." : "Know the kind and the dose, and keep to the limits of law.",
                        null,
                        Sources.blocked(row.status())));
            }
        }
        Passages.of(drink.plan()).forEach(passage -> inWords(passage, drink.knowledge(), findings));
        return findings;
    }

    /** What a step or a note names need not go in, so that it asks and does not stop. */
    private static void inWords(Passages.Passage passage, Knowledge knowledge, List<Finding> findings) {
        String words = Words.withAndWithoutHyphens(passage.text());
        for (Knowledge.Poison row : Words.named(words, knowledge.poisons(), Knowledge.Poison::names)) {
            if (row.stops()) {
                findings.add(new Finding(
                        "plant",
                        Severity.CAUTION,
                        passage.where(),
                        "",
                        "poisonous",
                        "These words name a poisonous plant, which must not touch the drink. " + told(row),
                        row.status().mayClear() ? "" : "general knowledge, from memory; on the cautious side",
                        "Leave it out, and what it touched.",
                        null,
                        Sources.blocked(row.status())));
            }
        }
    }

    private static String told(Knowledge.Poison row) {
        return capital(row.plant()) + " (" + row.botanical() + "): " + row.reason() + ".";
    }

    private static String capital(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
