package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.FindingFields;
import org.stillroom.studio.answer.PlanFields;
import org.stillroom.studio.usecase.WorkedPlan;

/** A plan for scripts; {@link PlanPage} is the same for a person. */
record PlanAnswer(
        WorkedPlan worked,
        List<Finding> notes,
        Units units,
        @Nullable Exploration exploration,
        @Nullable ShoppingList shopping)
        implements Answer {

    @Override
    public Exit exit() {
        return worked.plan().reached() ? Exit.DONE : Exit.OUT_OF_REACH;
    }

    @Override
    public void print(Page page) {
        new PlanPage(this, page).print();
    }

    @Override
    public Fields fields() {
        Fields fields = PlanFields.of(worked);
        if (exploration != null) {
            fields.put("what_if_spirit", PlanFields.exploration(exploration));
        }
        if (shopping != null) {
            fields.put("shopping", PlanFields.shopping(shopping));
        }
        List<Finding> findings = new ArrayList<>(notes);
        findings.addAll(worked.findings());
        return fields.put("findings", FindingFields.of(findings));
    }
}
