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

    /** The same of substances of which no law speaks: told where it is asked for, not in every plan. */
    static final String OF_FLAVOUR = "not-known-flavour";

    private NotKnown() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        List<String> strong = names(drink, portion -> portion.isNotRecognised() && isStrong(portion));
        List<String> other = names(drink, portion -> portion.isNotRecognised() && !isStrong(portion));
        strong.forEach(name -> findings.add(finding(
                NAME,
                Severity.CAUTION,
                List.of(name),
                "What is in it is in none of our tables: how much of any watched substance it holds, and whether it is fit "
                        + "to drink, is not known.",
                "Ask the supplier for food-flavouring status and analysis, or name it by its plant.")));
        if (!other.isEmpty()) {
            findings.add(finding(
                    NAME,
                    Severity.NOTE,
                    other,
                    "None of the watched substances is known of it, and none is ruled out.",
                    "Name the plants that are in it."));
        }
        drink.portions().stream().filter(Portion::isTaken).forEach(portion -> findings.add(taken(portion)));
        addPartly(findings, NAME, partly(drink, Watched::isGrave));
        addPartly(findings, OF_FLAVOUR, partly(drink, watched -> !watched.isGrave()));
        return findings;
    }

    private static Finding taken(Portion portion) {
        String plants =
                String.join(" and ", portion.plants().stream().map(Plant::name).toList());
        return finding(
                NAME,
                Severity.NOTE,
                List.of(portion.where()),
                "It is taken for " + plants + "; what “" + String.join(" ", portion.unread())
                        + "” says of it is not known, so that it may be another plant.",
                "Name it by its botanical name, or ask the supplier which plant it is.");
    }

    private static void addPartly(List<Finding> findings, String rule, List<String> partly) {
        if (!partly.isEmpty()) {
            findings.add(
                    finding(
                            rule,
                            Severity.NOTE,
                            partly,
                            "It brings watched substances; how much is not known.",
                            "Make it as a stage of this recipe, write how much plant it carries (ratio: 1:5) or its oil (contains: {oil: 5 g/L}), or ask for an analysis."));
        }
    }

    /** An oil is strong whatever it is dissolved in, and a salt by a name of its own may be anything. */
    private static boolean isStrong(Portion portion) {
        return portion.form() == Portion.Form.OIL
                || portion.kind() == Kind.ESSENTIAL_OIL
                || portion.kind() == Kind.ESSENCE
                || portion.kind() == Kind.SALT;
    }

    private static List<String> names(Drink drink, Predicate<Portion> test) {
        return drink.portions().stream()
                .filter(test)
                .map(Portion::where)
                .distinct()
                .toList();
    }

    private static List<String> partly(Drink drink, Predicate<Watched> which) {
        List<String> partly = new ArrayList<>();
        List<String> once = Kernels.toldOnce(drink);
        for (Amount amount : drink.amounts()) {
            if (which.test(amount.watched())) {
                amount.notKnownFrom().stream()
                        .filter(place -> !(Kernels.isAbout(amount) && once.contains(place)))
                        .forEach(place ->
                                partly.add(place + " (" + amount.watched().name() + ")"));
            }
        }
        return partly;
    }

    private static Finding finding(String rule, Severity severity, List<String> where, String message, String remedy) {
        return new Finding(
                rule,
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
