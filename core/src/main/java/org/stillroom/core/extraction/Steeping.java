package org.stillroom.core.extraction;

import java.util.List;

/**
 * How far an extraction has come in time: first order, c = c∞·(1 − e^(−k·t)).
 *
 * <p>Rates of the table are derived from the times after which handbooks stop: an order of magnitude, to plan tasting days by. Samples
 * of the maker's own do better.
 *
 * @param perDay k
 * @param perDayDoubt half-width of the central 90 % of k, by a factor: k/f to k·f
 * @param end c∞ in the unit of the samples, 1 where there are none
 */
public record Steeping(double perDay, double perDayDoubt, double end) {
    /** How far a rate of the table may be off, by a factor; own estimate. */
    public static final double WEAK = 3.0;

    /** Activation energy, J/mol, middle of 20 to 35 kJ/mol, from memory. */
    private static final double ACTIVATION = 27_500.0;

    private static final double GAS_CONSTANT = 8.314;
    private static final double ROOM_KELVIN = 293.15;
    private static final int FEWEST = 3;

    /** A sample: what was found, in any unit, after so many days. */
    public record Sample(double days, double found) {
        public Sample {
            if (!(days > 0.0 && days < 1e5 && found > 0.0 && found < 1e12)) {
                throw new IllegalArgumentException(
                        "a sample is above zero after some time, not " + found + " after " + days + " days");
            }
        }
    }

    /** Returns how a sort of plant gives at a temperature, °C. */
    public static Steeping of(PlantSort sort, double celsius) {
        double kelvin = celsius + 273.15;
        double warmth = Math.exp(-ACTIVATION / GAS_CONSTANT * (1.0 / kelvin - 1.0 / ROOM_KELVIN));
        return new Steeping(sort.perDay() * warmth, WEAK, 1.0);
    }

    /**
     * Returns the rate that fits samples best by least squares: for each k the best c∞ is linear, so k alone is searched.
     *
     * @throws IllegalArgumentException when there are fewer than three samples, with a text for people
     */
    public static Steeping fitted(List<Sample> samples) {
        if (samples.size() < FEWEST) {
            throw new IllegalArgumentException("three samples or more tell a rate, not " + samples.size());
        }
        double low = Math.log(1e-3);
        double high = Math.log(100.0);
        double step = (high - low) / 200.0;
        double best = low;
        for (double at = low; at <= high; at += step) {
            best = squares(samples, at) < squares(samples, best) ? at : best;
        }
        double narrow = golden(samples, best - step, best + step);
        return new Steeping(Math.exp(narrow), factor(samples, narrow), end(samples, Math.exp(narrow)));
    }

    private static double golden(List<Sample> samples, double from, double to) {
        double part = 0.5 * (Math.sqrt(5.0) - 1.0);
        double low = from;
        double high = to;
        for (int i = 0; i < 60; i++) {
            double left = high - part * (high - low);
            double right = low + part * (high - low);
            if (squares(samples, left) < squares(samples, right)) {
                high = right;
            } else {
                low = left;
            }
        }
        return 0.5 * (low + high);
    }

    /** Half-width of ln k by the curvature of the squares, 1.645 standard deviations; ten where the samples tell nothing. */
    private static double factor(List<Sample> samples, double logRate) {
        double h = 0.01;
        double least = squares(samples, logRate);
        double curvature = (squares(samples, logRate + h) - 2.0 * least + squares(samples, logRate - h)) / (h * h);
        double variance = least / (samples.size() - 2);
        double half = curvature > 0.0 ? 1.645 * Math.sqrt(2.0 * variance / curvature) : Double.POSITIVE_INFINITY;
        return Math.min(10.0, Math.exp(half));
    }

    private static double squares(List<Sample> samples, double logRate) {
        double rate = Math.exp(logRate);
        double end = end(samples, rate);
        double sum = 0.0;
        for (Sample sample : samples) {
            double off = sample.found() - end * gone(rate * sample.days());
            sum += off * off;
        }
        return sum;
    }

    private static double end(List<Sample> samples, double rate) {
        double product = 0.0;
        double square = 0.0;
        for (Sample sample : samples) {
            double gone = gone(rate * sample.days());
            product += gone * sample.found();
            square += gone * gone;
        }
        return product / square;
    }

    private static double gone(double times) {
        return -Math.expm1(-times);
    }

    /** Returns the part that has come after so many days, 0 to 1. */
    public double after(double days) {
        return gone(perDay * days);
    }

    /** Returns the days after which so much has come, a part from 0 to below 1. */
    public double daysTo(double part) {
        return -Math.log1p(-part) / perDay;
    }
}
