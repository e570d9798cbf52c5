package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Span;

/**
 * The linear equations of a {@link Problem} for given partial volumes, and what its answer stands for.
 *
 * <p>Unknowns in this order: what each varying line takes beyond its fixed part, V, then slacks and misses as rows need them.
 * Everything is counted per millilitre of a batch of the expected size, so that a thimble and a barrel meet the same numbers.
 */
final class Equations {
    /** Below this a figure is not missed in proportion to itself: 1 % vol, 10 g/L, 1 g/L, in the order of {@link Asked}. */
    private static final double[] SMALL = {0.0, 1.0, 10.0, 1.0};

    private final Problem problem;
    private final List<Set<Asked>> order;
    private final double scale;
    private final int[] varying;
    private final double[][] figures;
    private final List<double[]> rows = new ArrayList<>();
    private final List<double[]> missing = new ArrayList<>();
    private final double[][] costs;
    private int unknowns;

    /** @param order which asked figures are least to be missed, most important first */
    Equations(Problem problem, List<Set<Asked>> order) {
        this.problem = problem;
        this.order = order;
        this.scale = expectedSize(problem);
        this.varying = varying(problem.lines());
        this.figures = figures(problem);
        layOut();
        this.costs = costs();
    }

    /** Returns the millilitres of a batch of the expected size. */
    double scale() {
        return scale;
    }

    /** Returns leave for every unknown to differ from zero. */
    boolean[] everything() {
        boolean[] everything = new boolean[unknowns];
        Arrays.fill(everything, true);
        return everything;
    }

    /**
     * Returns the programme of these equations.
     *
     * @param partial partial volumes, mL/g, in the order of {@link Substance}
     * @param allowed which unknowns may differ from zero
     */
    Programme programme(double[] partial, boolean[] allowed) {
        double[][] equations = new double[rows.size() + 1][];
        equations[0] = volumeRow(partial);
        for (int i = 0; i < rows.size(); i++) {
            equations[i + 1] = trimmed(rows.get(i));
        }
        return new Programme(equations, costs, allowed);
    }

    /** Returns what an answer costs in the measure of the aim, apart from what is fixed. */
    double cost(double[] answer) {
        return dot(costs[order.size()], answer);
    }

    /** Returns the amounts that a corner of the programme stands for. */
    Solution solution(double[] answer, double unfulfilled) {
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

    /** Returns the grams of each substance in so much of each line. */
    double[] total(double[] grams) {
        double[] total = new double[Substance.COUNT];
        for (int i = 0; i < grams.length; i++) {
            double[] perGram = problem.lines()[i].perGram();
            for (int s = 0; s < total.length; s++) {
                total[s] += grams[i] * perGram[s];
            }
        }
        return total;
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
            double[] weights = Objects.requireNonNull(problem.weights().get(each.getKey()));
            for (int i = 0; i < problem.lines().length; i++) {
                figures[each.getKey().ordinal()][i] = dot(weights, problem.lines()[i].perGram());
            }
        }
        return figures;
    }

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
        double reference = 1.0 / Math.max(what == Asked.VOLUME ? 1.0 : span.high(), SMALL[what.ordinal()]);
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
        double[] most = balance(what, span.high());
        most[unknowns++] = 1.0;
        miss(most, what, -1.0, reference);
        rows.add(most);
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

    private static double dot(double[] a, double[] b) {
        double sum = 0.0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
