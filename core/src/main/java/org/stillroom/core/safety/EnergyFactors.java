package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** What the figures count as carbohydrate and the law does not (polyols, erythritol, fibre), and what they do not count at all. */
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
        uncounted(drink).stream().map(PlannedLine::name).distinct().forEach(name -> findings.add(tooLittle(name)));
        for (PlannedLine line : drink.lines()) {
            double grams = line.ingredient().perGram().grams(Substance.OTHER_SOLIDS) * line.grams();
            for (Factor factor : factors(line)) {
                findings.add(
                        tooMuch(line, factor, 100.0 * grams / drink.figures().value(Figure.VOLUME_20C)));
            }
        }
        return findings;
    }

    /** Returns whether the energy of something in it is counted higher than the law does. */
    static boolean isHigh(Drink drink) {
        return drink.lines().stream().anyMatch(line -> !factors(line).isEmpty());
    }

    private static List<Factor> factors(PlannedLine line) {
        boolean holdsSome = line.ingredient().perGram().grams(Substance.OTHER_SOLIDS) * line.grams() > 0.0;
        return FACTORS.stream()
                .filter(factor -> holdsSome && TextWords.says(line.words(), factor.names()))
                .toList();
    }

    /** Returns the lines of which more goes in than is said: as far as nobody says it they count as water. */
    static List<PlannedLine> uncounted(Drink drink) {
        return drink.lines().stream()
                .filter(line -> isUnsaid(line.ingredient().ingredient()))
                .toList();
    }

    private static boolean isUnsaid(Ingredient ingredient) {
        return switch (ingredient.kind()) {
            case DAIRY, EGG -> !ingredient.contains().containsKey(Substance.FAT);
            case JUICE, LIQUEUR -> isSugarUnsaid(ingredient);
            case SPIRIT, WINE, ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL -> false;
            case SUGAR, SYRUP, HONEY, FRESH_PLANT, DRIED_PLANT, ACID, SALT, GLYCEROL, WATER, OTHER -> false;
        };
    }

    static boolean isSugarUnsaid(Ingredient ingredient) {
        return ingredient.sugar() == null
                && ingredient.contains().keySet().stream().noneMatch(each -> each.sugar() != null);
    }

    private static Finding tooLittle(String name) {
        return new Finding(
                NAME,
                Severity.CAUTION,
                name,
                "",
                "energy counted low",
                "Its fat, protein or sugar is not said and counts as water: energy is told too low.",
                "",
                "Write what it holds by its own label (contains: {fat: 30 %, protein: 16 %}); until then the energy told is"
                        + " the least.",
                null,
                Source.EU_1169_2011);
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
