package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What there is to say about a plan beyond its amounts. */
final class Remarks {
    /** Room to stir in: a tenth of the vessel. Common practice, no source. */
    private static final double HEADSPACE = 0.10;

    private static final double NOTHING = 1e-9;

    private Remarks() {}

    static List<Finding> on(Recipe recipe, List<PlannedLine> lines, double millilitres) {
        List<Finding> remarks = new ArrayList<>();
        double total = lines.stream().mapToDouble(PlannedLine::grams).sum();
        for (int i = 0; i < lines.size(); i++) {
            PlannedLine line = lines.get(i);
            String where = "line " + (i + 1) + ", " + line.name();
            if (line.line().amount() instanceof LineAmount.Free && line.grams() <= NOTHING * total) {
                remarks.add(notNeeded(where, line));
            }
            if (line.line().amount() instanceof LineAmount.MakeUp) {
                remarks.add(toTheMark(where, line));
            }
        }
        remarks.addAll(onVessel(recipe.vessel(), millilitres));
        return remarks;
    }

    /** Returns which doses come to more than there is, now that the volume is known. */
    static List<Finding> onDoses(List<PlannedLine> lines, Pantry pantry) {
        List<Finding> remarks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            PlannedLine line = lines.get(i);
            Double atHand = pantry.atHand(line.ingredient());
            if (line.line().amount() instanceof LineAmount.PerLitre dosed
                    && atHand != null
                    && exceeds(line.grams(), atHand)) {
                String where = "line " + (i + 1) + ", " + line.name();
                remarks.add(moreThanAtHand(where, dosed.dose().text(), line.grams(), atHand));
            }
        }
        return remarks;
    }

    /** Returns of which ingredients several lines together take more than there is, though none of them does alone. */
    static List<Finding> onSharing(List<PlannedLine> lines, Pantry pantry) {
        Map<String, List<PlannedLine>> byName = lines.stream()
                .collect(Collectors.groupingBy(
                        line -> line.ingredient().name(), LinkedHashMap::new, Collectors.toList()));
        List<Finding> remarks = new ArrayList<>();
        byName.forEach((name, sharing) -> {
            Double atHand = pantry.atHand(sharing.get(0).ingredient());
            double together = sharing.stream().mapToDouble(PlannedLine::grams).sum();
            if (atHand != null
                    && exceeds(together, atHand)
                    && sharing.stream().noneMatch(line -> exceeds(line.grams(), atHand))) {
                remarks.add(moreThanAtHand("all lines of " + name, Words.grams(together), together, atHand));
            }
        });
        return remarks;
    }

    /** Returns whether it is more than there is, apart from rounding. */
    static boolean exceeds(double grams, double atHand) {
        return grams > atHand * (1.0 + 1e-9);
    }

    static Finding moreThanAtHand(String where, String asked, double grams, double atHand) {
        return Finding.of(
                "more-than-at-hand",
                Severity.CAUTION,
                where,
                "not enough",
                asked + " is asked for, and " + Words.grams(atHand) + " is at hand: " + Words.grams(grams - atHand)
                        + " are wanting.",
                "Get more of it, or ask for less.");
    }

    private static Finding notNeeded(String where, PlannedLine line) {
        return Finding.of(
                "line-not-needed",
                Severity.NOTE,
                where,
                "not needed",
                "The target takes no " + line.name() + ".",
                "Leave it out, or name an aim such as use up " + line.name() + ".");
    }

    private static Finding toTheMark(String where, PlannedLine line) {
        boolean bringsAlcohol = line.ingredient().perGram().grams(Substance.ETHANOL) > 0.0;
        return Finding.of(
                "made-up-to-the-mark",
                Severity.NOTE,
                where,
                "volume is what is measured",
                bringsAlcohol
                        ? "The volume is measured, not how much " + line.name() + " goes in."
                        : "The volume is measured, so that it and the alcohol poured fix the strength, whatever the"
                                + " sugar's error.",
                "Fill to the mark only when all is dissolved and at room temperature.");
    }

    /** Returns whether the liquid fits the vessel with room to stir. */
    static List<Finding> onVessel(@Nullable Typed<Volume> vessel, double millilitres) {
        double usable =
                vessel == null ? 0.0 : (1.0 - HEADSPACE) * vessel.value().millilitres();
        if (vessel == null || millilitres <= usable) {
            return List.of();
        }
        return List.of(new Finding(
                "vessel-too-small",
                Severity.CAUTION,
                "vessel",
                "",
                "does not fit",
                Words.number(millilitres, 0) + " mL do not fit a vessel of " + vessel.text()
                        + " with a tenth of it left free for stirring.",
                "",
                "Take a vessel of at least " + Words.number(millilitres / (1.0 - HEADSPACE), 0) + " mL, or make less.",
                Words.number(usable, 0) + " mL",
                Source.TRADE));
    }
}
