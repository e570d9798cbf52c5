package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** Alcohol by serving, day and week beside what countries call a drink and low risk. */
final class AlcoholItself {
    /** Name of the rule. */
    static final String NAME = "alcohol";

    /** What is said beside the guidance of a body. */
    static final String GUIDANCE = "alcohol-guidance";

    private AlcoholItself() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        double perServing = drink.gramsPerLitre(Substance.ETHANOL) * serving.millilitres() / 1000.0;
        if (perServing == 0.0) {
            return List.of();
        }
        double day = perServing * serving.perDay();
        List<Finding> findings = new ArrayList<>();
        findings.add(new Finding(
                NAME,
                Severity.NOTE,
                "",
                "",
                "alcohol",
                "A serving holds " + Range.figures(perServing) + " g of ethanol: "
                        + String.join(", ", drinks(drink.knowledge(), perServing)) + ". "
                        + QuantityWords.plain(serving.perDay()) + " a day come to " + Range.figures(7.0 * day)
                        + " g a week.",
                "",
                "",
                null,
                Sources.drinks()));
        Knowledge.@Nullable StandardDrink strictest = drink.knowledge().standardDrinks().stream()
                .filter(each -> each.isGuided()
                        && each.place() != null
                        && serving.places().contains(each.place()))
                .min(Comparator.comparingDouble(Knowledge.StandardDrink::leastAWeek))
                .orElse(null);
        drink.knowledge().standardDrinks().stream()
                .filter(Knowledge.StandardDrink::isGuided)
                .forEach(each -> findings.add(beside(each, day, each.equals(strictest))));
        findings.add(new Finding(
                "who-should-not",
                Severity.NOTE,
                "",
                "",
                "who should not",
                "Not for children, in pregnancy or while breast-feeding, not with many medicines"
                        + " (metronidazole, disulfiram, sedatives, opioids, metformin, warfarin), never for pets.",
                "general knowledge, from memory",
                "A doctor or pharmacist knows the rest.",
                null,
                Source.HANDLING_CAUTIONS));
        return findings;
    }

    /** @param strictest whether no other guidance of the places asked about is stricter; that one asks for something */
    private static Finding beside(Knowledge.StandardDrink row, double day, boolean strictest) {
        boolean over = 7.0 * day > row.leastAWeek() || day > row.leastADay();
        String limit = upTo(row);
        return new Finding(
                GUIDANCE,
                over && strictest ? Severity.CAUTION : Severity.NOTE,
                "",
                "",
                over ? "above low-risk guidance" : "beside low-risk guidance",
                "Low risk in " + row.country() + " is up to " + limit + " ("
                        + row.body() + (row.year().isEmpty() ? "" : ", " + row.year()) + told(row.status())
                        + "); this comes to "
                        + Range.figures(day) + " g a day, " + Range.figures(7.0 * day) + " g a week.",
                row.year().isEmpty() ? "of which year it is, is not known here" : "",
                over && strictest ? "Serve less of it, or less often." : "",
                limit,
                Sources.drinks());
    }

    /** What nobody here has read whole says so in the sentence that compares with it. */
    private static String told(RowStatus status) {
        return switch (status) {
            case READ, DERIVED -> "";
            case MIXED -> "; read in part, the rest from memory";
            case MEMORY -> "; from memory";
        };
    }

    private static String upTo(Knowledge.StandardDrink row) {
        List<String> parts = new ArrayList<>();
        if (!row.aWeek().isEmpty()) {
            parts.add(upTo(row.aWeek(), "a week"));
        }
        if (!row.aDay().isEmpty()) {
            parts.add(upTo(row.aDay(), "a day"));
        }
        return String.join(" and ", parts);
    }

    private static String upTo(List<Double> grams, String per) {
        return grams.size() == 1
                ? told(grams.get(0)) + " g " + per
                : told(grams.get(0)) + " g " + per + " for men, " + told(grams.get(1)) + " g for women";
    }

    private static String told(double grams) {
        return QuantityWords.plain(Math.rint(10.0 * grams) / 10.0);
    }

    private static List<String> drinks(Knowledge knowledge, double grams) {
        List<String> drinks = new ArrayList<>();
        for (Knowledge.StandardDrink drink : knowledge.standardDrinks()) {
            if (List.of("UK", "USA", "Australia").contains(drink.country())) {
                drinks.add(QuantityWords.fixed(drink.in(grams), 1) + " " + drink.country() + " " + drink.name());
            }
        }
        return drinks;
    }
}
