package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** What the figures count as carbohydrate and the law does not: polyols, erythritol, fibre. */
final class EnergyFactors {
    /** Name of the rule. */
    static final String NAME = "energy-factor";

    /** Carbohydrate, kJ/g and kcal/g. */
    private static final Factor COUNTED = new Factor("carbohydrate", List.of(), 17.0, 4.0);

    private static final List<Factor> FACTORS = Tables.open("safety/energy_factors.csv").rows().stream()
            .map(Factor::of)
            .toList();

    private record Factor(String what, List<TextWords.Phrase> names, double kilojoules, double kilocalories) {
        static Factor of(Table.Row row) {
            return new Factor(
                    row.text("what"),
                    TextCaution.phrases(row.text("names")),
                    row.number("kj_per_g"),
                    row.number("kcal_per_g"));
        }
    }

    private EnergyFactors() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (PlannedLine line : drink.lines()) {
            double grams = line.ingredient().perGram().grams(Substance.OTHER_SOLIDS) * line.grams();
            for (Factor factor : FACTORS) {
                if (grams > 0.0 && TextWords.says(line.words(), factor.names())) {
                    findings.add(tooMuch(
                            line, factor, 100.0 * grams / drink.figures().value(Figure.VOLUME_20C)));
                }
            }
        }
        return findings;
    }

    /** @param grams of it in 100 mL; of a stage no more than this, for not all that a stage makes need go in */
    private static Finding tooMuch(PlannedLine line, Factor factor, double grams) {
        return new Finding(
                NAME,
                Severity.NOTE,
                line.name(),
                "",
                "energy counted high",
                "Its dissolved solids count as carbohydrate, " + QuantityWords.plain(COUNTED.kilojoules())
                        + " kJ/g. The law counts "
                        + factor.what() + " with " + QuantityWords.plain(factor.kilojoules())
                        + " kJ/g: energy is told up to "
                        + Range.figures(grams * (COUNTED.kilojoules() - factor.kilojoules())) + " kJ, or "
                        + Range.figures(grams * (COUNTED.kilocalories() - factor.kilocalories()))
                        + " kcal, per 100 mL too high.",
                "",
                "Take that off the energy on the label.",
                null,
                Source.EU_1169_2011);
    }
}
