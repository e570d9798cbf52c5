package org.stillroom.planner.match;

import java.util.ArrayList;
import java.util.List;

/**
 * Least squares with no part below zero: the x ≥ 0 for which ‖Ax − b‖ is least.
 *
 * <p>Active set after Lawson and Hanson (Solving Least Squares Problems, 1974, chapter 23, from memory): columns join one by one where
 * the residual falls fastest, and leave when they would go below zero. The problem of the columns that joined is solved by Householder
 * reflections, so that oils that are much alike do not square their likeness.
 */
final class NonNegative {
    private static final double NOTHING = 1e-12;

    private final double[][] columns;
    private final double[] b;
    private final double[] x;
    private final List<Integer> joined = new ArrayList<>();

    private NonNegative(double[][] columns, double[] b) {
        this.columns = columns;
        this.b = b;
        this.x = new double[columns.length];
    }

    /**
     * Returns x.
     *
     * @param columns of A, each as long as b
     */
    static double[] leastSquares(double[][] columns, double[] b) {
        NonNegative problem = new NonNegative(columns, b);
        problem.solve();
        return problem.x;
    }

    private void solve() {
        double scale = 0.0;
        for (double[] column : columns) {
            scale = Math.max(scale, Math.abs(dot(column, b)));
        }
        for (int round = 0; round < 10 * columns.length; round++) {
            int best = steepest(NOTHING * scale);
            if (best < 0) {
                return;
            }
            joined.add(best);
            if (!settle(best)) {
                return;
            }
        }
    }

    /** Returns the column along which the residual falls fastest, or −1 when it falls along none. */
    private int steepest(double least) {
        double[] residual = residual();
        int best = -1;
        double fall = least;
        for (int j = 0; j < columns.length; j++) {
            double along = dot(columns[j], residual);
            if (!joined.contains(j) && along > fall) {
                fall = along;
                best = j;
            }
        }
        return best;
    }

    /** Moves to the least squares of the joined columns, letting those go that reach zero; false where the newest adds nothing. */
    private boolean settle(int newest) {
        while (!joined.isEmpty()) {
            double[] z = Reflections.leastSquares(
                    joined.stream().map(j -> columns[j]).toArray(double[][]::new), b);
            if (z[joined.size() - 1] <= 0.0 && joined.get(joined.size() - 1) == newest && x[newest] == 0.0) {
                joined.remove(Integer.valueOf(newest));
                return false;
            }
            double step = stepTo(z);
            for (int k = 0; k < z.length; k++) {
                int j = joined.get(k);
                x[j] += step * (z[k] - x[j]);
            }
            if (step >= 1.0) {
                return true;
            }
            joined.removeIf(j -> {
                boolean gone = x[j] <= NOTHING;
                x[j] = gone ? 0.0 : x[j];
                return gone;
            });
        }
        return true;
    }

    private double stepTo(double[] z) {
        double step = 1.0;
        for (int k = 0; k < z.length; k++) {
            double from = x[joined.get(k)];
            if (z[k] <= 0.0) {
                step = Math.min(step, from / (from - z[k]));
            }
        }
        return step;
    }

    private double[] residual() {
        double[] residual = b.clone();
        for (int j : joined) {
            for (int i = 0; i < residual.length; i++) {
                residual[i] -= columns[j][i] * x[j];
            }
        }
        return residual;
    }

    static double dot(double[] one, double[] other) {
        double sum = 0.0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
