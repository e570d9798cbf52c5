package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;

/**
 * The bottles that lines are poured from, in place of what their recipe says of them, by the name of the line.
 *
 * <p>Where there are several, any of them may be all that goes in: each is looked at, and of what they bring the most adverse counts.
 */
public final class Drawn {
    /** Every line is what its recipe says. */
    public static final Drawn NONE = new Drawn(Map.of());

    private final Map<String, List<Resolved>> bottles = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

    /**
     * Takes bottles.
     *
     * @param bottles by the name of the line, at least one for each
     */
    public Drawn(Map<String, List<Resolved>> bottles) {
        bottles.forEach((line, each) -> this.bottles.put(line, List.copyOf(each)));
    }

    /**
     * Which of several bottles of a line something is of.
     *
     * @param line the place of the line
     * @param number from 1
     * @param of how many there are
     */
    record Bottle(String line, int number, int of) {
        /** Returns one of them, or null where it is the only one. */
        static @Nullable Bottle of(String line, int index, int of) {
            return of == 1 ? null : new Bottle(line, index + 1, of);
        }
    }

    /** Returns a line as each of its bottles is; what a stage makes is poured from none. */
    List<PlannedLine> of(PlannedLine line) {
        if (line.ingredient().ingredient().from() != null) {
            return List.of(line);
        }
        return bottles.getOrDefault(line.name(), List.of(line.ingredient())).stream()
                .map(bottle -> new PlannedLine(line.line(), bottle, line.grams()))
                .toList();
    }

    /** Returns a plan with every bottle as a line of its own, as if it were all that goes in; the liquid stays. */
    Plan of(Plan plan) {
        if (bottles.isEmpty()) {
            return plan;
        }
        List<PlannedLine> lines = new ArrayList<>();
        plan.lines().forEach(line -> lines.addAll(of(line)));
        List<Plan.StagePlan> stages = plan.stages().stream()
                .map(stage -> new Plan.StagePlan(
                        stage.ingredient(), of(stage.plan()), stage.yieldGrams(), stage.yieldMillilitres()))
                .toList();
        return new Plan(
                plan.recipe(), lines, plan.liquid(), plan.millilitres(), plan.reached(), stages, plan.findings());
    }
}
