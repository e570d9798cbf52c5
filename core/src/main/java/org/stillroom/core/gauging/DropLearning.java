package org.stillroom.core.gauging;

import java.util.List;
import org.stillroom.core.drops.OfficialDropper;
import org.stillroom.core.gauging.Gauged.Interval;

/**
 * What weighing bottles tells of the drops that were counted out of them.
 *
 * <p>Between two weighings a bottle lost what was counted, each drop as heavy as it was reckoned, and what is missing besides. Drops of
 * one dropper are off by a part of their own, those of one liquid by another; both are sought by least squares, each as far as ordinary
 * droppers and liquids differ. Method: docs/how-it-works/offsets.md.
 */
public final class DropLearning {
    /** Standard deviation by which ordinary droppers differ from the official one, as a part. */
    private static final double OF_DROPPER = OfficialDropper.RELATIVE_DOUBT / Mixture.CENTRAL_90;
    /** Standard deviation by which a liquid differs from the rule of surface tension, or from what was typed of it, as a part. */
    private static final double OF_LIQUID = OfficialDropper.ALLOWANCE / Mixture.CENTRAL_90;

    private final int liquids;
    private final double[] mean;
    private final double[][] covariance;

    private DropLearning(int liquids, double[] mean, double[][] covariance) {
        this.liquids = liquids;
        this.mean = mean;
        this.covariance = covariance;
    }

    /**
     * What is missing between two weighings.
     *
     * @param liquid index of it
     * @param dropper index of the dropper; −1 where the maker typed what a drop of it weighs, so that no rule was needed
     * @param part what went out above what was reckoned, as a part of what drops were reckoned to be; below 0 where less did
     * @param halfWidth of it, above 0; every value within is as likely
     */
    public record Run(int liquid, int dropper, double part, double halfWidth) {
        public Run {
            if (!(halfWidth > 0.0 && halfWidth < Double.POSITIVE_INFINITY) || !Double.isFinite(part)) {
                throw new IllegalArgumentException("nothing is told by " + part + " ± " + halfWidth);
            }
        }
    }

    /**
     * Returns what is learned.
     *
     * @param liquids how many there are
     * @param droppers how many there are
     */
    public static DropLearning of(int liquids, int droppers, List<Run> runs) {
        int n = liquids + droppers;
        double[][] information = new double[n][n];
        double[] right = new double[n];
        for (int k = 0; k < n; k++) {
            double sigma = k < liquids ? OF_LIQUID : OF_DROPPER;
            information[k][k] = 1.0 / (sigma * sigma);
        }
        for (Run run : runs) {
            double weight = 3.0 / (run.halfWidth() * run.halfWidth());
            int[] unknowns =
                    run.dropper() < 0 ? new int[] {run.liquid()} : new int[] {run.liquid(), liquids + run.dropper()};
            for (int k : unknowns) {
                right[k] += weight * run.part();
                for (int l : unknowns) {
                    information[k][l] += weight;
                }
            }
        }
        double[][] root = Symmetric.root(information);
        return new DropLearning(liquids, Symmetric.solve(root, right), Symmetric.inverse(information));
    }

    /** Returns by which part drops of a dropper weigh more than the official ones, whatever the liquid. */
    public Interval dropper(int dropper) {
        return interval(new int[] {liquids + dropper});
    }

    /** Returns by which part drops of a liquid weigh more than was typed of it. */
    public Interval liquid(int liquid) {
        return interval(new int[] {liquid});
    }

    /** Returns by which part drops of a liquid out of a dropper weigh more than the official ones. */
    public Interval liquid(int liquid, int dropper) {
        return interval(new int[] {liquid, liquids + dropper});
    }

    private Interval interval(int[] unknowns) {
        double value = 0.0;
        double variance = 0.0;
        for (int k : unknowns) {
            value += mean[k];
            for (int l : unknowns) {
                variance += covariance[k][l];
            }
        }
        double half = Mixture.CENTRAL_90 * Math.sqrt(variance);
        return new Interval(value, value - half, value + half);
    }
}
