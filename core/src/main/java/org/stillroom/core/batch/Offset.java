package org.stillroom.core.batch;

import java.util.List;
import java.util.Optional;

/**
 * By how much what is measured differs from what was reckoned, learned from several batches.
 *
 * <p>The mean of the differences; its doubt is the half-width of the central 90 % of the mean by Student's t, which takes the batches as
 * independent of each other.
 *
 * @param mean measured less reckoned
 * @param halfWidth of the central 90 %
 * @param batches how many it is learned from
 */
public record Offset(double mean, double halfWidth, int batches) {
    /** Quantiles of Student's t at 0.95 for 1 to 10 degrees of freedom; beyond, that of 10 is taken. Source: t tables, from memory. */
    private static final double[] T_95 = {6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833, 1.812};

    /** Returns what differences tell; empty below two, which leave its doubt open. */
    public static Optional<Offset> of(List<Double> differences) {
        int n = differences.size();
        if (n < 2) {
            return Optional.empty();
        }
        double mean = differences.stream().mapToDouble(each -> each).sum() / n;
        double squares = differences.stream()
                .mapToDouble(each -> (each - mean) * (each - mean))
                .sum();
        double t = T_95[Math.min(n - 1, T_95.length) - 1];
        return Optional.of(new Offset(mean, t * Math.sqrt(squares / (n - 1) / n), n));
    }

    /** Returns whether it differs from nothing by more than its doubt. */
    public boolean isClear() {
        return Math.abs(mean) > halfWidth;
    }
}
