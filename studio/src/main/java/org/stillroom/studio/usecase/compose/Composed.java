package org.stillroom.studio.usecase.compose;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.studio.recipefile.FormReading;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.usecase.WorkedPlan;

/**
 * What came of a form.
 *
 * @param form as it was typed
 * @param reading what was understood of it, and what is wrong at which field
 * @param making the recipe with its stages, or null as long as something is not understood or found
 * @param worked the plan, or null as long as there is none
 * @param problems why there is none, though every field was understood
 * @param steps by which the figures of the finished liquid came about
 */
public record Composed(
        RecipeForm form,
        FormReading reading,
        @Nullable Making making,
        @Nullable WorkedPlan worked,
        List<Finding> problems,
        List<Workings.Step> steps) {
    public Composed {
        problems = List.copyOf(problems);
        steps = List.copyOf(steps);
    }

    /** Returns the plan of the line at a place of the form, or null when nothing is planned for it. */
    public @Nullable PlannedLine planned(int index) {
        int at = place(index);
        return worked == null || at < 0 ? null : worked.plan().lines().get(at);
    }

    /** Returns the line at a place of the form as it is measured out, or null. */
    public @Nullable MeasuredLine measured(int index) {
        int at = place(index);
        return worked == null || at < 0 ? null : worked.measured().lines().get(at);
    }

    /** Returns which line of the plan a line of the form is, or −1: lines that are still empty are not part of the plan. */
    public int place(int index) {
        return form.filled("lines").indexOf(index);
    }

    /** Returns everything to know that is not said at a field. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(problems);
        reading.problems().stream()
                .filter(at -> at.field().isEmpty())
                .map(FormReading.At::finding)
                .forEach(all::add);
        if (worked != null) {
            all.addAll(worked.findings());
        }
        return all;
    }
}
