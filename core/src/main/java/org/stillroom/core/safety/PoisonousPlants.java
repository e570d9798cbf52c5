package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Plants that are refused whatever the kind of ingredient, and plants that ask for care. */
final class PoisonousPlants {
    private PoisonousPlants() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (PlannedLine line : drink.lines()) {
            for (Knowledge.Poison row :
                    Words.named(line.words(), drink.knowledge().poisons(), Knowledge.Poison::names)) {
                findings.add(new Finding(
                        "plant",
                        row.stops() ? Severity.STOP : Severity.CAUTION,
                        line.name(),
                        "",
                        row.stops() ? "poisonous" : "with care",
                        capital(row.plant()) + " (" + row.botanical() + "): " + row.reason() + ".",
                        row.status().mayClear() ? "" : "general knowledge, from memory; on the cautious side",
                        row.stops() ? "Leave it out." : "Know the kind and the dose, and keep to the limits of law.",
                        null,
                        Sources.blocked(row.status())));
            }
        }
        return findings;
    }

    private static String capital(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
