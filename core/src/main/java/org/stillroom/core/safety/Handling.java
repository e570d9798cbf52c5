package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** Neat oils and liquids that burn. */
final class Handling {
    /** Of fenchone, which is known for it too, no table tells where it comes from. */
    private static final Set<String> BRING_ON_SEIZURES = Set.of("thujone", "camphor", "pinocamphone", "1,8-cineole");

    private Handling() {}

    static List<Finding> neatOil(Drink drink, Serving serving) {
        double perLitre = drink.gramsPerLitre(Substance.OIL);
        if (perLitre == 0.0) {
            return List.of();
        }
        double perServing = perLitre * serving.millilitres();
        Finding oil = new Finding(
                "neat-oil",
                Severity.NOTE,
                "",
                "",
                "oil",
                "Essential oil: " + Range.figures(perLitre) + " g/L, " + Range.figures(perServing)
                        + " mg in a serving of "
                        + QuantityWords.plain(serving.millilitres()) + " mL, "
                        + Range.figures(drink.plan().liquid().grams(Substance.OIL)) + " g in the batch.",
                "one drop is about 20 to 50 mg; five millilitres of some oils have poisoned children severely (from memory)",
                "Weigh oils, never taste them neat, wear gloves, lock them up, and label concentrates with content and"
                        + " NOT TO DRINK.",
                null,
                Source.HANDLING_CAUTIONS);
        return drink.isAlcoholic() ? List.of(oil) : List.of(oil, withoutAlcohol());
    }

    /** What an alcoholic drink says because of its alcohol, one without it says because of its oils: children would drink it. */
    private static Finding withoutAlcohol() {
        return new Finding(
                "who-should-not",
                Severity.NOTE,
                "",
                "",
                "not for everyone",
                "There is essential oil in it: not for small children, in pregnancy or while breast-feeding, with epilepsy or"
                        + " with medicines unless a doctor agrees, never for pets.",
                "general knowledge, from memory",
                "A doctor or pharmacist knows the rest.",
                null,
                Source.HANDLING_CAUTIONS);
    }

    /** Who is harmed by what is watched in it, beside who is harmed by its alcohol or its oils. */
    static List<Finding> watched(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        boolean saidOfOils = !drink.isAlcoholic() && drink.gramsPerLitre(Substance.OIL) > 0.0;
        if (!saidOfOils) {
            tell(
                    drink,
                    BRING_ON_SEIZURES,
                    "who-should-not",
                    "not with epilepsy",
                    " can bring on seizures: not for anybody with epilepsy, nor for small children.",
                    findings);
        }
        tell(
                drink,
                Set.of("coumarin"),
                "medicines",
                "medicines",
                " burdens the liver: not together with medicines that do so too, nor with a liver that is ill.",
                findings);
        return findings;
    }

    private static void tell(
            Drink drink, Set<String> substances, String rule, String verdict, String harms, List<Finding> findings) {
        List<Amount> brought = drink.amounts().stream()
                .filter(amount -> substances.contains(amount.watched().name()))
                .toList();
        if (!brought.isEmpty()) {
            String names = String.join(
                    ", ",
                    brought.stream().map(amount -> amount.watched().name()).toList());
            findings.add(new Finding(
                    rule,
                    Severity.NOTE,
                    String.join(
                            "; ", brought.stream().map(Amount::where).distinct().toList()),
                    "",
                    verdict,
                    "What can be in it (" + names + ")" + harms,
                    "general knowledge, from memory",
                    "A doctor or pharmacist knows the rest.",
                    null,
                    Source.HANDLING_CAUTIONS));
        }
    }

    static List<Finding> concentrate(Drink drink, Serving serving) {
        double oil = drink.gramsPerLitre(Substance.OIL);
        if (drink.isEssence()) {
            return List.of(essence(oil));
        }
        return drink.isStrongInOil()
                ? List.of(concentrate(
                        held(oil)
                                + ", as much as an essence. Its recipe does not say that it makes one, so every limit for drinks"
                                + " is asked of it.",
                        "Look at the doses of oil. If it is dosed by the drop and not drunk, write “makes: essence”."))
                : List.of();
    }

    /** Returns what is said of an essence that holds so much oil, g/L. */
    static Finding essence(double oil) {
        return concentrate(
                held(oil)
                        + ". Its recipe says that it makes an essence: limits and guidance for drinks are not asked of it.",
                "Use it by the drop as an ingredient, and ask of the drink made with it. Lock it up, labelled with"
                        + " content and NOT TO DRINK.");
    }

    private static String held(double oil) {
        return "It holds " + Range.figures(oil) + " g/L of essential oil";
    }

    private static Finding concentrate(String message, String remedy) {
        return new Finding(
                "concentrate",
                Severity.CAUTION,
                "",
                "",
                "not for drinking as it is",
                message,
                "",
                remedy,
                null,
                Source.HANDLING_CAUTIONS);
    }

    static List<Finding> flashPoint(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        PlannedLine strongest = null;
        double most = drink.strength();
        for (PlannedLine line : drink.lines()) {
            double strength = strength(line);
            if (strength > most) {
                strongest = line;
                most = strength;
            }
        }
        addFlash(findings, drink, strongest == null ? "the finished drink" : strongest.name(), most);
        if (strongest != null) {
            addFlash(findings, drink, "the finished drink", drink.strength());
        }
        return findings;
    }

    static double strength(PlannedLine line) {
        if (line.ingredient().perGram().grams(Substance.ETHANOL) == 0.0) {
            return 0.0;
        }
        return Liquid.figures(line.ingredient().perGram(), Temperature.TWENTY_CELSIUS)
                .value(Figure.STRENGTH);
    }

    /** The next stronger row of the table holds: the lower flash point, on the cautious side. */
    private static void addFlash(List<Finding> findings, Drink drink, String where, double strength) {
        List<Knowledge.FlashPoint> rows = drink.knowledge().flashPoints();
        if (rows.isEmpty() || strength < rows.get(0).strength()) {
            return;
        }
        Knowledge.@Nullable FlashPoint row = rows.stream()
                .filter(each -> each.strength() >= Math.min(strength, 100.0) - 1e-9)
                .findFirst()
                .orElse(null);
        if (row != null) {
            findings.add(new Finding(
                    "flash-point",
                    Severity.NOTE,
                    where,
                    "",
                    "flash point",
                    "At " + QuantityWords.fixed(strength, 1) + " % vol its vapour lights from about "
                            + QuantityWords.plain(row.celsius()) + " °C on.",
                    "closed cup, the row of " + QuantityWords.plain(row.strength()) + " % vol, on the cautious side",
                    "No flame, no hot plate; warm only in a water bath, with air.",
                    null,
                    Source.FLASH_POINTS));
        }
    }
}
