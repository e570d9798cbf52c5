package org.stillroom.core.gauging;

import java.util.List;

/** Where the search begins when nothing is known of what was poured: the liquid of a coarse net that fits the readings best. */
final class Start {
    private static final double[] ETHANOL_PARTS = {0.0, 0.08, 0.16, 0.24, 0.33, 0.42, 0.52, 0.62, 0.73, 0.86, 0.97};
    private static final double[] SUGAR_PARTS = {0.0, 0.08, 0.16, 0.24, 0.32, 0.4, 0.5, 0.6, 0.7};
    /** Part of a squared distance that counts: the net is so much coarser than the readings. */
    private static final double COARSE = 1e-3;

    private Start() {}

    static double[] nearest(Vessel vessel, List<Reading> readings, Prior prior) {
        double[] best = prior.mean();
        double least = Double.POSITIVE_INFINITY;
        for (double sugar : SUGAR_PARTS) {
            for (double ethanol : ETHANOL_PARTS) {
                double[] x = new double[Vessel.UNKNOWNS];
                x[Vessel.ETHANOL] = 1000.0 * (1.0 - sugar) * ethanol;
                x[Vessel.WATER] = 1000.0 * (1.0 - sugar) * (1.0 - ethanol);
                x[Vessel.SUGAR] = 1000.0 * sugar;
                double misfit = misfit(vessel.mixture(x), readings);
                if (misfit < least) {
                    least = misfit;
                    best = x;
                }
            }
        }
        return best;
    }

    private static double misfit(Mixture mixture, List<Reading> readings) {
        double sum = 0.0;
        for (Reading reading : readings) {
            double away = reading.value() - reading.of(mixture);
            // A wild reading must not drag the search away from where all others point.
            sum += Math.log1p(away * away / reading.variance() * COARSE);
        }
        return sum;
    }
}
