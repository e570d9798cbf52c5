package org.stillroom.core.gauging;

import java.util.Set;
import org.stillroom.core.liquid.Substance;

/**
 * What is known of the unknowns of a {@link Vessel} before anything was read: where they lie and the inverse of their covariance.
 */
@SuppressWarnings("ArrayRecordComponent") // numbers of the inner loop, never compared
record Prior(double[] mean, double[][] information) {
    /** So wide, in thousandths of the whole, that it says nothing beside any reading. */
    private static final double NOTHING_KNOWN = 3e4;
    /** What is as good as certain, in thousandths of the whole. */
    private static final double CERTAIN = 0.01;
    /** By how many times its range a label or a measure may be off once it is held to be wrong. */
    private static final double WRONG = 100.0;
    /** What no label and no measure accounts for: a film left in the jug; thousandths of the whole. */
    private static final double FILM = 0.1;

    /**
     * Returns what is known when nothing is known of what was poured.
     *
     * @param massKnown whether some reading tells how much there is; else the whole is taken as it is
     * @param acidKnown whether some reading tells how much acid there is; else there is taken to be none
     */
    static Prior ofNothing(Vessel vessel, boolean massKnown, boolean acidKnown) {
        double[] mean = vessel.unknowns(new double[Substance.COUNT]);
        mean[Vessel.ETHANOL] = 200.0;
        mean[Vessel.WATER] = 700.0;
        mean[Vessel.SUGAR] = 100.0;
        double[][] information = standardErrors();
        for (int k = 0; k < Vessel.AMOUNTS; k++) {
            information[k][k] = perSquare(NOTHING_KNOWN);
        }
        if (!acidKnown) {
            information[Vessel.ACID][Vessel.ACID] = perSquare(CERTAIN);
        }
        if (!massKnown) {
            for (int i = 0; i < Vessel.AMOUNTS; i++) {
                for (int j = 0; j < Vessel.AMOUNTS; j++) {
                    information[i][j] += perSquare(CERTAIN);
                }
            }
        }
        return new Prior(mean, information);
    }

    /**
     * Returns what is known from what was poured; an error within its range has a third of its square as variance.
     *
     * @param wrong the slips that are held to be wrong, so that nothing is known of how far they are off
     */
    static Prior of(Vessel vessel, Poured poured, Set<Poured.Slip> wrong) {
        double[][] covariance = new double[Vessel.AMOUNTS][Vessel.AMOUNTS];
        for (int k = 0; k < Vessel.AMOUNTS; k++) {
            covariance[k][k] = FILM * FILM;
        }
        for (Poured.Slip slip : poured.slips()) {
            double[] end = vessel.unknowns(slip.atItsEnd());
            double square = (wrong.contains(slip) ? WRONG * WRONG : 1.0) / 3.0;
            for (int i = 0; i < Vessel.AMOUNTS; i++) {
                for (int j = 0; j < Vessel.AMOUNTS; j++) {
                    covariance[i][j] += square * end[i] * end[j];
                }
            }
        }
        double[][] inverse = Symmetric.inverse(covariance);
        double[][] information = standardErrors();
        for (int i = 0; i < Vessel.AMOUNTS; i++) {
            System.arraycopy(inverse[i], 0, information[i], 0, Vessel.AMOUNTS);
        }
        return new Prior(vessel.unknowns(poured.contents().toGrams()), information);
    }

    /** The errors of the models and the thermometer are counted in their own standard deviations. */
    private static double[][] standardErrors() {
        double[][] information = new double[Vessel.UNKNOWNS][Vessel.UNKNOWNS];
        information[Vessel.VOLUME_ERROR][Vessel.VOLUME_ERROR] = 1.0;
        information[Vessel.REFRACTION_ERROR][Vessel.REFRACTION_ERROR] = 1.0;
        information[Vessel.THERMOMETER_ERROR][Vessel.THERMOMETER_ERROR] = 1.0;
        return information;
    }

    private static double perSquare(double sigma) {
        return 1.0 / (sigma * sigma);
    }

    /** Returns the information times the distance from the mean: where it pulls to. */
    double[] pull(double[] x) {
        double[] pull = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < x.length; j++) {
                pull[i] += information[i][j] * (mean[j] - x[j]);
            }
        }
        return pull;
    }

    /** Returns the square of the distance from the mean in standard deviations. */
    double misfit(double[] x) {
        double[] pull = pull(x);
        double sum = 0.0;
        for (int i = 0; i < x.length; i++) {
            sum += pull[i] * (mean[i] - x[i]);
        }
        return sum;
    }

    /** Returns by how many times its range a slip that is held to be wrong is off, where the unknowns are these. */
    double timesItsRange(Vessel vessel, Poured.Slip wrong, double[] x) {
        double[] end = vessel.unknowns(wrong.atItsEnd());
        double[] pull = pull(x);
        double along = 0.0;
        for (int k = 0; k < Vessel.AMOUNTS; k++) {
            along -= end[k] * pull[k];
        }
        return WRONG * WRONG / 3.0 * along;
    }

    /** Returns the covariance. */
    double[][] covariance() {
        return Symmetric.inverse(information);
    }
}
