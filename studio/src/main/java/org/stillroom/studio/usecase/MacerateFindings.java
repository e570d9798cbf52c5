package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.extraction.PlantSort;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Standing;
import org.stillroom.studio.usecase.Macerate.Asked;

/** What is to be known about plants in spirit. */
final class MacerateFindings {
    /** Fruit below this strength may ferment or spoil, % vol. From memory. */
    private static final double LEAST_FOR_FRUIT = 25.0;

    private MacerateFindings() {}

    /**
     * Returns what is to be known.
     *
     * @param strength of what comes, % vol
     */
    static List<Finding> of(Asked asked, double strength) {
        List<Finding> findings = new ArrayList<>();
        double solvent =
                Essentials.of(MadeUp.spirit(asked.strength()).toGrams()).strength();
        for (Charge charge : asked.charges()) {
            onPlant(charge.plant(), solvent, findings);
        }
        boolean fruit = asked.charges().stream()
                .anyMatch(each -> each.plant().sort().key().equals("fresh_fruit"));
        if (fruit && strength < LEAST_FOR_FRUIT) {
            findings.add(weakFruit(strength));
        }
        if (asked.steeping() == null) {
            findings.add(weakDays(asked.celsius()));
        }
        return findings;
    }

    private static void onPlant(Plant plant, double solvent, List<Finding> findings) {
        if (plant.standing() == Standing.FROM_MEMORY) {
            findings.add(note(
                    "plant-from-memory",
                    plant.name(),
                    "Its water is recalled, not read: " + QuantityWords.fixed(100.0 * plant.water(), 0) + " %.",
                    "Give your own, if you dried a sample."));
        }
        PlantSort sort = plant.sort();
        if (!plant.sugarKnown() && sort.fresh()) {
            findings.add(note(
                    "plant-sugar-unknown", plant.name(), "The source states no sugar for it, so none is counted.", ""));
        }
        if (solvent < sort.strengthLow() - 1e-6 || solvent > sort.strengthHigh() + 1e-6) {
            findings.add(strengthOff(plant, solvent));
        }
    }

    private static Finding weakDays(double celsius) {
        return new Finding(
                "steeping-weak",
                Severity.NOTE,
                "days",
                "",
                "weakly known",
                "The days are those of the slowest plant at " + QuantityWords.plain(celsius)
                        + " °C, by rates of an order of magnitude.",
                "Off by a factor of 3 either way, and more for powder or whole fruit.",
                "Taste on these days, write down what you find, and give three samples or more.",
                null,
                Source.STEEPING);
    }

    private static Finding note(String rule, String where, String message, String remedy) {
        return Finding.of(rule, Severity.NOTE, where, "", message, remedy);
    }

    private static Finding strengthOff(Plant plant, double solvent) {
        PlantSort sort = plant.sort();
        boolean weak = solvent < sort.strengthLow();
        return new Finding(
                weak ? "solvent-weak" : "solvent-strong",
                Severity.NOTE,
                plant.name(),
                "",
                weak ? "weak for it" : "strong for it",
                "For " + sort.words() + " " + QuantityWords.fixed(sort.strengthLow(), 0) + " to "
                        + QuantityWords.fixed(sort.strengthHigh(), 0) + " % vol are usual, not "
                        + QuantityWords.fixed(solvent, 1) + " % vol: "
                        + (weak
                                ? "oils and resins come out less, acids, tannin and colour more."
                                : "oils and resins come out more, bitterness, sugar and colour less."),
                "",
                "",
                null,
                Source.EXTRACTION_PRACTICE);
    }

    private static Finding weakFruit(double strength) {
        return new Finding(
                "fruit-weak",
                Severity.CAUTION,
                "solvent",
                "",
                "may spoil",
                "With the juice of the fruit it comes to " + QuantityWords.fixed(strength, 1) + " % vol.",
                "25 % vol is what handbooks ask for, from memory.",
                "Take stronger spirit or less fruit, so that at least 25 % vol are left.",
                "25 % vol",
                Source.EXTRACTION_PRACTICE);
    }
}
