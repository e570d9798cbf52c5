package org.stillroom.core.gauging;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The unknowns that fit readings and prior best, by weighted least squares, and their covariance.
 *
 * <p>Gauss and Newton's method with the step halved until it improves; an amount that would fall below zero stays at zero for that
 * step. The covariance is that of the same problem without that bound, so it is never too narrow for it.
 */
final class Fit {
    private static final int MOST_STEPS = 200;
    private static final int MOST_HALVINGS = 40;
    /** Settled when no unknown moves by more, in thousandths of the whole. */
    private static final double SETTLED = 1e-7;
    /** Settled too when the squares fall by no more: the doubt of the models has kinks, at which steps grow small for ever. */
    private static final double NO_BETTER = 1e-10;
    /** Differences that stand for slopes: large against rounding, small against every curve. */
    private static final double DIFFERENCE = 1e-2;

    private final Vessel vessel;
    private final List<Reading> readings;
    private final Prior prior;
    private double[] x;
    private Mixture mixture;
    private double[][] slopes;
    private boolean settled;

    private Fit(Vessel vessel, List<Reading> readings, Prior prior, double[] start) {
        this.vessel = vessel;
        this.readings = readings;
        this.prior = prior;
        this.x = start.clone();
        this.mixture = vessel.mixture(x);
        this.slopes = slopes();
    }

    /** Returns the best fit, or where the search stood when it was given up. */
    static Fit of(Vessel vessel, List<Reading> readings, Prior prior, double[] start) {
        Fit fit = new Fit(vessel, readings, prior, start);
        for (int i = 0; i < MOST_STEPS && !fit.settled; i++) {
            fit.step();
        }
        return fit;
    }

    /** Goes one step, and notes when there is none left to go. */
    private void step() {
        double[] step = bounded();
        double before = misfit(mixture, x);
        for (int half = 0; half < MOST_HALVINGS; half++) {
            double[] next = moved(step, Math.scalb(1.0, -half));
            Mixture there = vessel.mixture(next);
            double after = misfit(there, next);
            if (after <= before + 1e-12 * (1.0 + before)) {
                settled = largest(x, next) < SETTLED || before - after < NO_BETTER * (1.0 + before);
                x = next;
                mixture = there;
                slopes = slopes();
                return;
            }
        }
        settled = true;
    }

    private static double largest(double[] from, double[] to) {
        double most = 0.0;
        for (int k = 0; k < from.length; k++) {
            most = Math.max(most, Math.abs(to[k] - from[k]));
        }
        return most;
    }

    private double[] moved(double[] step, double part) {
        double[] next = x.clone();
        for (int k = 0; k < next.length; k++) {
            next[k] += part * step[k];
            next[k] = k < Vessel.AMOUNTS ? Math.max(0.0, next[k]) : next[k];
        }
        return next;
    }

    /** Returns the step of Gauss and Newton in which what is at zero does not fall. */
    private double[] bounded() {
        double[][] normal = information();
        double[] right = gradient();
        boolean[] held = new boolean[Vessel.UNKNOWNS];
        while (true) {
            double[] step = Symmetric.solve(Symmetric.root(normal), right);
            boolean falls = false;
            for (int k = 0; k < Vessel.AMOUNTS; k++) {
                if (x[k] <= 0.0 && step[k] < 0.0 && !held[k]) {
                    hold(k, normal, right);
                    held[k] = true;
                    falls = true;
                }
            }
            if (!falls) {
                return step;
            }
        }
    }

    private static void hold(int k, double[][] normal, double[] right) {
        for (int i = 0; i < normal.length; i++) {
            normal[k][i] = 0.0;
            normal[i][k] = 0.0;
        }
        normal[k][k] = 1.0;
        right[k] = 0.0;
    }

    private double[] gradient() {
        double[] gradient = prior.pull(x);
        for (int i = 0; i < readings.size(); i++) {
            double part = residual(mixture, readings.get(i)) / readings.get(i).variance();
            for (int k = 0; k < gradient.length; k++) {
                gradient[k] += part * slopes[i][k];
            }
        }
        return gradient;
    }

    /** Returns the inverse of the covariance. */
    private double[][] information() {
        double[][] sum = new double[Vessel.UNKNOWNS][];
        for (int k = 0; k < sum.length; k++) {
            sum[k] = prior.information()[k].clone();
        }
        for (int i = 0; i < readings.size(); i++) {
            double weight = 1.0 / readings.get(i).variance();
            for (int k = 0; k < sum.length; k++) {
                for (int l = 0; l < sum.length; l++) {
                    sum[k][l] += weight * slopes[i][k] * slopes[i][l];
                }
            }
        }
        return sum;
    }

    private double misfit(Mixture of, double[] at) {
        double sum = prior.misfit(at);
        for (Reading reading : readings) {
            double residual = residual(of, reading);
            sum += residual * residual / reading.variance();
        }
        return sum;
    }

    private static double residual(Mixture of, Reading reading) {
        return reading.value() - reading.of(of);
    }

    private double[][] slopes() {
        double[][] slopes = new double[readings.size()][];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = slope(readings.get(i)::of);
        }
        return slopes;
    }

    /** Returns how a figure of the liquid changes with each unknown; one-sided where an amount is at zero. */
    double[] slope(ToDoubleFunction<Mixture> figure) {
        double[] slope = new double[Vessel.UNKNOWNS];
        for (int k = 0; k < slope.length; k++) {
            boolean atZero = k < Vessel.AMOUNTS && x[k] < DIFFERENCE;
            double below = atZero ? 0.0 : DIFFERENCE;
            double up = figure.applyAsDouble(besides(k, DIFFERENCE));
            double down = figure.applyAsDouble(below == 0.0 ? mixture : besides(k, -below));
            slope[k] = (up - down) / (DIFFERENCE + below);
        }
        return slope;
    }

    private Mixture besides(int unknown, double by) {
        double[] moved = x.clone();
        moved[unknown] += by;
        return vessel.mixture(moved);
    }

    /** Returns whether the search came to its end. */
    boolean settled() {
        return settled;
    }

    /** Returns the sum of squares that is least: of all distances in standard deviations. */
    double misfit() {
        return misfit(mixture, x);
    }

    Mixture mixture() {
        return mixture;
    }

    double[] unknowns() {
        return x.clone();
    }

    double[] grams() {
        return vessel.grams(x);
    }

    /** Returns the covariance of the unknowns. */
    double[][] covariance() {
        return Symmetric.inverse(information());
    }
}
