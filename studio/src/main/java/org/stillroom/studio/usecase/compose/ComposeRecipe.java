package org.stillroom.studio.usecase.compose;

import java.util.List;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.recipefile.FormReading;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;

/** Works out a recipe as it stands in a form. */
public final class ComposeRecipe {
    private final StageShelf stages;
    private final OunceMeaning ounce;
    private final Grounds grounds;

    /**
     * Makes it for a studio.
     *
     * @param stages where recipes that a recipe takes "from" are found
     * @param ounce what "oz" means where a recipe does not say
     * @param grounds what drinks are judged on
     */
    public ComposeRecipe(StageShelf stages, OunceMeaning ounce, Grounds grounds) {
        this.stages = stages;
        this.ounce = ounce;
        this.grounds = grounds;
    }

    /** Returns what comes of a form, however far it has come. */
    public Composed answer(RecipeForm form) {
        FormReading reading = form.read(ounce);
        if (reading.recipe() == null) {
            return new Composed(form, reading, null, null, List.of(), List.of());
        }
        StageShelf.Found found = stages.making(reading.recipe());
        if (found.making() == null) {
            return new Composed(form, reading, null, null, found.problems(), List.of());
        }
        return planned(form, reading, found.making());
    }

    private Composed planned(RecipeForm form, FormReading reading, Making making) {
        Workings.Written workings = new Workings.Written();
        PlanRecipe.Outcome outcome = PlanRecipe.answer(making, null, grounds, workings);
        if (outcome instanceof PlanRecipe.Outcome.Refused refused) {
            return new Composed(form, reading, making, null, refused.problems(), List.of());
        }
        WorkedPlan worked = ((PlanRecipe.Outcome.Worked) outcome).plan();
        return new Composed(form, reading, making, worked, List.of(), workings.steps());
    }
}
