package org.stillroom.planner.drops;

import java.util.List;

/**
 * What is asked of an essence of several oils in fixed proportion.
 *
 * @param oils with their parts of the mass, together 1
 * @param gramsPerBatch all oils together that one batch takes
 * @param dose of the essence that one batch takes, mL, a whole number of marks
 * @param mark the least step of the measure that doses it, mL
 * @param tolerance how far an oil's part of the essence may lie from what is wanted, as part of it
 * @param mostBatches how many batches the essence may serve at most
 */
public record Essence(
        List<OilDrop> oils, double gramsPerBatch, double dose, double mark, double tolerance, int mostBatches) {
    public Essence {
        oils = List.copyOf(oils);
        double sum = oils.stream().mapToDouble(OilDrop::part).sum();
        if (!(Math.abs(sum - 1.0) < 1e-9)) {
            throw new IllegalArgumentException("the parts of the oils add up to 1, not to " + sum);
        }
        if (!(gramsPerBatch > 0.0 && dose > 0.0 && mark > 0.0)) {
            throw new IllegalArgumentException("oils per batch, dose and mark lie above zero, not at " + gramsPerBatch
                    + " g, " + dose + " mL, " + mark + " mL");
        }
        if (!(tolerance >= 0.0 && tolerance < 1.0 && mostBatches >= 1)) {
            throw new IllegalArgumentException("a tolerance lies from 0 to below 1 and batches are 1 or more, not "
                    + tolerance + " and " + mostBatches);
        }
    }

    /** Returns the drops of each oil that one batch would want, mostly no whole ones. */
    public List<Double> dropsPerBatch() {
        return oils.stream()
                .map(oil -> oil.part() * gramsPerBatch / oil.gramsPerDrop())
                .toList();
    }

    Essence within(double otherTolerance) {
        return new Essence(oils, gramsPerBatch, dose, mark, otherTolerance, mostBatches);
    }

    Essence upTo(int batches) {
        return new Essence(oils, gramsPerBatch, dose, mark, tolerance, batches);
    }

    Essence of(List<OilDrop> others) {
        return new Essence(others, gramsPerBatch, dose, mark, tolerance, 1);
    }
}
