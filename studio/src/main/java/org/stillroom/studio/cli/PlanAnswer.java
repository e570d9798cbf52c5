package org.stillroom.studio.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.PlanTold;
import org.stillroom.studio.usecase.WorkedPlan;

/** A plan for scripts; {@link PlanPage} is the same for a person. */
record PlanAnswer(PlanTold told, Units units) implements Answer {
    @Override
    public Exit exit() {
        return worked().isStopped() ? Exit.OUT_OF_REACH : Exit.DONE;
    }

    @Override
    public void print(Page page) {
        new PlanPage(this, page).print();
    }

    @Override
    public Fields fields() {
        return told.fields();
    }

    WorkedPlan worked() {
        return told.worked();
    }

    List<Finding> notes() {
        return told.notes();
    }

    @Nullable
    Exploration exploration() {
        return told.exploration();
    }

    @Nullable
    ShoppingList shopping() {
        return told.shopping();
    }
}
