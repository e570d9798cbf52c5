package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.SugarBasis;

/**
 * A recipe in bare numbers: all that its amounts depend on, and nothing else.
 *
 * <p>It can be asked again for another strength, sugar or volume, and answers as {@link Planner} does, without words. It is made of
 * numbers alone, so it can be written down, read by the same code in a browser, and answered there while a hand moves.
 */
public final class Sketch {
    private final List<Line> lines;
    private final SugarBasis sugarBasis;
    private final boolean withoutAim;
    private final Problem problem;

    /**
     * One line in numbers: its grams are {@code fixed + dose·V + y} with {@code 0 ≤ y ≤ room}, V being the millilitres of the finished
     * liquid at 20 °C.
     *
     * @param perGram what a gram of it brings
     * @param fixed grams taken in any case
     * @param dose grams taken in any case for each millilitre of finished liquid
     * @param room further grams that may be taken; infinite when there is no limit
     * @param cost what a gram costs, in the measure of the aim
     * @param gramsPerMillilitre its density at 20 °C; empty when it is weighed as a solid
     */
    public record Line(
            Contents perGram, double fixed, double dose, double room, double cost, OptionalDouble gramsPerMillilitre) {
        /** Returns whether its amount is to be found. */
        public boolean canVary() {
            return room > 0.0;
        }

        /** Returns the volume of so many grams of it at 20 °C, mL; empty when it is weighed as a solid. */
        public OptionalDouble millilitres(double grams) {
            return gramsPerMillilitre.isPresent()
                    ? OptionalDouble.of(grams / gramsPerMillilitre.getAsDouble())
                    : gramsPerMillilitre;
        }
    }

    /**
     * What comes of asking.
     *
     * @param grams of each line
     * @param liquid what is in the finished liquid
     * @param millilitres its volume at 20 °C
     * @param reached whether everything asked for is met; else it is the nearest that can be reached
     */
    public record Answer(List<Double> grams, Contents liquid, double millilitres, boolean reached) {
        public Answer {
            grams = List.copyOf(grams);
        }
    }

    /**
     * Takes a recipe as it was written down.
     *
     * @param asked what is asked; what is absent is open
     * @param sugarBasis what the asked sugar counts
     * @param withoutAim whether the maker named no aim, so that a range is aimed at its middle
     */
    public Sketch(List<Line> lines, Map<Asked, Span> asked, SugarBasis sugarBasis, boolean withoutAim) {
        this(lines, new Problem(numbers(lines), copy(asked), Problem.weights(sugarBasis)), sugarBasis, withoutAim);
    }

    private Sketch(List<Line> lines, Problem problem, SugarBasis sugarBasis, boolean withoutAim) {
        this.lines = List.copyOf(lines);
        this.sugarBasis = sugarBasis;
        this.withoutAim = withoutAim;
        this.problem = problem;
    }

    private static Map<Asked, Span> copy(Map<Asked, Span> asked) {
        Map<Asked, Span> copy = new EnumMap<>(Asked.class);
        copy.putAll(asked);
        return copy;
    }

    private static Problem.Line[] numbers(List<Line> lines) {
        return lines.stream()
                .map(line -> new Problem.Line(line.perGram.toGrams(), line.fixed, line.dose, line.room, 0.0, line.cost))
                .toArray(Problem.Line[]::new);
    }

    /** Returns the numbers that a plan came from. */
    public static Sketch of(Plan plan) {
        Map<String, Plan.StagePlan> stages = new HashMap<>();
        plan.stages().forEach(stage -> stages.put(stage.ingredient(), stage));
        Balances balances = new Balances(plan.recipe(), new Pantry(plan.recipe(), stages));
        Problem problem = Objects.requireNonNull(balances.problem(), "what has been planned can be planned again");
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < problem.lines().length; i++) {
            lines.add(line(problem.lines()[i], balances.ingredients().get(i)));
        }
        return new Sketch(
                lines,
                problem,
                plan.recipe().target().sugarBasis(),
                plan.recipe().aim() == null);
    }

    private static Line line(Problem.Line line, Resolved ingredient) {
        OptionalDouble density = ingredient.solid() ? OptionalDouble.empty() : ingredient.gramsPerMillilitre();
        return new Line(ingredient.perGram(), line.fixed(), line.dose(), line.room(), line.cost(), density);
    }

    public List<Line> lines() {
        return lines;
    }

    /** Returns what is asked, in the unit of {@link Asked}; what is absent is open. */
    public Map<Asked, Span> asked() {
        return Collections.unmodifiableMap(problem.asked());
    }

    public SugarBasis sugarBasis() {
        return sugarBasis;
    }

    /** Returns whether the maker named no aim, so that a range is aimed at its middle. */
    public boolean withoutAim() {
        return withoutAim;
    }

    Problem problem() {
        return problem;
    }

    /** Returns the recipe asking something else of one figure. */
    public Sketch asking(Asked what, Span span) {
        return new Sketch(lines, problem.asking(what, span), sugarBasis, withoutAim);
    }

    /**
     * Returns the amounts that land on what is asked, or come nearest to it.
     *
     * @throws ArithmeticException when the volume does not settle, or the cost has no least
     */
    public Answer answer() {
        Solution solution = Solver.best(problem, withoutAim);
        if (solution.reached()) {
            return answer(solution, true);
        }
        Solution nearest = new WaysOut(problem).nearest();
        return answer(nearest, problem.isMetWithinDoubt(nearest));
    }

    /**
     * Returns the amounts that come nearest to what is asked without giving way in the volume; where the volume itself cannot be made,
     * as {@link #answer}.
     *
     * @throws ArithmeticException when the volume does not settle, or the cost has no least
     */
    public Answer nearestKeepingVolume() {
        Solution kept = new WaysOut(problem).nearestKeepingVolume();
        return problem.leavingOpenComposition().isMetWithinDoubt(kept)
                ? answer(kept, problem.isMetWithinDoubt(kept))
                : answer();
    }

    private Answer answer(Solution solution, boolean reached) {
        List<Double> grams = new ArrayList<>();
        Contents liquid = Contents.NONE;
        for (int i = 0; i < lines.size(); i++) {
            grams.add(solution.grams()[i]);
            liquid = liquid.plus(lines.get(i).perGram.times(solution.grams()[i]));
        }
        return new Answer(grams, liquid, solution.millilitres(), reached);
    }
}
