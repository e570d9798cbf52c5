package org.stillroom.planner.explore;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.reference.Finding;

/**
 * A recipe planned with spirits of several strengths.
 *
 * @param changed names of the ingredients that took each strength; empty when the recipe has no spirit to change
 * @param rows one for each strength, in the order asked
 */
public record Exploration(List<String> changed, List<Row> rows) {
    public Exploration {
        changed = List.copyOf(changed);
        rows = List.copyOf(rows);
    }

    /**
     * What comes of one strength.
     *
     * @param strength of the spirits, % vol at 20 °C
     * @param reached whether everything asked for is met
     * @param lines amounts that reach the target or come nearest, in the recipe's order; empty when the recipe was refused
     * @param result the finished liquid at 20 °C, or null when the recipe was refused
     * @param findings what the plan says, among them why the target is not reached
     */
    public record Row(
            AlcoholByVolume strength,
            boolean reached,
            List<PlannedLine> lines,
            @Nullable Essentials result,
            List<Finding> findings) {
        public Row {
            lines = List.copyOf(lines);
            findings = List.copyOf(findings);
        }
    }
}
