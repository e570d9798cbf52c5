package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.blend.Blend;
import org.stillroom.core.clarity.Doubts;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.mixing.AnalysedPlan;
import org.stillroom.core.mixing.PlanClarity;
import org.stillroom.core.plan.Bands;
import org.stillroom.core.plan.MixingOrder;
import org.stillroom.core.plan.MixingStep;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.plan.Spread;
import org.stillroom.core.plan.SpreadMemory;
import org.stillroom.core.plan.Taken;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.Rules;
import org.stillroom.core.safety.Safety;
import org.stillroom.planner.marks.Measured;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.planner.marks.Measuring;
import org.stillroom.studio.recipefile.StagedRecipe;

/** Works out a recipe: exact amounts, amounts for the instruments, figures, doubt, the order of mixing. */
public final class PlanRecipe {
    /** The same recipe gives the same doubt each time. */
    private static final long SEED = 20;
    /** More stages than the recipes have that are typed at once. */
    private static final SpreadMemory DRAWN = new SpreadMemory(100);

    private PlanRecipe() {}

    /** What comes of it. */
    public sealed interface Outcome {
        /** There is a plan to work from, whether or not it meets the target. */
        record Worked(WorkedPlan plan) implements Outcome {}

        /** The recipe does not say enough, or asks for what cannot be. */
        record Refused(List<Finding> problems) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    /** Returns the recipe and its stages as the planner takes them. */
    public static Making making(StagedRecipe staged) {
        Map<String, Making> stages = new HashMap<>();
        staged.sources().forEach((from, source) -> stages.put(from, making(source)));
        return new Making(staged.recipe(), stages);
    }

    /** Returns the recipe worked out and judged on what ships with the program. */
    public static Outcome answer(Making making, @Nullable Volume makes, Workings workings) {
        return answer(making, makes, Grounds.SHIPPED, workings);
    }

    /**
     * Returns the recipe worked out.
     *
     * @param makes the volume to make at 20 °C in place of the recipe's own, or null
     * @param grounds what it is judged on as a drink
     * @param workings takes the steps by which the figures of the finished liquid come about
     */
    public static Outcome answer(Making making, @Nullable Volume makes, Grounds grounds, Workings workings) {
        SizeRecipe.Outcome sized = SizeRecipe.answer(making, makes);
        return sized instanceof SizeRecipe.Outcome.Refused refused
                ? new Outcome.Refused(refused.problems())
                : answer(((SizeRecipe.Outcome.Sized) sized).making(), grounds, workings);
    }

    private static Outcome answer(Making making, Grounds grounds, Workings workings) {
        Planning planning = Planner.plan(making);
        if (planning instanceof Planning.Refused refused) {
            return new Outcome.Refused(refused.problems());
        }
        Plan plan = AnalysedPlan.of(((Planning.Planned) planning).plan(), grounds.analyses()::oil);
        return new Outcome.Worked(worked(plan, grounds, workings, Safety.ofPlan(plan, grounds)));
    }

    /** @param ofDrink what rules say of it as a drink; a stage is none */
    private static WorkedPlan worked(Plan plan, Grounds grounds, Workings workings, List<Finding> ofDrink) {
        Measured measured = Measuring.of(plan);
        Figures figures = Liquid.figures(plan.liquid(), Temperature.TWENTY_CELSIUS, workings);
        List<MixingStep> steps = MixingOrder.of(plan);
        List<Integer> order =
                steps.stream().flatMap(step -> step.lines().stream()).toList();
        Bands bands = DRAWN.of(plan, taken(measured), SEED, Spread.DRAWS);
        Blend blend = Blend.of(plan.lines().stream()
                .map(line -> line.ingredient().perGram().times(line.grams()))
                .toList());
        List<WorkedPlan.WorkedStage> stages = plan.stages().stream()
                .map(stage ->
                        new WorkedPlan.WorkedStage(stage, worked(stage.plan(), grounds, Workings.NONE, List.of())))
                .toList();
        List<Finding> findings = new ArrayList<>(plan.findings());
        findings.addAll(figures.findings());
        findings.addAll(measured.findings());
        findings.addAll(PlanClarity.findings(plan, doubts(measured, bands, grounds)));
        findings.addAll(ofDrink);
        findings.sort(Rules.GRAVEST_FIRST);
        return new WorkedPlan(
                plan, figures, measured, bands, blend, steps, measured.runningTotal(order), stages, grounds, findings);
    }

    /** Returns what is in doubt of the batch for the forecast of clouding: its strength, and what the measures leave open of its oils. */
    static Doubts doubts(Measured measured, Bands bands, Grounds grounds) {
        double oil = 0.0;
        double open = 0.0;
        for (MeasuredLine line : measured.lines()) {
            double perGram = line.exact().ingredient().perGram().grams(Substance.OIL);
            oil += perGram * line.grams();
            open += perGram * taken(line).halfWidth();
        }
        double strength = 0.5 * (bands.strength().high() - bands.strength().low());
        return new Doubts(
                Math.max(0.0, strength),
                oil > 0.0 ? Math.min(0.99, open / oil) : 0.0,
                PlanClarity.composition(measured.plan(), grounds.analyses()::oil)
                        .spans());
    }

    private static List<Taken> taken(Measured measured) {
        return measured.lines().stream().map(PlanRecipe::taken).toList();
    }

    /** Returns how far the amount of a line may be off, g; also where it is made up to a mark. */
    public static double gramsInDoubt(MeasuredLine line) {
        double half = taken(line).halfWidth();
        return isToTheMark(line)
                ? half * line.exact().ingredient().gramsPerMillilitre().orElse(1.0)
                : half;
    }

    /** Returns whether a line is poured until the vessel stands at a mark. */
    static boolean isToTheMark(MeasuredLine line) {
        return line.exact().line().amount() instanceof LineAmount.MakeUp;
    }

    static Taken taken(MeasuredLine line) {
        Resolved ingredient = line.exact().ingredient();
        if (isToTheMark(line)) {
            double perMillilitre = ingredient.gramsPerMillilitre().orElse(1.0);
            return new Taken(line.grams(), line.toleranceGrams() / perMillilitre);
        }
        double ofDensity = line.reading().isByVolume() ? line.grams() * ingredient.relativeDensityDoubt() : 0.0;
        return new Taken(line.grams(), line.toleranceGrams() + ofDensity);
    }
}
