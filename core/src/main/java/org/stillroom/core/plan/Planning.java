package org.stillroom.core.plan;

import java.util.List;
import org.stillroom.core.reference.Finding;

/** What comes of planning a recipe. */
public sealed interface Planning {
    /** There are amounts to work with; whether they meet the target, the plan says. */
    record Planned(Plan plan) implements Planning {}

    /** The recipe does not say enough, or asks for what cannot be; every such problem. */
    record Refused(List<Finding> problems) implements Planning {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
