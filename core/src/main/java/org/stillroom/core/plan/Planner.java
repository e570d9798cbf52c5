package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Aim;
import org.stillroom.core.recipe.Loss;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * Plans a recipe: finds the amounts that land on its target, or comes nearest and says why and what would help.
 *
 * <p>Stages are planned first, since what they leave is what the recipe may use. The answer is judged by the forward model:
 * residual below 1e-9 of what was asked. Method: docs/how-it-works/plan.md.
 */
public final class Planner {
    private Planner() {}

    /** Returns the plan, or everything that keeps the recipe from being planned. */
    public static Planning plan(Making making) {
        List<Finding> problems = new ArrayList<>();
        Map<String, Plan.StagePlan> stages = new HashMap<>();
        List<Plan.StagePlan> inOrder = new ArrayList<>();
        for (Ingredient ingredient : making.recipe().ingredients()) {
            Making stage = ingredient.from() == null ? null : making.stages().get(ingredient.from());
            if (stage != null) {
                planStage(ingredient, stage, stages, inOrder, problems);
            }
        }
        return problems.isEmpty() ? planRecipe(making.recipe(), stages, inOrder) : new Planning.Refused(problems);
    }

    private static void planStage(
            Ingredient ingredient,
            Making stage,
            Map<String, Plan.StagePlan> stages,
            List<Plan.StagePlan> inOrder,
            List<Finding> problems) {
        Planning planning = plan(stage);
        if (planning instanceof Planning.Refused refused) {
            problems.addAll(refused.problems());
            return;
        }
        Plan plan = ((Planning.Planned) planning).plan();
        if (!plan.reached()) {
            problems.addAll(plan.findings());
            return;
        }
        Plan.StagePlan done = leaving(ingredient.name(), plan);
        if (done.yieldGrams() == 0.0) {
            problems.add(Finding.of(
                    "stage-leaves-nothing",
                    Severity.STOP,
                    stage.recipe().title(),
                    "nothing left",
                    "The loss of " + stage.recipe().title() + " is more than all that it makes.",
                    "Make more of it, or correct its loss."));
            return;
        }
        stages.put(ingredient.name(), done);
        inOrder.add(done);
    }

    /** Returns what a stage leaves after the loss that its recipe reckons with; nothing when the loss is more than all. */
    public static Plan.StagePlan leaving(String ingredient, Plan plan) {
        double total = plan.liquid().total();
        double left = Math.max(0.0, total - lostGrams(plan));
        return new Plan.StagePlan(ingredient, plan, left, plan.millilitres() * left / total);
    }

    /**
     * Returns the plan of a recipe whose stages are made, or planned, already.
     *
     * @param stages what they leave
     */
    public static Planning withStages(Recipe recipe, List<Plan.StagePlan> stages) {
        Map<String, Plan.StagePlan> byIngredient = new HashMap<>();
        stages.forEach(stage -> byIngredient.put(stage.ingredient(), stage));
        return planRecipe(recipe, byIngredient, stages);
    }

    private static double lostGrams(Plan plan) {
        Loss loss = plan.recipe().loss() == null ? null : plan.recipe().loss().value();
        if (loss == null) {
            return 0.0;
        }
        double gramsPerMillilitre = plan.liquid().total() / plan.millilitres();
        if (loss instanceof Loss.Part part) {
            return part.fraction() * plan.liquid().total();
        }
        if (loss instanceof Loss.HeldByMarc held) {
            return held.millilitresPerGram() * plantGrams(plan) * gramsPerMillilitre;
        }
        Amount amount = ((Loss.Fixed) loss).amount();
        return amount instanceof Mass mass ? mass.grams() : ((Volume) amount).millilitres() * gramsPerMillilitre;
    }

    private static double plantGrams(Plan plan) {
        double grams = 0.0;
        for (PlannedLine line : plan.lines()) {
            Kind kind = line.ingredient().kind();
            grams += kind == Kind.FRESH_PLANT || kind == Kind.DRIED_PLANT ? line.grams() : 0.0;
        }
        return grams;
    }

    private static Planning planRecipe(
            Recipe recipe, Map<String, Plan.StagePlan> stages, List<Plan.StagePlan> inOrder) {
        Pantry pantry = new Pantry(recipe, stages);
        Balances balances = new Balances(recipe, pantry);
        Problem problem = balances.problem();
        if (problem == null) {
            return new Planning.Refused(pantry.findings());
        }
        Solution solution;
        try {
            solution = Solver.best(problem, recipe.aim() == null);
        } catch (ArithmeticException noLeastCost) {
            return refuseBoundless(recipe, noLeastCost);
        }
        List<Finding> findings = new ArrayList<>(pantry.findings());
        boolean reached = true;
        if (!solution.reached()) {
            Shortfall shortfall = new Shortfall(recipe, problem, balances.ingredients());
            if (!shortfall.leavesLiquid()) {
                return new Planning.Refused(List.of(Shortfall.noLiquid()));
            }
            solution = shortfall.nearest();
            reached = shortfall.isWithinDoubt();
            findings.addAll(shortfall.findings());
        }
        Plan plan = assemble(recipe, balances.ingredients(), pantry, solution, reached, inOrder, findings);
        return new Planning.Planned(plan);
    }

    /** Using something up has no end where neither a volume nor what is at hand sets one; no other aim can be boundless. */
    private static Planning refuseBoundless(Recipe recipe, ArithmeticException why) {
        Aim aim = recipe.aim();
        if (aim == null || aim.what() != Aim.What.USE_UP) {
            throw why;
        }
        return new Planning.Refused(List.of(Finding.of(
                "use-up-how-much",
                Severity.STOP,
                "aim",
                "cannot be told",
                "As much " + String.join(" and ", aim.ingredients())
                        + " as can be is to be used up, and nothing says how much that is.",
                "Write at hand with " + String.join(" and ", aim.ingredients()) + ", or a volume under target.")));
    }

    private static Plan assemble(
            Recipe recipe,
            List<Resolved> ingredients,
            Pantry pantry,
            Solution solution,
            boolean reached,
            List<Plan.StagePlan> stages,
            List<Finding> findings) {
        List<PlannedLine> lines = new ArrayList<>();
        Contents liquid = Contents.NONE;
        for (int i = 0; i < ingredients.size(); i++) {
            double grams = solution.grams()[i];
            lines.add(new PlannedLine(recipe.lines().get(i), ingredients.get(i), grams));
            liquid = liquid.plus(ingredients.get(i).perGram().times(grams));
        }
        double millilitres = VolumeModel.atTwenty().millilitres(liquid.toGrams());
        findings.addAll(Remarks.on(recipe, lines, millilitres));
        findings.addAll(Remarks.onDoses(lines, pantry));
        findings.addAll(Remarks.onSharing(lines, pantry));
        findings.addAll(Slips.in(recipe, lines, millilitres));
        return new Plan(recipe, lines, liquid, millilitres, reached, stages, findings);
    }
}
