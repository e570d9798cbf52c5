package org.stillroom.core.extraction;

import java.util.List;

/**
 * How strong an extract is beside the one that a recipe was written for, by what it holds or by comparison.
 *
 * @param times so many times as strong as the recipe's
 * @param byFactor half-width of the central 90 % of it, by a factor: times/f to times·f; 1 where it is arithmetic
 */
public record ExtractStrength(double times, double byFactor) {
    /** What two samples must differ by to be told apart: 0.15 to 0.30 of the stronger for smells, 0.3 for caffeine's bitterness; from memory. */
    public static final double ONE_COMPARISON = 1.3;

    public ExtractStrength {
        if (!(times > 0.0 && times < Double.POSITIVE_INFINITY && byFactor >= 1.0)) {
            throw new IllegalArgumentException(
                    "an extract is more than 0 times as strong as another, and its doubt 1 or more, not " + times
                            + " and " + byFactor);
        }
    }

    /** An amount of the recipe's extract that was found to do as much as an amount of the other, in one unit. */
    public record Comparison(double ofRecipe, double ofOther) {}

    /** Returns the strength by content: drug–extract ratio, or a constituent, both in one unit. */
    public static ExtractStrength byContent(double ofRecipe, double ofOther) {
        return new ExtractStrength(ofOther / ofRecipe, 1.0);
    }

    /**
     * Returns the strength by comparisons of the maker's own: their geometric mean, in doubt by their spread and never less than one
     * comparison among so many.
     *
     * @param comparisons one at least
     */
    public static ExtractStrength byComparison(List<Comparison> comparisons) {
        double mean = comparisons.stream()
                .mapToDouble(each -> Math.log(each.ofRecipe() / each.ofOther()))
                .average()
                .orElseThrow(() -> new IllegalArgumentException("one comparison at least is wanted"));
        int count = comparisons.size();
        double half = Math.log(ONE_COMPARISON) / Math.sqrt(count);
        if (count > 1) {
            double squares = comparisons.stream()
                    .mapToDouble(each -> Math.pow(Math.log(each.ofRecipe() / each.ofOther()) - mean, 2))
                    .sum();
            half = Math.max(half, Student.central90(count - 1) * Math.sqrt(squares / (count - 1) / count));
        }
        return new ExtractStrength(Math.exp(mean), Math.exp(half));
    }

    /** Returns what a dose of the recipe's extract becomes. */
    public double dose(double ofRecipe) {
        return ofRecipe / times;
    }
}
