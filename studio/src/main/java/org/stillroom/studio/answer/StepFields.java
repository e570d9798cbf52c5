package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.reference.Workings;

/** The steps of a computation as fields. */
public final class StepFields {
    private StepFields() {}

    /** Returns each step of a computation with its unit and source. */
    public static List<Fields> of(List<Workings.Step> steps) {
        List<Fields> all = new ArrayList<>();
        for (Workings.Step step : steps) {
            all.add(new Fields()
                    .put("what", step.what())
                    .put("value", step.value())
                    .put("unit", step.unit())
                    .put("source", step.source().title())
                    .put("status", step.source().standing().label()));
        }
        return all;
    }
}
