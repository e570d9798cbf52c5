package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Span;

/**
 * Finds the amounts of a {@link Problem}.
 *
 * <p>All balances are linear in the grams and the volume; only the volume itself is not. Since it grows in proportion with the
 * grams, it is exactly the sum of the grams times their partial volumes, and with those held it is linear as well: one small
 * linear programme. Working out the partial volumes anew where that programme lands, and repeating, is Newton's method for the
 * one nonlinear equation.
 *
 * <p>Everything is counted per millilitre of a batch of the expected size, so that a thimble and a barrel meet the same numbers.
 */
final class Solver {
    /** A mixture in the middle of the triangle to take the first partial volumes from, g in the order of the substances. */
    private static final double[] FIRST_GUESS = firstGuess();

    private static final double CONVERGED = 1e-13;
    private static final int ROUNDS_BEFORE_KEEPING = 12;
    private static final int MOST_ROUNDS = 60;
    /** Below this a figure is not missed in proportion to itself: 1 % vol, 10 g/L, 1 g/L, in the order of {@link Asked}. */
    private static final double[] SMALL = {0.0, 1.0, 10.0, 1.0};

    private final Problem problem;
    private final List<Set<Asked>> order;
    private final double scale;
    private final int[] varying;
    private final double[][] figures;
    private final List<double[]> rows = new ArrayList<>();
    private final List<double[]> missing = new ArrayList<>();
    private int unknowns;

    /**
     * @param order which asked figures are least to be missed, most important first
     * @param scale millilitres of a batch of the expected size
     */
    private Solver(Problem problem, List<Set<Asked>> order, double scale) {
        this.problem = problem;
        this.order = order;
        this.scale = scale;
        this.varying = varying(problem.lines());
        this.figures = figures(problem);
        layOut();
    }

    /** Returns the amounts that fulfil the problem at the least cost, or that miss its figures least, taken together. */
    static Solution solve(Problem problem) {
        return solve(problem, List.of(Set.of(Asked.values())));
    }

    /** Returns the amounts that miss the asked figures least, those named first before those named later. */
    static Solution solve(Problem problem, List<Set<Asked>> order) {
        return new Solver(problem, order, expectedSize(problem)).solve();
    }

    private static double[] firstGuess() {
        double[] grams = new double[Substance.COUNT];
        grams[Substance.ETHANOL.ordinal()] = 0.25;
        grams[Substance.WATER.ordinal()] = 0.60;
        grams[Substance.SUCROSE.ordinal()] = 0.15;
        return grams;
    }

    private static double expectedSize(Problem problem) {
        Span volume = problem.asked().get(Asked.VOLUME);
        if (volume != null && volume.low() > 0.0) {
            return volume.low();
        }
        double fixed = 0.0;
        for (Problem.Line line : problem.lines()) {
            fixed += line.fixed();
        }
        return fixed > 0.0 ? fixed : 1000.0;
    }

    private static int[] varying(Problem.Line[] lines) {
        int[] found = new int[lines.length];
        int count = 0;
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].canVary()) {
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** Returns what a gram of each line adds to each asked figure times the volume. */
    private static double[][] figures(Problem problem) {
        double[][] figures = new double[Asked.values().length][problem.lines().length];
        for (Map.Entry<Asked, Span> each : problem.asked().entrySet()) {
            double[] weights = problem.weights().getOrDefault(each.getKey(), FIRST_GUESS);
            for (int i = 0; i < problem.lines().length; i++) {
                figures[each.getKey().ordinal()][i] = dot(weights, problem.lines()[i].perGram());
            }
        }
        return figures;
    }

    // Unknowns in this order: what each varying line takes beyond its fixed part, V, then slacks and misses as rows
    // need them.

    private int volumeColumn() {
        return varying.length;
    }

    private void layOut() {
        unknowns = varying.length + 1;
        for (int v = 0; v < varying.length; v++) {
            Problem.Line line = problem.lines()[varying[v]];
            if (line.room() < Double.POSITIVE_INFINITY) {
                rows.add(limit(line, v));
            }
        }
        for (Map.Entry<Asked, Span> each : problem.asked().entrySet()) {
            ask(each.getKey(), each.getValue());
        }
    }

    private double[] limit(Problem.Line line, int column) {
        double[] row = wide(line.room() / scale);
        row[column] = 1.0;
        row[volumeColumn()] = -line.roomPerMillilitre();
        row[unknowns++] = 1.0;
        return row;
    }

    private void ask(Asked what, Span span) {
        double reference =
                1.0 / Math.max(what == Asked.VOLUME ? 1.0 : Math.min(span.high(), 1e6), SMALL[what.ordinal()]);
        if (span.isExact()) {
            double[] row = balance(what, span.low());
            miss(row, what, 1.0, reference);
            miss(row, what, -1.0, reference);
            rows.add(row);
            return;
        }
        double[] least = balance(what, span.low());
        least[unknowns++] = -1.0;
        miss(least, what, 1.0, reference);
        rows.add(least);
        if (span.high() < Double.POSITIVE_INFINITY) {
            double[] most = balance(what, span.high());
            most[unknowns++] = 1.0;
            miss(most, what, -1.0, reference);
            rows.add(most);
        }
    }

    /** Returns the equation "figure × V = value × V", or "V = value" for the volume. */
    private double[] balance(Asked what, double value) {
        if (what == Asked.VOLUME) {
            double[] row = wide(value / scale);
            row[volumeColumn()] = 1.0;
            return row;
        }
        double[] perGram = figures[what.ordinal()];
        double ofV = -value;
        double fixed = 0.0;
        for (int i = 0; i < perGram.length; i++) {
            ofV += perGram[i] * problem.lines()[i].dose();
            fixed += perGram[i] * problem.lines()[i].fixed() / scale;
        }
        double[] row = wide(-fixed);
        for (int v = 0; v < varying.length; v++) {
            row[v] = perGram[varying[v]];
        }
        row[volumeColumn()] = ofV;
        return row;
    }

    /** Lets a row be missed; the miss is counted as a part of what was asked. */
    private void miss(double[] row, Asked what, double sign, double reference) {
        row[unknowns] = sign;
        missing.add(new double[] {unknowns, what.ordinal(), reference});
        unknowns++;
    }

    /** A row has its right side in its last place; it is wide enough for every unknown that may follow. */
    private double[] wide(double rightSide) {
        int most = varying.length + 1 + varying.length + 6 * Asked.values().length;
        double[] row = new double[most + 1];
        row[most] = rightSide;
        return row;
    }

    /**
     * Rounds of Newton's method, each a linear programme. Where two corners cost nearly the same the programme may swing between
     * them for ever; then each of the two is kept by itself, and the better one is the answer.
     */
    private Solution solve() {
        double[][] costs = costs();
        boolean[] everything = new boolean[unknowns];
        Arrays.fill(everything, true);
        Newton free = new Newton(costs, everything, FIRST_GUESS);
        if (free.settles(ROUNDS_BEFORE_KEEPING)) {
            return free.solution;
        }
        Newton one = new Newton(costs, free.support, free.grams());
        Newton other = new Newton(costs, free.supportBefore, free.grams());
        boolean oneSettles = one.settles(MOST_ROUNDS);
        boolean otherSettles = other.settles(MOST_ROUNDS);
        if (!oneSettles && !otherSettles) {
            throw new ArithmeticException("the plan does not settle: the volume still moves by " + one.off + " mL");
        }
        return !otherSettles || (oneSettles && one.isNoWorseThan(other)) ? one.solution : other.solution;
    }

    /** One course of Newton's method over the unknowns that are allowed to differ from zero. */
    private final class Newton {
        private final double[][] costs;
        private final boolean[] allowed;
        private final double[] partial = new double[Substance.COUNT];
        private Solution solution;
        private boolean[] support;
        private boolean[] supportBefore;
        private double cost;
        private double off = Double.POSITIVE_INFINITY;

        Newton(double[][] costs, boolean[] allowed, double[] near) {
            this.costs = costs;
            this.allowed = allowed;
            this.support = allowed;
            this.supportBefore = allowed;
            this.solution = new Solution(new double[problem.lines().length], 0.0, Double.POSITIVE_INFINITY);
            VolumeModel.partialVolumes(near, partial);
        }

        boolean settles(int mostRounds) {
            for (int round = 0; round < mostRounds; round++) {
                step();
                double volume = VolumeModel.partialVolumes(grams(), partial);
                double change = Math.abs(volume - solution.millilitres());
                boolean settled = change <= CONVERGED * Math.max(volume, 1e-3 * scale)
                        || (change >= off && change <= 1e-11 * volume);
                off = change;
                if (settled) {
                    return true;
                }
            }
            return false;
        }

        private void step() {
            double[][] equations = new double[rows.size() + 1][];
            equations[0] = volumeRow(partial);
            for (int i = 0; i < rows.size(); i++) {
                equations[i + 1] = trimmed(rows.get(i));
            }
            Programme programme = new Programme(equations, costs, allowed);
            double[] answer = programme.solve();
            supportBefore = support;
            support = programme.support();
            cost = dot(costs[order.size()], answer);
            solution = solution(answer, programme.unfulfilled());
        }

        private boolean isNoWorseThan(Newton other) {
            double difference = solution.missed() - other.solution.missed();
            return Math.abs(difference) > 1e-12 ? difference < 0.0 : cost <= other.cost;
        }

        double[] grams() {
            return total(solution.grams());
        }
    }

    private double[][] costs() {
        double[][] costs = new double[order.size() + 2][unknowns];
        for (double[] miss : missing) {
            for (int k = 0; k < order.size(); k++) {
                if (order.get(k).contains(Asked.values()[(int) miss[1]])) {
                    costs[k][(int) miss[0]] = miss[2];
                }
            }
        }
        double[] cost = costs[order.size()];
        double[] plainest = costs[order.size() + 1];
        for (int i = 0; i < problem.lines().length; i++) {
            cost[volumeColumn()] += problem.lines()[i].cost() * problem.lines()[i].dose();
        }
        for (int v = 0; v < varying.length; v++) {
            cost[v] = problem.lines()[varying[v]].cost();
            plainest[v] = 1.0 + 1e-3 * v;
        }
        return costs;
    }

    private Solution solution(double[] answer, double unfulfilled) {
        double missed = unfulfilled;
        for (double[] miss : missing) {
            missed += answer[(int) miss[0]] * miss[2];
        }
        double[] grams = new double[problem.lines().length];
        double volume = answer[volumeColumn()] * scale;
        for (int i = 0; i < grams.length; i++) {
            grams[i] = problem.lines()[i].fixed() + problem.lines()[i].dose() * volume;
        }
        for (int v = 0; v < varying.length; v++) {
            grams[varying[v]] += answer[v] * scale;
        }
        return new Solution(grams, volume, missed);
    }

    /** Returns the equation "V = Σ grams × partial volumes". */
    private double[] volumeRow(double[] partial) {
        double[] row = new double[unknowns + 1];
        row[volumeColumn()] = 1.0;
        for (int i = 0; i < problem.lines().length; i++) {
            Problem.Line line = problem.lines()[i];
            double perGram = dot(partial, line.perGram());
            row[unknowns] += perGram * line.fixed() / scale;
            row[volumeColumn()] -= perGram * line.dose();
        }
        for (int v = 0; v < varying.length; v++) {
            row[v] = -dot(partial, problem.lines()[varying[v]].perGram());
        }
        return row;
    }

    private double[] trimmed(double[] wide) {
        double[] row = Arrays.copyOf(wide, unknowns + 1);
        row[unknowns] = wide[wide.length - 1];
        return row;
    }

    private double[] total(double[] grams) {
        double[] total = new double[Substance.COUNT];
        for (int i = 0; i < grams.length; i++) {
            double[] perGram = problem.lines()[i].perGram();
            for (int s = 0; s < total.length; s++) {
                total[s] += grams[i] * perGram[s];
            }
        }
        return total;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0.0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
