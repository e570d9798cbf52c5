package org.stillroom.studio.cli;

import java.nio.file.Path;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.PlanTold;
import org.stillroom.studio.answer.desk.PlanWishes;
import org.stillroom.studio.usecase.OpenRecipe;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;
import picocli.CommandLine.Mixin;

/** What a drink is judged on, as options: what is known of the lots, and rules of the house. */
final class GroundsOptions {
    @Mixin
    private LotsOptions lots = new LotsOptions();

    @Mixin
    private HouseRulesFile house = new HouseRulesFile();

    /**
     * Returns a recipe worked out and judged on what these options say.
     *
     * @throws Refusal when anything is not there or not understood
     */
    WorkedPlan worked(Path recipe, Workings workings) {
        return lots.worked(recipe, house::added, workings);
    }

    /**
     * Returns the plan of an opened recipe with what is wished for, judged on what these options say.
     *
     * @throws Refusal when anything is not there or not understood
     */
    PlanTold planned(OpenRecipe.Outcome.Opened opened, PlanWishes wishes, Workings workings) {
        PlanTold told = wishes.answer(
                PlanRecipe.making(opened.recipe()), opened.notes(), house.added(lots.grounds()), workings);
        lots.requireLinesOf(told.worked().plan());
        return told;
    }
}
