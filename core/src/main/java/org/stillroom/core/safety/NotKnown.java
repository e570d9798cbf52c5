package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What is not known is said, so that silence never reads as harmless. */
final class NotKnown {
    /** Name of the rule, by which plans pick its findings. */
    static final String NAME = "not-known";

    private NotKnown() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        List<String> strong = names(drink, portion -> portion.isNotRecognised() && isStrong(portion.kind()));
        List<String> other = names(drink, portion -> portion.isNotRecognised() && !isStrong(portion.kind()));
        if (!strong.isEmpty()) {
            findings.add(finding(
                    Severity.CAUTION,
                    strong,
                    "What is in it is in none of our tables, so nothing can be said of its substances.",
                    "Ask the supplier for food-flavouring status and analysis, or name it by its plant."));
        }
        if (!other.isEmpty()) {
            findings.add(finding(
                    Severity.NOTE,
                    other,
                    "None of the watched substances is known of it, and none is ruled out.",
                    "Name the plants that are in it."));
        }
        List<String> partly = partly(drink);
        if (!partly.isEmpty()) {
            findings.add(finding(
                    Severity.NOTE,
                    partly,
                    "It brings watched substances; how much is not known.",
                    "Make it as a stage of this recipe, write its oil (contains: {oil: 5 g/L}), or ask for an analysis."));
        }
        return findings;
    }

    private static boolean isStrong(Kind kind) {
        return kind == Kind.ESSENTIAL_OIL || kind == Kind.ESSENCE;
    }

    private static List<String> names(Drink drink, Predicate<Portion> test) {
        return drink.portions().stream().filter(test).map(Portion::where).distinct().toList();
    }

    private static List<String> partly(Drink drink) {
        List<String> partly = new ArrayList<>();
        for (Amount amount : drink.amounts()) {
            for (String place : amount.notKnownFrom()) {
                String said = place + " (" + amount.watched().name() + ")";
                partly.add(said);
            }
        }
        return partly;
    }

    private static Finding finding(Severity severity, List<String> where, String message, String remedy) {
        return new Finding(
                NAME,
                severity,
                String.join("; ", where),
                "",
                "not known",
                message,
                "",
                remedy,
                null,
                Source.OIL_RANGES_RECALLED);
    }
}
