package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Alcohol by serving, day and week beside what countries call a drink and low risk. */
final class AlcoholItself {
    /** Name of the rule. */
    static final String NAME = "alcohol";

    /** UK low-risk guidance: 14 units of 8 g a week, g. Source: UK CMOs 2016. */
    private static final double UK_WEEK = 14 * 8.0;

    private AlcoholItself() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        double perServing = drink.gramsPerLitre(Substance.ETHANOL) * serving.millilitres() / 1000.0;
        if (perServing == 0.0) {
            return List.of();
        }
        double week = 7.0 * perServing * serving.perDay();
        boolean over = week > UK_WEEK;
        return List.of(
                new Finding(
                        NAME,
                        over ? Severity.CAUTION : Severity.NOTE,
                        "",
                        "",
                        over ? "above low-risk guidance" : "alcohol",
                        "A serving holds " + Range.figures(perServing) + " g of ethanol: "
                                + String.join(", ", drinks(drink.knowledge(), perServing)) + ". "
                                + QuantityWords.plain(serving.perDay()) + " a day come to " + Range.figures(week)
                                + " g a week; the UK names 112 g (14 units), Canada 27 g, as low risk.",
                        "guidance differs by country and year; partly from memory",
                        over ? "Serve less of it, or less often." : "",
                        "14 UK units a week",
                        Sources.drinks()),
                new Finding(
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
                        org.stillroom.core.reference.Source.HANDLING_CAUTIONS));
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
