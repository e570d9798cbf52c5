package org.stillroom.studio.cli;

import java.nio.file.Path;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.usecase.OpenRecipe;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;

/** A recipe file that a command was given. */
final class RecipeArgument {
    private RecipeArgument() {}

    /**
     * Opens it with all that it takes from.
     *
     * @throws Refusal when it is not there or not understood
     */
    static OpenRecipe.Outcome.Opened open(Path file) {
        OpenRecipe.Outcome outcome = OpenRecipe.at(file);
        if (outcome instanceof OpenRecipe.Outcome.NotFound none) {
            throw new Refusal(Exit.NOT_FOUND, none.problems());
        }
        if (outcome instanceof OpenRecipe.Outcome.Refused refused) {
            throw new Refusal(Exit.WRONG_INPUT, refused.problems());
        }
        return (OpenRecipe.Outcome.Opened) outcome;
    }

    /**
     * Opens it and works it out.
     *
     * @throws Refusal when it is not there, not understood, or asks for what cannot be
     */
    static WorkedPlan worked(Path file, Workings workings) {
        return worked(file, Grounds.SHIPPED, workings);
    }

    /**
     * Opens it, works it out and judges it.
     *
     * @throws Refusal when it is not there, not understood, or asks for what cannot be
     */
    static WorkedPlan worked(Path file, Grounds grounds, Workings workings) {
        PlanRecipe.Outcome plan = PlanRecipe.answer(PlanRecipe.making(open(file).recipe()), null, grounds, workings);
        if (plan instanceof PlanRecipe.Outcome.Refused refused) {
            throw new Refusal(Exit.WRONG_INPUT, refused.problems());
        }
        return ((PlanRecipe.Outcome.Worked) plan).plan();
    }
}
