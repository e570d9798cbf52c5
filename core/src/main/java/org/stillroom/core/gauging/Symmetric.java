package org.stillroom.core.gauging;

/** Small symmetric positive definite matrices: solving and inverting by the square root of A.-L. Cholesky. */
final class Symmetric {
    private Symmetric() {}

    /** Returns the inverse. */
    static double[][] inverse(double[][] matrix) {
        int n = matrix.length;
        double[][] root = root(matrix);
        double[][] inverse = new double[n][n];
        for (int column = 0; column < n; column++) {
            double[] unit = new double[n];
            unit[column] = 1.0;
            double[] solved = solve(root, unit);
            for (int row = 0; row < n; row++) {
                inverse[row][column] = solved[row];
            }
        }
        return inverse;
    }

    /** Returns the lower triangle whose square is the matrix. */
    static double[][] root(double[][] matrix) {
        int n = matrix.length;
        double[][] root = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                if (i != j) {
                    root[i][j] = sum / root[j][j];
                } else if (sum > 0.0) {
                    root[i][i] = Math.sqrt(sum);
                } else {
                    throw new ArithmeticException(
                            "the matrix has no inverse: row " + i + " depends on those before it");
                }
            }
        }
        return root;
    }

    /** Returns x of root·rootᵀ·x = right. */
    static double[] solve(double[][] root, double[] right) {
        int n = right.length;
        double[] x = right.clone();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= root[i][k] * x[k];
            }
            x[i] /= root[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                x[i] -= root[k][i] * x[k];
            }
            x[i] /= root[i][i];
        }
        return x;
    }

    /** Returns a·matrix·b: the covariance of two figures with these slopes. */
    static double between(double[] a, double[][] matrix, double[] b) {
        double sum = 0.0;
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                sum += a[i] * matrix[i][j] * b[j];
            }
        }
        return sum;
    }
}
