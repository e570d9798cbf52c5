package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.ExtractStrength;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Tells the dose of an extract that came out stronger or weaker than the recipe's. */
public final class AdjustDose {
    /** Beyond this an extract is another one rather than a stronger or weaker one. Own judgement. */
    private static final double MOST_TIMES = 4.0;

    private AdjustDose() {}

    /**
     * The question.
     *
     * @param dose of the recipe's extract, in any unit
     * @param strength how strong the other is beside it, by one basis
     * @param ofRecipe strength of the recipe's extract, % vol, or empty
     * @param ofOther strength of the other, % vol, or empty
     * @param perLitre the dose in mL per litre where it is one, for what the other brings of alcohol; else empty
     */
    public record Asked(
            double dose,
            ExtractStrength strength,
            OptionalDouble ofRecipe,
            OptionalDouble ofOther,
            OptionalDouble perLitre) {}

    /**
     * The dose.
     *
     * @param times so many times as strong as the recipe's extract
     * @param dose of the other, in the unit of the question
     * @param alcohol by how much the strength of the liqueur changes, % vol, where both strengths and the litre are known; else null
     */
    public record Found(
            Estimate times, Estimate dose, @Nullable Estimate alcohol, List<Finding> findings) {
        public Found {
            findings = List.copyOf(findings);
        }
    }

    /** Returns the dose. */
    public static Found answer(Asked asked, Workings workings) {
        ExtractStrength strength = asked.strength();
        double dose = strength.dose(asked.dose());
        double byFactor = strength.byFactor() - 1.0 / strength.byFactor();
        workings.step("strength beside the recipe's extract", strength.times(), "times", Source.BALANCE);
        workings.step("dose of the recipe over that", dose, "in the unit of the dose", Source.BALANCE);
        List<Finding> findings = new ArrayList<>();
        boolean byTaste = strength.byFactor() > 1.0;
        if (!byTaste) {
            findings.add(Finding.of(
                    "by-figures",
                    Severity.NOTE,
                    "",
                    "to be tasted",
                    "It takes the two figures as typed; how much two extracts of one figure differ is not told by them.",
                    "Taste the liqueur with somewhat less first, and add."));
        }
        if (byTaste) {
            findings.add(new Finding(
                    "by-comparison",
                    Severity.NOTE,
                    "",
                    "",
                    "to be tasted",
                    "It rests on comparisons by taste: two samples that differ by less than a sixth to a third cannot be told apart.",
                    "Difference thresholds from memory; your own comparisons widen them where they disagree.",
                    "Taste the liqueur with three fifths, all, and one and a half times of that dose.",
                    null,
                    Source.ODOUR_THRESHOLDS));
        }
        if (strength.times() > MOST_TIMES || strength.times() < 1.0 / MOST_TIMES) {
            findings.add(Finding.of(
                    "another-extract",
                    Severity.CAUTION,
                    "",
                    "is this meant?",
                    "The two differ more than fourfold; their balance of notes is rarely the same then.",
                    "Look at both figures: are they on the same basis, and in the same unit?"));
        }
        return new Found(
                byTaste
                        ? new Estimate(strength.times(), strength.times() * byFactor / 2.0)
                        : Estimate.inDoubtNotTold(strength.times()),
                byTaste ? new Estimate(dose, dose * byFactor / 2.0) : Estimate.inDoubtNotTold(dose),
                alcohol(asked, dose),
                findings);
    }

    /** The same litre holds the alcohol of the new dose in place of the old; both strengths may be off as those of one's own are. */
    private static @Nullable Estimate alcohol(Asked asked, double dose) {
        if (asked.ofRecipe().isEmpty()
                || asked.ofOther().isEmpty()
                || asked.perLitre().isEmpty()) {
            return null;
        }
        double perLitre = asked.perLitre().getAsDouble();
        double other = perLitre * dose / asked.dose();
        double change = other * asked.ofOther().getAsDouble()
                - perLitre * asked.ofRecipe().getAsDouble();
        return new Estimate(change / 1000.0, LabelTolerance.OF_OWN * Math.hypot(other, perLitre) / 1000.0);
    }
}
