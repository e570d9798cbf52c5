package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.LineAmount;

/**
 * Plans the rest of a making again after what was really poured, so that it still lands on its target.
 *
 * <p>What is in the vessel stays in it. The rest is an ordinary plan with those amounts fixed; where that misses, the composition is
 * held instead and the volume gives way: upwards, with more of everything, or downwards. Method: docs/how-it-works/making.md.
 */
public final class Replanning {
    private static final Set<Asked> COMPOSITION = Set.of(Asked.STRENGTH, Asked.SUGAR, Asked.ACIDITY);

    /** A volume that differs by less than this part is the same. */
    private static final double SAME = 1e-9;
    /** A volume that falls below this part of what was wanted is no way out. */
    private static final double NOTHING_LEFT = 1e-3;

    private final Plan plan;
    private final Sketch sketch;
    private final Map<Integer, Poured> poured;
    private final double goal;
    private final boolean goalAsked;

    private Replanning(Plan plan, @Nullable Double millilitres, Map<Integer, Poured> poured) {
        this.plan = plan;
        this.sketch = Sketch.of(plan);
        this.poured = poured;
        this.goal = millilitres == null ? plan.millilitres() : millilitres;
        this.goalAsked = millilitres != null || sketch.asked().containsKey(Asked.VOLUME);
    }

    /**
     * What there is of a line so far.
     *
     * @param grams in the vessel
     * @param done whether that was to be all of it; else more of it is still to follow
     */
    public record Poured(double grams, boolean done) {
        public Poured {
            if (!(grams >= 0.0 && grams < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("what was poured lies from 0 g upwards, not " + grams);
            }
        }
    }

    /**
     * Returns how the making can go on.
     *
     * @param plan what was planned before anything was poured
     * @param millilitres the volume to land on at 20 °C where the maker has chosen another since, or null for the plan's own
     * @param poured what there is so far, by index of the line
     */
    public static Replanned of(Plan plan, @Nullable Double millilitres, Map<Integer, Poured> poured) {
        return new Replanning(plan, millilitres, poured).replanned();
    }

    private Replanned replanned() {
        Problem held = sketch.problem();
        for (int i = 0; i < held.lines().length; i++) {
            held = held.withLine(i, heldLine(i, poured.get(i)));
        }
        Solution kept = kept(held);
        Way keeping = way(Way.Kind.KEEP_VOLUME, kept, true);
        if (keeping.isOnTarget()) {
            return new Replanned(keeping, null, null, List.of());
        }
        Solution more = more(true);
        Way less = keeping.reached() ? null : less(held);
        return new Replanned(
                keeping,
                more == null ? null : way(Way.Kind.MORE_OF_EVERYTHING, more, false),
                less,
                more == null ? wanting() : List.of());
    }

    /** Returns a line that keeps what is in and takes the rest as planned. */
    private Problem.Line heldLine(int index, @Nullable Poured in) {
        Problem.Line line = sketch.problem().lines()[index];
        if (in != null && in.done()) {
            return fixed(line, in.grams());
        }
        double least = in == null ? 0.0 : in.grams();
        if (line.canVary()) {
            return line.between(least, Math.max(least, line.room()));
        }
        if (isAll(index)) {
            return fixed(line, Math.max(least, line.fixed()));
        }
        return least > rate(index) * goal * (1.0 + SAME) ? fixed(line, least) : asPlanned(index);
    }

    /** Amounts that the maker wrote stay as they are, and follow the volume only where the maker has chosen another. */
    private Problem.Line asPlanned(int index) {
        Problem.Line line = sketch.problem().lines()[index];
        boolean asWritten = line.fixed() > 0.0 && Math.abs(goal - plan.millilitres()) <= SAME * goal;
        return asWritten ? fixed(line, plan.lines().get(index).grams()) : perMillilitre(line, rate(index));
    }

    private static Problem.Line perMillilitre(Problem.Line line, double grams) {
        return new Problem.Line(line.perGram(), 0.0, grams, 0.0, 0.0, line.cost());
    }

    private static Problem.Line fixed(Problem.Line line, double grams) {
        return new Problem.Line(line.perGram(), grams, 0.0, 0.0, 0.0, line.cost());
    }

    /** Returns the grams that a line of a given amount or dose takes for each millilitre of the finished liquid. */
    private double rate(int index) {
        return plan.lines().get(index).grams() / plan.millilitres();
    }

    private boolean isAll(int index) {
        return plan.lines().get(index).line().amount() instanceof LineAmount.All;
    }

    /** Aims at the plan's own figures, then at the ranges that were asked, then at the nearest for the volume. */
    private Solution kept(Problem held) {
        Problem exact = goalAsked ? asPlanned(held).asking(Asked.VOLUME, Span.exactly(goal)) : asPlanned(held);
        Solution solution = solved(exact, List.of(Set.of(Asked.values())));
        if (solution.reached()) {
            return solution;
        }
        if (held.asksForARange() && plan.reached()) {
            Solution inRange = solved(atGoal(held), List.of(Set.of(Asked.values())));
            if (inRange.reached()) {
                return inRange;
            }
        }
        return solved(exact, List.of(Set.of(Asked.VOLUME), COMPOSITION));
    }

    private Problem atGoal(Problem held) {
        boolean moved = Math.abs(goal - plan.millilitres()) > SAME * goal;
        return moved ? held.asking(Asked.VOLUME, Span.exactly(goal)) : held;
    }

    private Span aim(Asked asked, Solution planned) {
        Span span = Objects.requireNonNull(sketch.asked().get(asked));
        if (asked == Asked.VOLUME) {
            return Span.exactly(goal);
        }
        boolean asWritten = span.isExact() && plan.reached();
        return asWritten ? span : Span.exactly(Math.max(0.0, sketch.problem().figure(asked, planned)));
    }

    /** Returns the problem asking for just what is written, for ranges and what was out of reach just what the plan comes to. */
    private Problem asPlanned(Problem problem) {
        Solution planned = planned();
        Problem asking = problem;
        for (Asked asked : problem.asked().keySet()) {
            asking = asking.asking(asked, aim(asked, planned));
        }
        return asking;
    }

    private Solution planned() {
        double[] grams = plan.lines().stream().mapToDouble(PlannedLine::grams).toArray();
        return new Solution(grams, plan.millilitres(), 0.0);
    }

    /** Where the volume does not settle, what is in stays and the rest is taken as planned. */
    private Solution solved(Problem problem, List<Set<Asked>> order) {
        try {
            return Solver.solve(problem, order);
        } catch (ArithmeticException doesNotSettle) {
            double[] grams = planned().grams();
            poured.forEach((line, in) -> grams[line] = in.done() ? in.grams() : Math.max(in.grams(), grams[line]));
            return new Solution(grams, goal, Double.POSITIVE_INFINITY);
        }
    }

    /**
     * Returns the least volume, not below the goal, in which everything keeps its proportion to the volume, what is in may be topped
     * up, and the composition holds; null when there is none.
     */
    private @Nullable Solution more(boolean withinAtHand) {
        double least = goal;
        Problem growing = asPlanned(sketch.problem());
        for (int i = 0; i < growing.lines().length; i++) {
            Poured in = poured.get(i);
            double grams = in == null ? 0.0 : in.grams();
            Problem.Line line = growing.lines()[i];
            if (line.canVary()) {
                double most = withinAtHand ? Math.max(grams, line.room()) : Double.POSITIVE_INFINITY;
                growing = growing.withLine(i, line.between(grams, most));
            } else if (isAll(i) || rate(i) == 0.0) {
                growing = growing.withLine(i, fixed(line, Math.max(grams, line.fixed())));
            } else {
                least = Math.max(least, grams / rate(i));
                growing = growing.withLine(i, perMillilitre(line, rate(i)));
            }
        }
        return holding(growing.asking(Asked.VOLUME, Span.exactly(least)), least);
    }

    /** Returns the volume nearest above the one asked at which the composition holds, or null. */
    private static @Nullable Solution holding(Problem problem, double least) {
        Solution solution = otherVolume(problem);
        return solution == null || solution.millilitres() < least * (1.0 - SAME) ? null : solution;
    }

    private static @Nullable Solution otherVolume(Problem problem) {
        try {
            Solution solution = Solver.solve(problem, List.of(COMPOSITION, Set.of(Asked.VOLUME)));
            double millilitres = solution.millilitres();
            Span around = new Span(millilitres * (1.0 - SAME), millilitres * (1.0 + SAME));
            boolean holds = millilitres > 0.0
                    && Solver.solve(problem.asking(Asked.VOLUME, around)).reached();
            return holds ? solution : null;
        } catch (ArithmeticException doesNotSettle) {
            return null;
        }
    }

    /** Returns the way that adds nothing to what is in and holds the composition in less of the liquid, or null. */
    private @Nullable Way less(Problem held) {
        Problem asking = asPlanned(held).asking(Asked.VOLUME, Span.exactly(goal));
        Solution solution = otherVolume(asking);
        boolean isLess = solution != null
                && solution.millilitres() < goal * (1.0 - NOTHING_LEFT)
                && solution.millilitres() > NOTHING_LEFT * goal;
        return isLess ? way(Way.Kind.LESS_OF_EVERYTHING, Objects.requireNonNull(solution), false) : null;
    }

    /** Returns what more of everything would take beyond what is at hand. */
    private List<Replanned.Wanting> wanting() {
        Solution unlimited = more(false);
        if (unlimited == null) {
            return List.of();
        }
        List<Replanned.Wanting> wanting = new ArrayList<>();
        for (int i = 0; i < sketch.problem().lines().length; i++) {
            Problem.Line line = sketch.problem().lines()[i];
            double grams = unlimited.grams()[i];
            if (line.canVary() && Remarks.exceeds(grams, line.room())) {
                wanting.add(new Replanned.Wanting(i, grams, line.room()));
            }
        }
        return wanting;
    }

    private Way way(Way.Kind kind, Solution solution, boolean keepsWhatIsIn) {
        return new Onward(plan, sketch.problem(), poured, goal).way(kind, solution, keepsWhatIsIn);
    }
}
