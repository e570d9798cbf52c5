package org.stillroom.planner.drops;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * An essence in whole drops.
 *
 * @param drops of each oil, in the order asked
 * @param errors of each oil: its part of the essence over what was wanted, less 1
 * @param grams of all oils together
 * @param batches it serves in full
 * @param leftOver essence that stays, mL
 * @param leftOverSteps the same in tenths of a mark: less than that no measure shows
 * @param toleranceKept whether every error is within the tolerance asked
 */
public record Choice(
        List<Integer> drops,
        List<Double> errors,
        double grams,
        int batches,
        double leftOver,
        long leftOverSteps,
        boolean toleranceKept) {
    /** The better first: what is left over, then the size, then the error; drops last, so that no two are equal. */
    static final Comparator<Choice> BETTER_FIRST = Comparator.comparingLong(Choice::leftOverSteps)
            .thenComparingInt(Choice::batches)
            .thenComparingDouble(Choice::worstError)
            .thenComparing(choice -> choice.drops().toString());

    /** Where no choice keeps the tolerance, the nearest to it comes first. */
    static final Comparator<Choice> NEARER_FIRST =
            Comparator.comparingDouble(Choice::worstError).thenComparing(BETTER_FIRST);

    /** What binary fractions may miss of a whole number of batches or steps. */
    private static final double WHOLE = 1e-9;

    public Choice {
        drops = List.copyOf(drops);
        errors = List.copyOf(errors);
    }

    /** Returns the choice that these drops make; they hold the oils of one batch at least. */
    static Choice of(Essence essence, List<Integer> drops) {
        List<OilDrop> oils = essence.oils();
        double grams = 0.0;
        for (int i = 0; i < oils.size(); i++) {
            grams += drops.get(i) * oils.get(i).gramsPerDrop();
        }
        double all = grams;
        List<Double> errors = new ArrayList<>();
        for (int i = 0; i < oils.size(); i++) {
            OilDrop oil = oils.get(i);
            errors.add(drops.get(i) * oil.gramsPerDrop() / (all * oil.part()) - 1.0);
        }
        double serves = all / essence.gramsPerBatch();
        int batches = (int) Math.floor(serves + WHOLE);
        double leftOver = Math.max(0.0, serves - batches) * essence.dose();
        long steps = steps(essence, leftOver);
        boolean kept = errors.stream().allMatch(error -> Math.abs(error) <= essence.tolerance() + WHOLE);
        return new Choice(drops, errors, all, batches, leftOver, steps, kept);
    }

    static long steps(Essence essence, double leftOver) {
        return (long) Math.floor(leftOver / (0.1 * essence.mark()) + WHOLE);
    }

    /** Returns the largest error of an oil, as part of what was wanted. */
    public double worstError() {
        return errors.stream().mapToDouble(Math::abs).max().orElse(0.0);
    }

    /** Returns the volume of the whole essence, mL: so much that each dose carries what a batch takes. */
    public double essenceMillilitres(Essence essence) {
        return grams / essence.gramsPerBatch() * essence.dose();
    }
}
