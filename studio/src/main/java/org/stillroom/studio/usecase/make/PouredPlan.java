package org.stillroom.studio.usecase.make;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;

/** The plan of a make with the amounts that went in, so that what came of it can be judged as a drink. */
public final class PouredPlan {
    private PouredPlan() {}

    /**
     * Returns what went into the vessel of a make.
     *
     * @param state without problems
     */
    public static Plan of(MakeState state) {
        Plan planned = state.whole().planned();
        Map<Integer, Double> grams = new LinkedHashMap<>();
        for (MakeStep step : state.whole().steps()) {
            MakeStep.Pour pour = step.pour();
            if (pour != null && !step.entries().isEmpty()) {
                grams.merge(pour.line(), pour.grams(), Double::sum);
            }
        }
        List<PlannedLine> lines = grams.entrySet().stream()
                .map(each -> {
                    PlannedLine line = planned.lines().get(each.getKey());
                    return new PlannedLine(line.line(), line.ingredient(), each.getValue());
                })
                .toList();
        Contents liquid = Contents.NONE;
        for (PlannedLine line : lines) {
            liquid = liquid.plus(line.ingredient().perGram().times(line.grams()));
        }
        double millilitres = liquid.total() > 0.0 ? VolumeModel.atTwenty().millilitres(liquid.toGrams()) : 0.0;
        return new Plan(
                planned.recipe(), lines, liquid, millilitres, planned.reached(), planned.stages(), planned.findings());
    }
}
