package org.stillroom.core.plan;

import java.util.List;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;

/**
 * Amounts that land on a recipe's target, or come nearest to it, and what to know about them.
 *
 * @param recipe what was asked for
 * @param lines how much of what, in the recipe's order
 * @param liquid what is in the finished liquid, before any loss
 * @param millilitres its volume at 20 °C, mL
 * @param reached whether everything asked for is met
 * @param stages plans of the recipes that ingredients come from, earliest first
 * @param findings what the maker should know
 */
public record Plan(
        Recipe recipe,
        List<PlannedLine> lines,
        Contents liquid,
        double millilitres,
        boolean reached,
        List<StagePlan> stages,
        List<Finding> findings) {
    public Plan {
        lines = List.copyOf(lines);
        stages = List.copyOf(stages);
        findings = List.copyOf(findings);
    }

    /**
     * A stage planned, and what it leaves for the recipe that uses it.
     *
     * @param ingredient name under which its result is used
     * @param plan how it is made
     * @param yieldGrams what is left of it after its loss, g
     * @param yieldMillilitres the same at 20 °C, mL
     */
    public record StagePlan(String ingredient, Plan plan, double yieldGrams, double yieldMillilitres) {}
}
