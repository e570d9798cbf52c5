package org.stillroom.core.extraction;

import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Bounded;
import org.stillroom.core.quantity.QuantityWords;

/**
 * The extraction that fits a maker's own samples, c = c∞·(1 − e^(−k·t)) by least squares, and what they leave open.
 *
 * <p>For each k the best c∞ is linear, so k alone is searched. In doubt is every k whose squares are at most S + t²·s², with S the least
 * squares, s² = S/(n − 2) and Student's t: the profile that linear curvature only sketches, so that it says by itself where samples
 * bound the rate to no side. Source: D. M. Bates, D. G. Watts, Nonlinear Regression Analysis and Its Applications, 1988, chapter 6
 * (profile t; from memory).
 *
 * @param shape what the samples show
 * @param steeping the rate, or null where they leave it open: where they are straight, or stand
 * @param end c∞ in the unit of the samples, its upper bound infinite where no end is seen; null where they are straight
 * @param last the last day
 * @param fallen how far the last sample lies below the highest, as a part of that, 0 to 1
 */
public record SteepingFit(
        Shape shape, @Nullable Steeping steeping, @Nullable Bounded end, double last, double fallen) {
    /** What samples show of the end that they go to. */
    public enum Shape {
        /** They level off, and bound the end. */
        LEVELS_OFF,
        /** The best fit has an end, but a straight line does as well within their scatter. */
        END_IN_DOUBT,
        /** They rise as a straight line does, or ever faster: no end is seen. */
        STRAIGHT,
        /** They stand still from the first: what there is to gain had come before. */
        STANDS
    }

    /** A reading repeats no better than to this part of itself, as one standard deviation. Own estimate. */
    static final double REPEATS = 0.01;
    /** What lies further below the highest than this has fallen, and is no scatter. Own estimate. */
    public static final double FALLS = 0.05;
    /** Samples that reached less than this part of the end that fits them best tell none. Own judgement. */
    private static final double SEEN = 0.1;
    /** Samples of which the first had come so far stand still. Own judgement. */
    private static final double ALL = 0.99;

    private static final int FEWEST = 3;
    private static final int STEPS = 600;
    private static final int HALVINGS = 60;

    /** A sample: what was found, in any unit, after so many days. */
    public record Sample(double days, double found) {
        public Sample {
            if (!(days > 0.0 && days < 1e5 && found > 0.0 && found < 1e12)) {
                throw new IllegalArgumentException(
                        "a sample is above zero after some time, not " + found + " after " + days + " days");
            }
        }
    }

    /**
     * Returns what fits samples.
     *
     * @throws IllegalArgumentException when they are too few or fall, with a text for people
     */
    public static SteepingFit of(List<Sample> samples) {
        if (samples.size() < FEWEST) {
            throw new IllegalArgumentException("three samples or more tell a rate, not " + samples.size());
        }
        long days = samples.stream().mapToDouble(Sample::days).distinct().count();
        if (days < FEWEST) {
            throw new IllegalArgumentException(
                    "samples of three different days or more tell a rate; these are of " + days);
        }
        List<Sample> inOrder = samples.stream()
                .sorted(Comparator.comparingDouble(Sample::days).thenComparingDouble(Sample::found))
                .toList();
        Search search = new Search(inOrder);
        Sample highest =
                inOrder.stream().max(Comparator.comparingDouble(Sample::found)).orElseThrow();
        Sample last = inOrder.get(inOrder.size() - 1);
        double fallen = 1.0 - last.found() / highest.found();
        if (fallen > FALLS && search.slope() < 0.0) {
            throw new IllegalArgumentException(
                    "the samples fall, from " + said(highest) + " to " + said(last) + ", and an extraction only rises");
        }
        return search.fit(fallen > FALLS ? fallen : 0.0);
    }

    private static String said(Sample sample) {
        return QuantityWords.plain(sample.found()) + " on day " + QuantityWords.plain(sample.days());
    }

    /** The search for the rate, by its logarithm. */
    private static final class Search {
        private final List<Sample> samples;
        private final double from;
        private final double to;
        private final double best;
        private final double allowed;

        Search(List<Sample> inOrder) {
            samples = inOrder;
            from = Math.log(1e-4 / inOrder.get(inOrder.size() - 1).days());
            to = Math.log(40.0 / inOrder.get(0).days());
            double step = (to - from) / STEPS;
            double least = from;
            for (int i = 1; i <= STEPS; i++) {
                double at = from + i * step;
                least = squares(at) < squares(least) ? at : least;
            }
            best = golden(Math.max(from, least - step), Math.min(to, least + step));
            int free = inOrder.size() - 2;
            double highest = inOrder.stream().mapToDouble(Sample::found).max().orElseThrow();
            double variance = Math.max(squares(best) / free, Math.pow(REPEATS * highest, 2));
            allowed = squares(best) + Math.pow(Student.central90(free), 2) * variance;
        }

        SteepingFit fit(double fallen) {
            double last = samples.get(samples.size() - 1).days();
            double rate = Math.exp(best);
            double slowest = openBelow() ? 0.0 : Math.exp(edge(from));
            double quickest = openAbove() ? Double.POSITIVE_INFINITY : Math.exp(edge(to));
            if (Steeping.gone(rate * last) < SEEN) {
                return new SteepingFit(Shape.STRAIGHT, null, null, last, fallen);
            }
            Bounded end = ends(rate);
            if (Steeping.gone(rate * samples.get(0).days()) > ALL) {
                return new SteepingFit(Shape.STANDS, null, end, last, fallen);
            }
            Shape shape = openBelow() ? Shape.END_IN_DOUBT : Shape.LEVELS_OFF;
            return new SteepingFit(shape, new Steeping(rate, slowest, quickest), end, last, fallen);
        }

        /** Returns c∞ with its bounds: of every k, what is off by so much that the squares come to what is allowed. */
        private Bounded ends(double rate) {
            double least = end(rate);
            double most = end(rate);
            for (int i = 0; i <= STEPS; i++) {
                double at = from + i * (to - from) / STEPS;
                double room = allowed - squares(at);
                if (room >= 0.0) {
                    double off = Math.sqrt(room / weight(Math.exp(at)));
                    least = Math.min(least, end(Math.exp(at)) - off);
                    most = Math.max(most, end(Math.exp(at)) + off);
                }
            }
            return new Bounded(end(rate), Math.max(0.0, least), openBelow() ? Double.POSITIVE_INFINITY : most);
        }

        private double weight(double rate) {
            return samples.stream()
                    .mapToDouble(each -> Math.pow(Steeping.gone(rate * each.days()), 2))
                    .sum();
        }

        private boolean openBelow() {
            return squares(from) <= allowed;
        }

        private boolean openAbove() {
            return squares(to) <= allowed;
        }

        /** Returns where the squares leave what is allowed, between the best and the outermost. */
        private double edge(double outermost) {
            DoublePredicate inside = at -> squares(at) <= allowed;
            double in = best;
            double out = outermost;
            for (int i = 0; i < HALVINGS; i++) {
                double middle = 0.5 * (in + out);
                if (inside.test(middle)) {
                    in = middle;
                } else {
                    out = middle;
                }
            }
            return in;
        }

        private double golden(double first, double second) {
            double part = 0.5 * (Math.sqrt(5.0) - 1.0);
            double low = first;
            double high = second;
            for (int i = 0; i < HALVINGS; i++) {
                double left = high - part * (high - low);
                double right = low + part * (high - low);
                if (squares(left) < squares(right)) {
                    high = right;
                } else {
                    low = left;
                }
            }
            return 0.5 * (low + high);
        }

        private double squares(double logRate) {
            double rate = Math.exp(logRate);
            double end = end(rate);
            double sum = 0.0;
            for (Sample sample : samples) {
                double off = sample.found() - end * Steeping.gone(rate * sample.days());
                sum += off * off;
            }
            return sum;
        }

        private double end(double rate) {
            double product = samples.stream()
                    .mapToDouble(each -> Steeping.gone(rate * each.days()) * each.found())
                    .sum();
            return product / weight(rate);
        }

        /** Returns the slope of the straight line that fits best, per day. */
        double slope() {
            double days = samples.stream().mapToDouble(Sample::days).average().orElseThrow();
            double found = samples.stream().mapToDouble(Sample::found).average().orElseThrow();
            double product = 0.0;
            double square = 0.0;
            for (Sample sample : samples) {
                product += (sample.days() - days) * (sample.found() - found);
                square += Math.pow(sample.days() - days, 2);
            }
            return product / square;
        }
    }
}
