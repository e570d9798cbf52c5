package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;

/**
 * A line of a recipe or of one of its stages that is made of no recipe itself.
 *
 * @param where the place, such as "line 3, orange tincture" or "line 2, bay tincture: bay leaf"
 * @param grams how much of it goes into the whole batch: least where what a stage loses takes its share along, most where it takes nothing
 * @param within lines that take of the stages it stands in, the outermost first
 */
record Leaf(PlannedLine line, String where, Range grams, List<Leaf> within) {
    Leaf {
        within = List.copyOf(within);
    }

    /** Returns those of a plan that take anything, stages and all. */
    static List<Leaf> of(Plan plan) {
        List<Leaf> leaves = new ArrayList<>();
        add(leaves, plan, new Range(1.0, 1.0), "", List.of());
        return leaves;
    }

    private static void add(List<Leaf> leaves, Plan plan, Range part, String from, List<Leaf> within) {
        for (int i = 0; i < plan.lines().size(); i++) {
            PlannedLine line = plan.lines().get(i);
            if (line.grams() > 0.0) {
                String where = from.isEmpty() ? "line " + (i + 1) + ", " + line.name() : from + ": " + line.name();
                Plan.@Nullable StagePlan stage = stage(plan, line);
                Leaf leaf = new Leaf(line, where, part.times(line.grams()), within);
                if (stage == null) {
                    leaves.add(leaf);
                } else {
                    List<Leaf> inner = new ArrayList<>(within);
                    inner.add(leaf);
                    add(leaves, stage.plan(), part.times(share(stage, line.grams())), where, inner);
                }
            }
        }
    }

    private static Plan.@Nullable StagePlan stage(Plan plan, PlannedLine line) {
        if (line.ingredient().ingredient().from() == null) {
            return null;
        }
        return plan.stages().stream()
                .filter(stage -> stage.ingredient().equals(line.name()))
                .findFirst()
                .orElse(null);
    }

    /** Returns how much of a stage goes in by all lines that take of it, part of the whole. */
    static Range drawn(Plan plan, Plan.StagePlan stage) {
        double grams = plan.lines().stream()
                .filter(line -> line.name().equals(stage.ingredient()))
                .mapToDouble(PlannedLine::grams)
                .sum();
        return share(stage, grams);
    }

    private static Range share(Plan.StagePlan stage, double grams) {
        double before = stage.plan().liquid().total();
        return before > 0.0 && stage.yieldGrams() > 0.0
                ? new Range(grams / Math.max(before, stage.yieldGrams()), grams / Math.min(before, stage.yieldGrams()))
                : Range.NOTHING;
    }
}
