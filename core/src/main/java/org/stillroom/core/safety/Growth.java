package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** Whether alcohol and sugar keep the drink; the bounds are from memory and common practice, and pH is not known here. */
final class Growth {
    /** Below this yeast can work, % vol. From memory: 17 to 18. */
    private static final double YEAST_STOPS = 18.0;
    /** From this much sugar on hardly any yeast works, g/L. From memory: 350 to 400. */
    private static final double SUGAR_KEEPS = 400.0;
    /** Below this bacteria are not reliably held down, % vol. From memory. */
    private static final double BACTERIA_HELD = 20.0;
    /** Below this a low-acid macerate can grow botulism, % vol. From memory. */
    private static final double BOTULISM = 10.0;

    private Growth() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        double strength = drink.strength();
        String at = "At " + QuantityWords.fixed(strength, 1) + " % vol ";
        if (has(drink, Kind.DAIRY) || has(drink, Kind.EGG)) {
            findings.add(cream(strength, at));
        }
        boolean ferments = has(drink, Kind.JUICE)
                || has(drink, Kind.FRESH_PLANT)
                || has(drink, Kind.WINE)
                || has(drink, Kind.HONEY);
        if (ferments && strength < YEAST_STOPS && drink.figures().value(Figure.SUGAR) < SUGAR_KEEPS) {
            findings.add(finding(
                    Severity.CAUTION,
                    "can ferment again",
                    at + "and " + QuantityWords.fixed(drink.figures().value(Figure.SUGAR), 0)
                            + " g/L of sugar yeast from fruit, wine or honey can work again, and a closed bottle can burst.",
                    "Make it " + QuantityWords.plain(YEAST_STOPS)
                            + " % vol or stronger, or pasteurise it and keep it cold."));
        }
        if (strength < BOTULISM) {
            findings.add(finding(
                    Severity.CAUTION,
                    "does not keep",
                    at + "alcohol does not keep it; with little acid even botulism can grow. Its pH is not known.",
                    "Keep it in the fridge and use it within two weeks, or boil and seal it, below pH 4.6."));
        }
        if (drink.plan().liquid().grams(org.stillroom.core.liquid.Substance.ETHANOL) > 0.0 && !drink.isAlcoholic()) {
            findings.add(finding(
                    Severity.NOTE,
                    "not free of alcohol",
                    at + "it holds traces of alcohol, also where it is called without.",
                    "Say so to whoever must have none."));
        }
        return findings;
    }

    private static Finding cream(double strength, String at) {
        boolean held = strength >= BACTERIA_HELD;
        return finding(
                held ? Severity.NOTE : Severity.CAUTION,
                held ? "keep it cold" : "does not keep",
                at + "with milk or egg in it bacteria "
                        + (held ? "are mostly held down." : "are not reliably held down."),
                "Use pasteurised milk and egg, keep it in the fridge, "
                        + (held ? "use it within three months." : "use it within two weeks."));
    }

    private static boolean has(Drink drink, Kind kind) {
        return drink.lines().stream().anyMatch(line -> line.ingredient().kind() == kind);
    }

    private static Finding finding(Severity severity, String verdict, String message, String remedy) {
        return new Finding(
                "growth",
                severity,
                "",
                "",
                verdict,
                message,
                "rules of thumb, from memory and common practice",
                remedy,
                null,
                Source.HANDLING_CAUTIONS);
    }
}
