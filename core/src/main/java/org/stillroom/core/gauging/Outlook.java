package org.stillroom.core.gauging;

import java.util.function.ToDoubleFunction;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.quantity.Temperature;

/** The figures of a fitted liquid, each with the central 90 % of where it lies. */
final class Outlook {
    private final Fit fit;
    private final double wider;
    private final double[][] covariance;

    /** @param wider by how much every doubt is widened, since readings contradict each other; else 1 */
    Outlook(Fit fit, double wider) {
        this.fit = fit;
        this.wider = wider;
        this.covariance = fit.covariance();
    }

    Interval strength() {
        Interval free = interval(Mixture::strength);
        return new Interval(free.value(), free.low(), Math.min(100.0, free.high()));
    }

    Interval sugar() {
        return interval(Mixture::sugar);
    }

    Interval acidity() {
        return interval(Mixture::acidity);
    }

    Interval volume() {
        return interval(mixture -> mixture.millilitres(Temperature.TWENTY_CELSIUS));
    }

    /** Returns how strength and sugar err together, −1 to 1. */
    double correlation() {
        double[] strength = fit.slope(Mixture::strength);
        double[] sugar = fit.slope(Mixture::sugar);
        double together = Symmetric.between(strength, covariance, sugar);
        return together
                / Math.sqrt(Symmetric.between(strength, covariance, strength)
                        * Symmetric.between(sugar, covariance, sugar));
    }

    private Interval interval(ToDoubleFunction<Mixture> figure) {
        double value = figure.applyAsDouble(fit.mixture());
        double[] slope = fit.slope(figure);
        double half = wider * Mixture.CENTRAL_90 * Math.sqrt(Symmetric.between(slope, covariance, slope));
        return new Interval(value, Math.max(0.0, value - half), value + half);
    }
}
