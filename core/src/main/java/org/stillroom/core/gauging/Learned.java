package org.stillroom.core.gauging;

import java.util.Arrays;
import java.util.Set;
import org.stillroom.core.gauging.Gauged.Interval;

/**
 * What was learned of labels.
 *
 * <p>Labels are told apart by their indices; several may be asked together, since what went in together is known together.
 */
public final class Learned {
    private final double[] mean;
    private final double[][] covariance;
    private final double wider;
    private final boolean[] withinTolerance;
    private final boolean[] keptVessels;
    private final int[] vessels;
    private final Set<Integer> suspects;

    Learned(
            double[] mean,
            double[][] covariance,
            double wider,
            boolean[] withinTolerance,
            boolean[] keptVessels,
            int[] vessels,
            Set<Integer> suspects) {
        this.mean = mean.clone();
        this.covariance = covariance;
        this.wider = wider;
        this.withinTolerance = withinTolerance.clone();
        this.keptVessels = keptVessels.clone();
        this.vessels = vessels.clone();
        this.suspects = Set.copyOf(suspects);
    }

    /** Returns by how much some labels together are off, with the central 90 %, in their unit. */
    public Interval off(int... labels) {
        double[] weights = new double[mean.length];
        for (int label : labels) {
            weights[label] = 1.0;
        }
        return together(weights);
    }

    /**
     * Returns what comes of all labels together, with the central 90 %.
     *
     * @param weights what a unit of each does, such as the strength of a liqueur, % vol
     */
    public Interval together(double[] weights) {
        double value = 0.0;
        for (int i = 0; i < weights.length; i++) {
            value += weights[i] * mean[i];
        }
        double[][] ofLabels = new double[weights.length][];
        for (int i = 0; i < weights.length; i++) {
            ofLabels[i] = Arrays.copyOf(covariance[i], weights.length);
        }
        double variance = Symmetric.between(weights, ofLabels, weights);
        double half = wider * Mixture.CENTRAL_90 * Math.sqrt(Math.max(0.0, variance));
        return new Interval(value, value - half, value + half);
    }

    /** Returns in how many vessels that count a label was. */
    public int vessels(int label) {
        return vessels[label];
    }

    /** Returns whether a label was found to lie beyond its tolerance, which then counts no more. */
    public boolean isBeyondTolerance(int label) {
        return !withinTolerance[label];
    }

    /** Returns whether a vessel was left out, since its readings fit nothing that the others say. */
    public boolean isLeftOut(int vessel) {
        return !keptVessels[vessel];
    }

    /** Returns the labels of which one must be beyond its tolerance, where nobody can tell which; mostly none. */
    public Set<Integer> suspects() {
        return suspects;
    }
}
