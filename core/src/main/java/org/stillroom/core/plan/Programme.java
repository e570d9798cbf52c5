package org.stillroom.core.plan;

/**
 * A small linear programme: unknowns of zero or more, equations, and several wishes in order of importance.
 *
 * <p>Solved by the simplex method on a dense tableau. The first wish is to fulfil the equations; each later wish is followed only
 * as far as it leaves the earlier ones untouched, which a column's reduced cost under them tells. The answer is a corner, so that
 * as few unknowns as possible differ from zero. Bland's rule takes over when the steepest one does not come to an end.
 *
 * <p>Source: G. B. Dantzig, Linear Programming and Extensions, 1963, chapters 5 and 6; R. G. Bland, Math. Oper. Res. 2, 1977.
 */
final class Programme {
    private static final double EPSILON = 1e-9;
    private static final double PIVOT = 1e-11;
    private static final int STEEPEST_PIVOTS = 200;
    private static final int MOST_PIVOTS = 5000;

    private final int unknowns;
    private final int rows;
    private final int columns;
    private final double[][] tableau;
    private final double[][] wishes;
    private final int[] basis;
    private final boolean[] allowed;

    /**
     * @param equations one row an equation: coefficients of the unknowns, then the right side
     * @param costs one row a wish, most important first: what one more of each unknown costs
     * @param allowed which unknowns may differ from zero
     */
    Programme(double[][] equations, double[][] costs, boolean[] allowed) {
        this.allowed = allowed;
        rows = equations.length;
        unknowns = equations[0].length - 1;
        columns = unknowns + rows;
        tableau = new double[rows][];
        basis = new int[rows];
        wishes = new double[costs.length + 1][columns + 1];
        for (int i = 0; i < rows; i++) {
            tableau[i] = withSlackOfItsOwn(equations[i], i);
            basis[i] = unknowns + i;
            subtract(wishes[0], tableau[i], 1.0);
            wishes[0][unknowns + i] = 0.0;
        }
        for (int k = 0; k < costs.length; k++) {
            System.arraycopy(costs[k], 0, wishes[k + 1], 0, unknowns);
        }
    }

    private double[] withSlackOfItsOwn(double[] equation, int row) {
        double[] full = new double[columns + 1];
        double largest = 0.0;
        for (int j = 0; j < unknowns; j++) {
            largest = Math.max(largest, Math.abs(equation[j]));
        }
        // Rows of like size, so that one tolerance serves them all.
        double by = (equation[unknowns] < 0.0 ? -1.0 : 1.0) / (largest > 0.0 ? largest : 1.0);
        for (int j = 0; j < unknowns; j++) {
            full[j] = by * equation[j];
        }
        full[unknowns + row] = 1.0;
        full[columns] = by * equation[unknowns];
        return full;
    }

    /**
     * Returns the unknowns at the best corner.
     *
     * @throws ArithmeticException when a wish has no least value, or rounding keeps the method from ending
     */
    double[] solve() {
        int pivots = 0;
        for (int wish = 0; wish < wishes.length; wish++) {
            for (int column = entering(wish, pivots); column >= 0; column = entering(wish, pivots)) {
                int row = leaving(column);
                if (row < 0) {
                    throw new ArithmeticException("wish " + wish + " has no least value");
                }
                pivot(row, column);
                pivots++;
                if (pivots > MOST_PIVOTS) {
                    throw new ArithmeticException("no corner found in " + MOST_PIVOTS + " steps");
                }
            }
        }
        double[] answer = new double[unknowns];
        for (int i = 0; i < rows; i++) {
            if (basis[i] < unknowns) {
                answer[basis[i]] = Math.max(0.0, tableau[i][columns]);
            }
        }
        return answer;
    }

    /** Returns how far the equations are from being fulfilled, the sum of what each lacks. */
    double unfulfilled() {
        return -wishes[0][columns];
    }

    /** Returns which unknowns the corner rests on; all others are zero. */
    boolean[] support() {
        boolean[] support = new boolean[unknowns];
        for (int column : basis) {
            if (column < unknowns) {
                support[column] = true;
            }
        }
        return support;
    }

    private int entering(int wish, int pivots) {
        int best = -1;
        double steepest = -EPSILON;
        for (int j = 0; j < unknowns; j++) {
            if (allowed[j] && wishes[wish][j] < steepest && leavesEarlierWishesAlone(wish, j)) {
                if (pivots > STEEPEST_PIVOTS) {
                    return j;
                }
                best = j;
                steepest = wishes[wish][j];
            }
        }
        return best;
    }

    private boolean leavesEarlierWishesAlone(int wish, int column) {
        for (int k = 0; k < wish; k++) {
            if (wishes[k][column] > EPSILON) {
                return false;
            }
        }
        return true;
    }

    private int leaving(int column) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            double coefficient = tableau[i][column];
            if (coefficient > PIVOT) {
                double ratio = Math.max(0.0, tableau[i][columns]) / coefficient;
                if (ratio < least || (ratio == least && best >= 0 && basis[i] < basis[best])) {
                    least = ratio;
                    best = i;
                }
            }
        }
        return best;
    }

    private void pivot(int row, int column) {
        double[] pivotRow = tableau[row];
        double by = 1.0 / pivotRow[column];
        for (int j = 0; j <= columns; j++) {
            pivotRow[j] *= by;
        }
        pivotRow[column] = 1.0;
        for (int i = 0; i < rows; i++) {
            if (i != row) {
                clear(tableau[i], pivotRow, column);
            }
        }
        for (double[] wish : wishes) {
            clear(wish, pivotRow, column);
        }
        basis[row] = column;
    }

    private static void clear(double[] target, double[] pivotRow, int column) {
        double factor = target[column];
        if (factor != 0.0) {
            subtract(target, pivotRow, factor);
            target[column] = 0.0;
        }
    }

    private static void subtract(double[] target, double[] row, double factor) {
        for (int j = 0; j < target.length; j++) {
            target[j] -= factor * row[j];
        }
    }
}
