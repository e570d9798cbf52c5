package org.stillroom.planner.match;

import java.util.Arrays;
import java.util.List;

/**
 * Least squares with no part below zero and bounds on sums of the parts.
 *
 * <p>Method of multipliers (Hestenes 1969, Powell 1969, for bounds Rockafellar 1973, from memory): a bound that is passed, or nearly,
 * is a weighted equation beside the others, and its right side is moved until the bound is met and nothing pulls beyond it. What rounding
 * leaves open is taken off by scaling down, so that no bound is passed.
 */
final class Bounded {
    private static final double WEIGHT = 30.0;
    private static final double ROUNDING = 1e-11;
    private static final int MOST_MOVES = 500;
    private static final int MOST_CHANGES = 20;

    private final double[][] columns;
    private final double[] b;
    private final List<Matching.Bound> bounds;

    private Bounded(double[][] columns, double[] b, List<Matching.Bound> bounds) {
        this.columns = columns;
        this.b = b;
        this.bounds = bounds;
    }

    /**
     * Returns x.
     *
     * @param columns of A, each as long as b
     */
    static double[] leastSquares(double[][] columns, double[] b, List<Matching.Bound> bounds) {
        double[][] allowed = columns.clone();
        for (Matching.Bound bound : bounds) {
            for (int j = 0; j < allowed.length; j++) {
                if (bound.most() == 0.0 && bound.perUnit().get(j) > 0.0) {
                    allowed[j] = new double[b.length]; // a column of nothing is never taken
                }
            }
        }
        List<Matching.Bound> open =
                bounds.stream().filter(bound -> bound.most() > 0.0).toList();
        return new Bounded(allowed, b, open).solved();
    }

    private double[] solved() {
        double[] pulls = new double[bounds.size()];
        double[] x = NonNegative.leastSquares(columns, b);
        for (int move = 0; move < MOST_MOVES; move++) {
            double off = 0.0;
            for (int k = 0; k < pulls.length; k++) {
                double moved = Math.max(0.0, pulls[k] + part(bounds.get(k), x) - 1.0);
                off = Math.max(off, Math.abs(moved - pulls[k]));
                pulls[k] = moved;
            }
            if (off < ROUNDING) {
                break;
            }
            x = pulledBack(x, pulls);
        }
        return scaledDown(x);
    }

    /**
     * Returns the nearest where each bound pulls back by the square of what it is passed by, beginning a little below it.
     *
     * @param before where to begin
     * @param pulls how far below itself each bound begins to pull, as part of it
     */
    private double[] pulledBack(double[] before, double[] pulls) {
        boolean[] pulling = pulling(before, pulls);
        for (int change = 0; change < MOST_CHANGES; change++) {
            double[] x = solved(pulling, pulls);
            boolean[] now = pulling(x, pulls);
            if (Arrays.equals(now, pulling)) {
                return x;
            }
            pulling = now;
        }
        return solved(pulling, pulls);
    }

    private boolean[] pulling(double[] x, double[] pulls) {
        boolean[] pulling = new boolean[pulls.length];
        for (int k = 0; k < pulls.length; k++) {
            pulling[k] = part(bounds.get(k), x) - 1.0 + pulls[k] > 0.0;
        }
        return pulling;
    }

    private double[] solved(boolean[] pulling, double[] pulls) {
        double weight = WEIGHT * Math.sqrt(NonNegative.dot(b, b));
        double[][] more = new double[columns.length][];
        for (int j = 0; j < columns.length; j++) {
            more[j] = Arrays.copyOf(columns[j], b.length + pulls.length);
            for (int k = 0; k < pulls.length; k++) {
                Matching.Bound bound = bounds.get(k);
                more[j][b.length + k] = pulling[k] ? weight * bound.perUnit().get(j) / bound.most() : 0.0;
            }
        }
        double[] right = Arrays.copyOf(b, b.length + pulls.length);
        for (int k = 0; k < pulls.length; k++) {
            right[b.length + k] = pulling[k] ? weight * (1.0 - pulls[k]) : 0.0;
        }
        return NonNegative.leastSquares(more, right);
    }

    private double[] scaledDown(double[] x) {
        double over = 1.0;
        for (Matching.Bound bound : bounds) {
            over = Math.max(over, part(bound, x));
        }
        double[] scaled = x.clone();
        for (int j = 0; j < scaled.length; j++) {
            scaled[j] /= over;
        }
        return scaled;
    }

    /** Returns which part of a bound is reached; above 1 when it is passed. */
    private static double part(Matching.Bound bound, double[] x) {
        double sum = 0.0;
        for (int j = 0; j < x.length; j++) {
            sum += bound.perUnit().get(j) * x[j];
        }
        return sum / bound.most();
    }
}
