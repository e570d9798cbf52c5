package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Safety;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.usecase.WorkedPlan;

/**
 * A plan with what else was wished for.
 *
 * @param worked the plan
 * @param notes what was taken for granted in reading the recipe
 * @param exploration the plan with spirits of other strengths, or null when it was not wished for
 * @param shopping what to buy, or null when it was not wished for
 */
public record PlanTold(
        WorkedPlan worked,
        List<Finding> notes,
        @Nullable Exploration exploration,
        @Nullable ShoppingList shopping) {
    public PlanTold {
        notes = List.copyOf(notes);
    }

    /** Returns all of it for scripts. */
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
        return fields.put("findings", FindingFields.of(findings)).put("standing", Safety.STANDING);
    }
}
