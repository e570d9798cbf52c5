package org.stillroom.planner.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Oils of a shelf that come nearest to a profile of constituents.
 *
 * @param amounts of each oil of the shelf, in the unit of the profile, in the order of the shelf
 * @param compared what was wanted and what comes, by constituent
 * @param missed root of the squares of what is off over that of what was wanted, weighted, 0 to 1
 */
public record Matching(List<Double> amounts, List<Compared> compared, double missed) {
    /**
     * An oil of the shelf.
     *
     * @param parts of it by CAS number, 0 to 1
     */
    public record OnShelf(String name, Map<String, Double> parts) {}

    /** A constituent: how much was wanted, and how much comes. */
    public record Compared(String cas, double wanted, double comes) {}

    /**
     * A bound on what is taken together.
     *
     * @param perUnit what a unit of each oil of the shelf counts, in the order of the shelf, zero or more
     * @param most that they may come to, zero or more
     */
    public record Bound(List<Double> perUnit, double most) {
        public Bound {
            perUnit = List.copyOf(perUnit);
            if (!(most >= 0.0 && perUnit.stream().allMatch(each -> each >= 0.0))) {
                throw new IllegalArgumentException("a bound counts from zero up, not " + perUnit + " to " + most);
            }
        }

        /** Returns whether amounts come to what is allowed, but for rounding. */
        public boolean isReachedBy(List<Double> amounts) {
            return sum(amounts) > most * (1.0 - 1e-6);
        }

        /** Returns what amounts come to. */
        public double sum(List<Double> amounts) {
            double sum = 0.0;
            for (int j = 0; j < amounts.size(); j++) {
                sum += perUnit.get(j) * amounts.get(j);
            }
            return sum;
        }
    }

    /**
     * Returns the nearest within bounds.
     *
     * @param wanted amounts by CAS number
     * @param weights by CAS number, how much a unit of it counts; 1 where none is given
     * @param bounds on the oils that are taken; may be none
     */
    public static Matching of(
            Map<String, Double> wanted, List<OnShelf> shelf, Map<String, Double> weights, List<Bound> bounds) {
        TreeSet<String> keys = new TreeSet<>(wanted.keySet());
        shelf.forEach(oil -> keys.addAll(oil.parts().keySet()));
        List<String> order = List.copyOf(keys);
        double[] b = weighted(wanted, order, weights);
        double[][] columns =
                shelf.stream().map(oil -> weighted(oil.parts(), order, weights)).toArray(double[][]::new);
        double[] x = Bounded.leastSquares(columns, b, bounds);
        List<Double> amounts = new ArrayList<>();
        Map<String, Double> comes = new TreeMap<>();
        for (int j = 0; j < x.length; j++) {
            double amount = x[j];
            amounts.add(amount);
            shelf.get(j).parts().forEach((cas, part) -> comes.merge(cas, part * amount, Double::sum));
        }
        double[] off = weighted(comes, order, weights);
        for (int i = 0; i < off.length; i++) {
            off[i] -= b[i];
        }
        List<Compared> compared = order.stream()
                .map(cas -> new Compared(cas, wanted.getOrDefault(cas, 0.0), comes.getOrDefault(cas, 0.0)))
                .toList();
        return new Matching(amounts, compared, Math.sqrt(NonNegative.dot(off, off) / NonNegative.dot(b, b)));
    }

    private static double[] weighted(Map<String, Double> amounts, List<String> order, Map<String, Double> weights) {
        double[] values = new double[order.size()];
        for (int i = 0; i < values.length; i++) {
            String cas = order.get(i);
            values[i] = amounts.getOrDefault(cas, 0.0) * weights.getOrDefault(cas, 1.0);
        }
        return values;
    }
}
