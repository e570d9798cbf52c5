package org.stillroom.planner.marks;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Source;

/**
 * An instrument with evenly spaced marks: scale, cylinder, syringe, lined jigger or jug.
 *
 * @param name what the maker calls it
 * @param weighs whether the marks are grams, else they are millilitres
 * @param step from mark to mark, g or mL
 * @param holds the most it takes at once, g or mL; infinite when that was not said
 * @param tolerance half-width of the error of one filling
 * @param source of the tolerance, or null when the maker said it
 */
record Graduated(
        String name,
        boolean weighs,
        double step,
        double holds,
        Tolerance tolerance,
        @Nullable Source source) implements Instrument {
    private static final double ON_THE_MARK = 1e-9;

    /**
     * The error of one filling: the larger of the two.
     *
     * @param fixed g or mL
     * @param part of the amount
     */
    record Tolerance(double fixed, double part) {}

    @Override
    public boolean canTake(Portion portion) {
        return weighs || portion.gramsPerMillilitre().isPresent();
    }

    @Override
    public List<Take> near(Portion portion, int eachSide) {
        double marks = portion.grams() / gramsPerMark(portion);
        long below = (long) Math.floor(marks + ON_THE_MARK * Math.max(1.0, marks));
        boolean onTheMark = marks - below <= ON_THE_MARK * Math.max(1.0, marks);
        long lowest = below - eachSide + (onTheMark ? 0 : 1);
        List<Take> takes = new ArrayList<>();
        for (long mark = Math.max(0, lowest); mark <= below + eachSide; mark++) {
            takes.add(take(portion, mark));
        }
        return takes;
    }

    private double gramsPerMark(Portion portion) {
        return step * gramsPerUnit(portion);
    }

    private double gramsPerUnit(Portion portion) {
        return weighs ? 1.0 : portion.gramsPerMillilitre().orElseThrow();
    }

    private Take take(Portion portion, long mark) {
        double value = onDecimals(mark * step);
        List<Reading.Filling> fillings = fillings(mark);
        Amount amount = weighs ? new Mass(value) : new Volume(value);
        Reading reading = Reading.rounded(amount, value, unit(), name, fillings, words(fillings));
        int times = Math.max(1, reading.timesFilled());
        double fixed = tolerance.fixed() * times;
        double error = Math.max(fixed, tolerance.part() * value);
        double perUnit = gramsPerUnit(portion);
        return new Take(reading, value * perUnit, error * perUnit, 0.5 * step * perUnit, error > fixed, source);
    }

    private List<Reading.Filling> fillings(long mark) {
        long marksHeld = holds < Double.POSITIVE_INFINITY ? (long) Math.floor(holds / step + 1e-9) : Long.MAX_VALUE;
        List<Reading.Filling> fillings = new ArrayList<>();
        long full = mark / Math.max(1, marksHeld);
        if (full > 0) {
            fillings.add(new Reading.Filling(Math.toIntExact(full), text(marksHeld * step)));
        }
        long rest = mark - full * marksHeld;
        if (rest > 0) {
            fillings.add(new Reading.Filling(1, text(rest * step)));
        }
        return fillings;
    }

    /** An amount below the first mark is not nothing, though the instrument shows nothing of it. */
    private String words(List<Reading.Filling> fillings) {
        return fillings.isEmpty() ? "less than " + text(step) : Pours.inWords(fillings);
    }

    private String unit() {
        return weighs ? "g" : "mL";
    }

    private String text(double value) {
        return QuantityWords.fixed(value, decimals()) + " " + unit();
    }

    private int decimals() {
        String shortest = QuantityWords.plain(step);
        int point = shortest.indexOf('.');
        int places = point < 0 ? 0 : shortest.length() - point - 1;
        return shortest.endsWith(".0") ? 0 : Math.min(places, 6);
    }

    /** Takes off what binary fractions add: 7123 × 0.1 g is 712.3 g. */
    private double onDecimals(double value) {
        double unit = Math.pow(10.0, 6);
        return Math.rint(value * unit) / unit;
    }
}
