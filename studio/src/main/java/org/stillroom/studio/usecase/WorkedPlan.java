package org.stillroom.studio.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.blend.Blend;
import org.stillroom.core.ingredient.CarriedPlant;
import org.stillroom.core.ingredient.DoseUnits;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.plan.Bands;
import org.stillroom.core.plan.MixingStep;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Grounds;
import org.stillroom.planner.marks.Measured;
import org.stillroom.planner.marks.MeasuredLine;

/**
 * A plan with everything that a maker works from.
 *
 * @param plan the exact amounts
 * @param figures the finished liquid of the exact amounts, at 20 °C
 * @param measured the amounts as the instruments allow, and what rounding did
 * @param bands where the figures will lie in nine batches of ten
 * @param blend how much it shrinks and warms
 * @param steps the order of mixing
 * @param runningTotals what an untared scale shows, in the order of mixing
 * @param stages the stages that come first, each worked out in the same way
 * @param grounds what it was judged on as a drink
 * @param findings everything to know about it, its stages' own excepted
 */
public record WorkedPlan(
        Plan plan,
        Figures figures,
        Measured measured,
        Bands bands,
        Blend blend,
        List<MixingStep> steps,
        List<Measured.RunningTotal> runningTotals,
        List<WorkedStage> stages,
        Grounds grounds,
        List<Finding> findings) {
    public WorkedPlan {
        steps = List.copyOf(steps);
        runningTotals = List.copyOf(runningTotals);
        stages = List.copyOf(stages);
        findings = List.copyOf(findings);
    }

    /** Returns whether it cannot be reached, or a rule forbids it. */
    public boolean isStopped() {
        return !plan.reached() || findings.stream().anyMatch(finding -> finding.severity() == Severity.STOP);
    }

    /** Returns what a line doses per litre of what is made, or null where it is no dose. */
    public @Nullable DoseUnits dose(PlannedLine line) {
        return dose(line, line.grams());
    }

    /** Returns what a line doses as it is measured, in whole drops or to a mark, or null where it is no dose. */
    public @Nullable DoseUnits dose(MeasuredLine line) {
        return dose(line.exact(), line.grams());
    }

    private @Nullable DoseUnits dose(PlannedLine line, double grams) {
        return plan.millilitres() > 0.0 ? DoseUnits.of(line.ingredient(), 1000.0 * grams / plan.millilitres()) : null;
    }

    /** Returns the plant that a line brings per litre of what is made, or null where nobody said how much it carries. */
    public @Nullable CarriedPlant plant(PlannedLine line) {
        return plan.millilitres() > 0.0
                ? CarriedPlant.of(line.ingredient(), 1000.0 * line.grams() / plan.millilitres())
                : null;
    }

    /**
     * A stage that comes first.
     *
     * @param stage what it leaves for the recipe that uses it
     * @param worked how it is made
     */
    public record WorkedStage(Plan.StagePlan stage, WorkedPlan worked) {}
}
