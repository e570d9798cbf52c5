package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.tasting.AromaContents;
import org.stillroom.core.tasting.Note;

/**
 * Asks whether a dose of oil was meant: millilitres written for drops, neat oil for an essence, a batch scaled without its doses.
 *
 * <p>No table of usual doses could be read, so the bounds are our own judgement, wide enough that what is beyond is nearly always a slip:
 * 3 g/L for oils of anethole (2 g/L is the most that aniseed drinks may hold), 2 g/L for oils of limonene, 0.5 g/L for all others; and
 * on the other side a dose of which no constituent reaches its threshold.
 */
public final class Slips {
    private static final String ANETHOLE = "4180-23-8";
    private static final String LIMONENE = "5989-27-5";

    private static final double MOST_ANETHOLE = 3.0;
    private static final double MOST_CITRUS = 2.0;
    private static final double MOST = 0.5;
    private static final double TEN = 10.0;

    private Slips() {}

    /** Returns the doses of oil that are to be asked about; in what a recipe says is an essence, whatever the strength, none. */
    static List<Finding> in(Recipe recipe, List<PlannedLine> lines, double millilitres) {
        List<Finding> findings = new ArrayList<>(lookAlikes(lines));
        if (recipe.isEssence() || !(millilitres > 0.0)) {
            return findings;
        }
        for (int i = 0; i < lines.size(); i++) {
            Finding finding =
                    implausible("line " + (i + 1) + ", " + lines.get(i).name(), lines.get(i), millilitres);
            if (finding != null) {
                findings.add(finding);
            }
        }
        return findings;
    }

    private static @Nullable Finding implausible(String where, PlannedLine line, double millilitres) {
        Contents perGram = line.ingredient().perGram();
        double oil = perGram.grams(Substance.OIL);
        boolean aroma = line.ingredient().kind() == Kind.ESSENTIAL_OIL
                || line.ingredient().kind() == Kind.ESSENCE;
        if (!aroma || !(oil > 0.0) || !(line.grams() > 0.0)) {
            return null;
        }
        double perLitre = 1000.0 * oil * line.grams() / millilitres;
        Map<String, Double> parts = parts(perGram, oil);
        double most = most(parts);
        if (perLitre > most) {
            return tooMuch(where, line, perLitre, most);
        }
        List<Note> known = Note.of(AromaContents.of(line.name(), 1000.0 * perLitre, parts), 0.0).stream()
                .filter(note -> note.threshold() != null)
                .toList();
        boolean unsmelt = !known.isEmpty() && known.stream().allMatch(note -> note.most() < 1.0);
        return unsmelt ? tooLittle(where, perLitre) : null;
    }

    /**
     * Returns the most oil that is plausible in a drink, g/L; infinite for what carries none.
     *
     * @param perGram what a gram of the oil, or of what carries it, holds
     */
    public static double mostOil(Contents perGram) {
        double oil = perGram.grams(Substance.OIL);
        return oil > 0.0 ? most(parts(perGram, oil)) : Double.POSITIVE_INFINITY;
    }

    private static Map<String, Double> parts(Contents perGram, double oil) {
        Map<String, Double> parts = new TreeMap<>();
        perGram.aroma().forEach((cas, grams) -> parts.put(cas, grams / oil));
        return parts;
    }

    private static double most(Map<String, Double> parts) {
        if (parts.getOrDefault(ANETHOLE, 0.0) > 0.5) {
            return MOST_ANETHOLE;
        }
        return parts.getOrDefault(LIMONENE, 0.0) > 0.4 ? MOST_CITRUS : MOST;
    }

    private static Finding tooMuch(String where, PlannedLine line, double perLitre, double most) {
        return new Finding(
                "dose-implausible",
                Severity.CAUTION,
                where,
                "",
                "is this meant?",
                "It comes to " + Words.number(perLitre, 2) + " g of oil per litre, which is "
                        + Words.number(perLitre / most, 1) + " times the most that is plausible for this oil.",
                "The bound is our own judgement, wide on purpose.",
                meant(line, perLitre, most),
                Words.number(most, 1) + " g/L",
                Source.RULE_OF_THUMB);
    }

    private static String meant(PlannedLine line, double perLitre, double most) {
        Amount amount = typed(line.line().amount());
        if (amount instanceof Volume volume && volume.millilitres() <= 50.0) {
            return "If drops were meant, write " + Words.number(volume.millilitres(), 0)
                    + " drops. If it is an essence, list it as one with its g/L. If the batch was scaled, scale the dose.";
        }
        if (line.ingredient().kind() == Kind.ESSENTIAL_OIL && perLitre / TEN <= most) {
            return "A tenth of it would be plausible: if this is a dilution or an essence, list it as one with its g/L.";
        }
        return amount instanceof Drops
                ? "Look at the count, at what a drop weighs, and at the size of the batch."
                : "Look at the unit and at the decimal point; if the batch was scaled, scale the dose too.";
    }

    private static @Nullable Amount typed(LineAmount amount) {
        if (amount instanceof LineAmount.PerLitre perLitre) {
            return perLitre.dose().value().perLitre();
        }
        return amount instanceof LineAmount.Fixed fixed ? fixed.amount().value() : null;
    }

    private static Finding tooLittle(String where, double perLitre) {
        return new Finding(
                "dose-not-smelt",
                Severity.NOTE,
                where,
                "",
                "is this meant?",
                "It comes to " + Words.number(1000.0 * perLitre, 3)
                        + " mg of oil per litre; nothing in it reaches a threshold that is known.",
                "Thresholds as they were found in water; in spirit they are mostly not known.",
                "Look at the unit: drops for millilitres, or an essence for the neat oil.",
                null,
                Source.ODOUR_THRESHOLDS);
    }

    /** Names two dropper bottles of one recipe that begin with the same word, such as clove bud and clove leaf. */
    private static List<Finding> lookAlikes(List<PlannedLine> lines) {
        Map<String, String> first = new TreeMap<>();
        List<Finding> findings = new ArrayList<>();
        for (PlannedLine line : lines) {
            Kind kind = line.ingredient().kind();
            if (kind == Kind.ESSENTIAL_OIL || kind == Kind.ESSENCE || kind == Kind.TINCTURE) {
                String word = line.name().strip().toLowerCase(Locale.ROOT).split("\\s+", 2)[0];
                String other = first.putIfAbsent(word, line.name());
                if (other != null && !other.equals(line.name())) {
                    findings.add(Finding.of(
                            "look-alike-bottles",
                            Severity.NOTE,
                            other + " and " + line.name(),
                            "easily mistaken",
                            "Two bottles of this recipe begin with the same word.",
                            "Set them apart before you count drops, and read each label aloud."));
                }
            }
        }
        return findings;
    }
}
