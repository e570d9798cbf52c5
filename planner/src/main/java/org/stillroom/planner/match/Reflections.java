package org.stillroom.planner.match;

/** Least squares by Householder reflections. */
final class Reflections {
    private Reflections() {}

    /**
     * Returns the x for which ‖Ax − b‖ is least; a column that depends on those before it gets 0.
     *
     * @param columns of A, each as long as b
     */
    static double[] leastSquares(double[][] columns, double[] b) {
        int n = columns.length;
        double[][] a = new double[n][];
        for (int j = 0; j < n; j++) {
            a[j] = columns[j].clone();
        }
        double[] right = b.clone();
        double[] diagonal = new double[n];
        int rows = b.length;
        for (int j = 0; j < Math.min(n, rows); j++) {
            diagonal[j] = reflect(a, right, j, NonNegative.dot(columns[j], columns[j]));
        }
        double[] x = new double[n];
        for (int j = Math.min(n, rows) - 1; j >= 0; j--) {
            double sum = right[j];
            for (int k = j + 1; k < n; k++) {
                sum -= a[k][j] * x[k];
            }
            x[j] = diagonal[j] == 0.0 ? 0.0 : sum / diagonal[j];
        }
        return x;
    }

    /** Turns the part of a column below the diagonal to zero, in all columns alike; returns the diagonal, 0 where nothing is left. */
    private static double reflect(double[][] a, double[] right, int j, double square) {
        double norm = 0.0;
        for (int i = j; i < right.length; i++) {
            norm += a[j][i] * a[j][i];
        }
        if (norm <= 1e-24 * square) {
            return 0.0;
        }
        double length = a[j][j] > 0.0 ? -Math.sqrt(norm) : Math.sqrt(norm);
        double[] v = a[j].clone();
        v[j] -= length;
        double half = 0.0;
        for (int i = j; i < v.length; i++) {
            half += v[i] * v[i];
        }
        for (int k = j + 1; k < a.length; k++) {
            mirror(a[k], v, j, half);
        }
        mirror(right, v, j, half);
        return length;
    }

    private static void mirror(double[] column, double[] v, int from, double half) {
        double along = 0.0;
        for (int i = from; i < v.length; i++) {
            along += v[i] * column[i];
        }
        double times = 2.0 * along / half;
        for (int i = from; i < v.length; i++) {
            column[i] -= times * v[i];
        }
    }
}
