package org.stillroom.core.clarity;

import org.stillroom.core.published.Published;
import org.stillroom.core.reference.Table;

/**
 * Activity coefficients by group contributions, as a second opinion on solubilities.
 *
 * <p>Source: Fredenslund, Jones, Prausnitz, AIChE Journal 21 (1975) 1086; groups and interactions of the published original tables and of
 * the completed matrix called UNIFAC 2.0, both as gathered from an open collection of parameters.
 */
final class Unifac {
    private static final double COORDINATION_HALF = 5.0;
    private static final int NUMBERS = 32;

    private final int[] main = new int[NUMBERS];
    private final double[] r = new double[NUMBERS];
    private final double[] q = new double[NUMBERS];
    private final double[][] kelvins = new double[NUMBERS][NUMBERS];

    /**
     * Takes a table of interactions.
     *
     * @param column "original_k" or "unifac_2_0_k"
     */
    Unifac(String column) {
        for (Table.Row row : Published.rows("unifac_subgroups.csv")) {
            int group = (int) row.number("subgroup");
            main[group] = (int) row.number("main_group");
            r[group] = row.number("r");
            q[group] = row.number("q");
        }
        for (Table.Row row : Published.rows("unifac_interactions.csv")) {
            kelvins[(int) row.number("m")][(int) row.number("n")] = row.number(column);
        }
    }

    /** Returns a molecule: how often it has each group, from pairs of a group's number and a count. */
    static double[] molecule(int... pairs) {
        double[] counts = new double[NUMBERS];
        for (int i = 0; i < pairs.length; i += 2) {
            counts[pairs[i]] = pairs[i + 1];
        }
        return counts;
    }

    /**
     * Returns the activity coefficients of molecules in their mixture.
     *
     * @param x mole fractions
     */
    double[] coefficients(double[][] molecules, double[] x, double kelvin) {
        double[] mixture = new double[NUMBERS];
        for (int i = 0; i < x.length; i++) {
            for (int g = 0; g < NUMBERS; g++) {
                mixture[g] += x[i] * molecules[i][g];
            }
        }
        double[] among = residual(mixture, kelvin);
        double[] coefficients = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            double[] alone = residual(molecules[i], kelvin);
            double surface = sum(molecules[i], q);
            double ln = combinatorial(sum(molecules[i], r) / sum(mixture, r), surface / sum(mixture, q), surface);
            for (int g = 0; g < NUMBERS; g++) {
                ln += molecules[i][g] * (among[g] - alone[g]);
            }
            coefficients[i] = Math.exp(ln);
        }
        return coefficients;
    }

    private static double combinatorial(double v, double f, double q) {
        return 1.0 - v + Math.log(v) - COORDINATION_HALF * q * (1.0 - v / f + Math.log(v / f));
    }

    private static double sum(double[] counts, double[] of) {
        double sum = 0.0;
        for (int g = 0; g < NUMBERS; g++) {
            sum += counts[g] * of[g];
        }
        return sum;
    }

    /** Returns the logarithm of each group's own coefficient among the groups. */
    private double[] residual(double[] counts, double kelvin) {
        double[] parts = new double[NUMBERS];
        double surface = sum(counts, q);
        for (int g = 0; g < NUMBERS; g++) {
            parts[g] = counts[g] * q[g] / surface;
        }
        double[] sums = new double[NUMBERS];
        for (int n = 0; n < NUMBERS; n++) {
            for (int m = 0; m < NUMBERS; m++) {
                sums[n] += parts[m] * psi(m, n, kelvin);
            }
        }
        double[] logs = new double[NUMBERS];
        for (int k = 0; k < NUMBERS; k++) {
            double shared = 0.0;
            for (int m = 0; m < NUMBERS; m++) {
                shared += parts[m] * psi(k, m, kelvin) / sums[m];
            }
            logs[k] = q[k] * (1.0 - Math.log(sums[k]) - shared);
        }
        return logs;
    }

    private double psi(int m, int n, double kelvin) {
        return main[m] == main[n] ? 1.0 : Math.exp(-kelvins[main[m]][main[n]] / kelvin);
    }
}
