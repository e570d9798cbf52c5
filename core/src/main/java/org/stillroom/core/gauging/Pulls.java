package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged.Pull;
import org.stillroom.core.quantity.Temperature;

/**
 * How each reading, and what was poured, stands to all the others.
 *
 * <p>A reading's distance is counted from what the fit without it foretells, in standard deviations of that difference (the
 * deleted residual, by the reading's leverage in the fit with it). What was poured is judged by its strength, sugar, acidity and
 * volume, whichever is farthest off.
 */
final class Pulls {
    /** A reading that leaves less than this part of its own variance open is not checked by any other. */
    private static final double UNCHECKED = 1e-4;

    /** The name of all that went in. */
    static final String POURED = "what was poured";

    private final List<Pull> all;

    private Pulls(List<Pull> all) {
        this.all = List.copyOf(all);
    }

    /**
     * Returns the pulls in the order of the readings.
     *
     * @param pouredAlone the liquid by what was poured alone, or null when that is not used
     */
    static Pulls of(Fit fit, List<Reading> readings, Trust trust, @Nullable Mixture pouredAlone, Prior prior) {
        List<Pull> pulls = new ArrayList<>();
        double[][] covariance = fit.covariance();
        for (int i = 0; i < readings.size(); i++) {
            pulls.add(ofReading(fit, covariance, readings.get(i), trust.keeps(i)));
        }
        if (pouredAlone != null) {
            pulls.add(new Pull(POURED, Double.NaN, ofPoured(fit, covariance, pouredAlone, prior), false));
        }
        return new Pulls(pulls);
    }

    private static Pull ofReading(Fit fit, double[][] covariance, Reading reading, boolean kept) {
        ToDoubleFunction<Mixture> shows = reading::of;
        double expected = shows.applyAsDouble(fit.mixture());
        double[] slope = fit.slope(shows);
        double ofFit = Symmetric.between(slope, covariance, slope);
        double open = kept ? reading.variance() - ofFit : reading.variance() + ofFit;
        double sigma =
                open < UNCHECKED * reading.variance() ? Double.NaN : (reading.value() - expected) / Math.sqrt(open);
        return new Pull(reading.shown().label(), expected, sigma, !kept);
    }

    private static double ofPoured(Fit fit, double[][] after, Mixture alone, Prior prior) {
        double[][] before = prior.covariance();
        List<ToDoubleFunction<Mixture>> figures = List.of(
                Mixture::strength,
                Mixture::sugar,
                Mixture::acidity,
                mixture -> mixture.millilitres(Temperature.TWENTY_CELSIUS));
        double farthest = Double.NaN;
        for (ToDoubleFunction<Mixture> figure : figures) {
            double[] slope = fit.slope(figure);
            double ofPrior = Symmetric.between(slope, before, slope);
            double open = ofPrior - Symmetric.between(slope, after, slope);
            double sigma = (figure.applyAsDouble(alone) - figure.applyAsDouble(fit.mixture())) / Math.sqrt(open);
            if (open > UNCHECKED * ofPrior && !(Math.abs(sigma) <= Math.abs(farthest))) {
                farthest = sigma;
            }
        }
        return farthest;
    }

    List<Pull> all() {
        return all;
    }

    /** Returns by how many standard deviations a pull stands out; 0 where nothing can be told of it, or it is left out already. */
    double size(int index) {
        Pull pull = all.get(index);
        return pull.setAside() || !pull.canBeTold() ? 0.0 : Math.abs(pull.sigma());
    }

    /** Returns the index of what stands out most. */
    int indexOfWorst() {
        int worst = 0;
        for (int i = 1; i < all.size(); i++) {
            worst = size(i) > size(worst) ? i : worst;
        }
        return worst;
    }

    /** Returns by how many standard deviations the worst stands out; 0 where nothing can be told. */
    double worst() {
        return all.isEmpty() ? 0.0 : size(indexOfWorst());
    }
}
