package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.usecase.WorkedPlan;
import picocli.CommandLine.Mixin;

/** What is known of the lots that are poured, as options: what a studio keeps of them, and files of analyses. */
final class LotsOptions {
    @Mixin
    private StudioGrounds studio = new StudioGrounds();

    @Mixin
    private AnalysisFiles analyses = new AnalysisFiles();

    /**
     * Returns a recipe worked out on what these options say.
     *
     * @param more what it is judged on besides
     * @throws Refusal when anything is not there or not understood
     */
    WorkedPlan worked(Path recipe, UnaryOperator<Grounds> more, Workings workings) {
        WorkedPlan worked = RecipeArgument.worked(recipe, more.apply(grounds()), workings);
        requireLinesOf(worked.plan());
        return worked;
    }

    /** Refuses an analysis of what is in no line of a plan or of its stages. */
    void requireLinesOf(Plan plan) {
        analyses.requireLinesOf(plan);
    }

    /**
     * Returns what a drink is judged on by these options.
     *
     * @throws Refusal when anything is not there or not understood
     */
    Grounds grounds() {
        Grounds kept = studio.grounds();
        return kept.with(kept.analyses().and(analyses.read()));
    }
}
