package org.stillroom.core.gauging;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.quantity.Temperature;

/**
 * The figures of a fitted liquid, each with the central 90 % of where it lies; where several fits are possible, from the lowest end of
 * all of them to the highest.
 */
final class Outlook {
    /** Half-widths from which strength (% vol) and sugar (g/L) are not known at all. */
    private static final double STRENGTH_OPEN = 25.0;

    private static final double SUGAR_OPEN = 250.0;

    private final List<Fit> possible;

    /** @param possible the fit that is told first, and all others that may be true instead */
    Outlook(List<Fit> possible) {
        this.possible = List.copyOf(possible);
    }

    /** Returns whether anything is known of strength and sugar. */
    boolean isTold() {
        return strength().halfWidth() <= STRENGTH_OPEN && sugar().halfWidth() <= SUGAR_OPEN;
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
        Fit fit = possible.get(0);
        double[][] covariance = fit.covariance();
        double[] strength = fit.slope(Mixture::strength);
        double[] sugar = fit.slope(Mixture::sugar);
        double together = Symmetric.between(strength, covariance, sugar);
        return together
                / Math.sqrt(Symmetric.between(strength, covariance, strength)
                        * Symmetric.between(sugar, covariance, sugar));
    }

    /** Returns what is known of the thermometer by the fit that is told first, and how much of its doubt is the thermometer's. */
    Gauged.Warmth warmth(Thermometer thermometer) {
        Fit fit = possible.get(0);
        double[][] covariance = fit.covariance();
        double middle = thermometer.sigma() * fit.unknowns()[Vessel.THERMOMETER_ERROR];
        double variance = covariance[Vessel.THERMOMETER_ERROR][Vessel.THERMOMETER_ERROR];
        double half = Mixture.CENTRAL_90 * thermometer.sigma() * Math.sqrt(variance);
        return new Gauged.Warmth(
                thermometer,
                new Interval(middle, middle - half, middle + half),
                ofThermometer(fit, covariance, Mixture::strength),
                ofThermometer(fit, covariance, Mixture::sugar));
    }

    /** Returns what of the half-width of a figure would go if the thermometer were known to be right. */
    private static double ofThermometer(Fit fit, double[][] covariance, ToDoubleFunction<Mixture> figure) {
        double[] error = new double[Vessel.UNKNOWNS];
        error[Vessel.THERMOMETER_ERROR] = 1.0;
        double together = Symmetric.between(fit.slope(figure), covariance, error);
        double variance = covariance[Vessel.THERMOMETER_ERROR][Vessel.THERMOMETER_ERROR];
        return Mixture.CENTRAL_90 * Math.abs(together) / Math.sqrt(variance);
    }

    private Interval interval(ToDoubleFunction<Mixture> figure) {
        double value = figure.applyAsDouble(possible.get(0).mixture());
        double low = value;
        double high = value;
        for (Fit fit : possible) {
            double[] slope = fit.slope(figure);
            double half = Mixture.CENTRAL_90 * Math.sqrt(Symmetric.between(slope, fit.covariance(), slope));
            double middle = figure.applyAsDouble(fit.mixture());
            low = Math.min(low, middle - half);
            high = Math.max(high, middle + half);
        }
        return new Interval(value, Math.max(0.0, low), high);
    }
}
