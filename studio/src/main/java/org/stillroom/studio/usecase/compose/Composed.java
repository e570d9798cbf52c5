package org.stillroom.studio.usecase.compose;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.recipefile.FormReading;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.usecase.WorkedPlan;

/**
 * What came of a form.
 *
 * @param form as it was typed
 * @param reading what was understood of it, and what is wrong at which field
 * @param worked the plan, or null as long as there is none
 * @param problems why there is none, though every field was understood
 * @param steps by which the figures of the finished liquid came about
 */
public record Composed(
        RecipeForm form,
        FormReading reading,
        @Nullable WorkedPlan worked,
        List<Finding> problems,
        List<Workings.Step> steps) {
    public Composed {
        problems = List.copyOf(problems);
        steps = List.copyOf(steps);
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
