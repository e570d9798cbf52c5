package org.stillroom.planner.marks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.reference.Finding;

/**
 * A plan as it is measured out.
 *
 * @param plan the exact plan
 * @param lines each line as it is measured, in the recipe's order
 * @param exact the finished liquid of the exact plan, at 20 °C
 * @param result the finished liquid of the amounts as measured, at 20 °C
 * @param effect what rounding did
 * @param findings what the maker should know about measuring
 */
public record Measured(
        Plan plan,
        List<MeasuredLine> lines,
        Essentials exact,
        Essentials result,
        RoundingEffect effect,
        List<Finding> findings) {
    public Measured {
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
    }

    /**
     * What a scale shows that is not set to zero between lines.
     *
     * @param line index of the line that was just added
     * @param added grams of it
     * @param total grams in the vessel then
     */
    public record RunningTotal(int line, double added, double total) {}

    /** Returns what is in the finished liquid of the amounts as measured, with what is known of its oils. */
    public Contents liquid() {
        Contents liquid = Contents.NONE;
        for (MeasuredLine line : lines) {
            liquid = liquid.plus(line.exact().ingredient().perGram().times(line.grams()));
        }
        return liquid;
    }

    /** Returns the running total in the recipe's order. */
    public List<RunningTotal> runningTotal() {
        return runningTotal(IntStream.range(0, lines.size()).boxed().toList());
    }

    /**
     * Returns the running total in an order of mixing.
     *
     * @param order indices of the lines; each at most once
     */
    public List<RunningTotal> runningTotal(List<Integer> order) {
        if (new HashSet<>(order).size() < order.size()) {
            throw new IllegalArgumentException("a line goes in once, and this order names one twice: " + order);
        }
        List<RunningTotal> totals = new ArrayList<>();
        double total = 0.0;
        for (int line : order) {
            total += lines.get(line).grams();
            totals.add(new RunningTotal(line, lines.get(line).grams(), total));
        }
        return totals;
    }
}
