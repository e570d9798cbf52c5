package org.stillroom.core.drops;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Runs of drops from a maker's own dropper, each counted and weighed.
 *
 * @param count drops of each run
 * @param grams what each run weighed, in the order of weighing
 * @param readTo the step to which the scale was read, g; 0 where that is not known
 */
public record DropWeighings(int count, List<Double> grams, double readTo) {
    /** Runs from which a spread can be told. */
    public static final int ENOUGH = 3;

    /**
     * How far a run may lie from the middle one before it is taken for a slip of count or scale. From memory: the normal dropper of
     * Ph. Eur. 2.1.1 gives 20 drops of water as 1.000 ± 0.050 g.
     */
    public static final double CONSISTENT = 0.05;

    /** Half-width of the central 90 % of a normal distribution, in standard deviations. */
    private static final double CENTRAL_90 = 1.645;

    /** The same of the two roundings of one weighing, empty and full, each anywhere within half a step: 1 − √0.1 steps. */
    private static final double ROUNDED_90 = 1.0 - Math.sqrt(0.1);

    /** Student's t, 95 % one-sided, by degrees of freedom from 1. */
    private static final double[] STUDENT = {
        6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753
    };

    public DropWeighings {
        if (!(count >= 1 && count <= 10_000)) {
            throw new IllegalArgumentException("a run has 1 to 10000 drops, not " + count);
        }
        grams = List.copyOf(grams);
        if (grams.isEmpty()) {
            throw new IllegalArgumentException("there is no weighing");
        }
        for (double each : grams) {
            if (!(each > 0.0 && each < 1e6)) {
                throw new IllegalArgumentException("a run of drops weighs above 0 g, not " + each + " g");
            }
        }
        if (!(readTo >= 0.0 && readTo < 1e6)) {
            throw new IllegalArgumentException("a scale is read to a step of 0 g or more, not " + readTo + " g");
        }
    }

    /** Returns what a drop weighs on the mean, g. */
    public double gramsPerDrop() {
        return mean() / count;
    }

    private double mean() {
        return grams.stream().mapToDouble(each -> each).sum() / grams.size();
    }

    /** Returns the standard deviation between runs, part of their mean; empty when there are too few. */
    public OptionalDouble spread() {
        if (grams.size() < ENOUGH) {
            return OptionalDouble.empty();
        }
        double mean = mean();
        double squares = 0.0;
        for (double each : grams) {
            squares += (each - mean) * (each - mean);
        }
        return OptionalDouble.of(Math.sqrt(squares / (grams.size() - 1)) / mean);
    }

    /**
     * Returns the half-width of the central 90 % of the spread, part of the mean, as that of a normal sample: s / √(2(n − 1)) is its
     * standard deviation; and no less than what reading the scale leaves open.
     */
    public double spreadDoubt() {
        double ofSample = CENTRAL_90 * spread().orElse(0.0) / Math.sqrt(2.0 * (grams.size() - 1));
        return Math.hypot(ofSample, reading());
    }

    /** Returns what reading the scale leaves open of a run, part of the mean; runs that read alike round alike, so that more of them do not help. */
    private double reading() {
        return ROUNDED_90 * readTo / mean();
    }

    /**
     * Returns the half-width of the central 90 % of the mean, part of it: from the spread of the runs, and never less than half a
     * drop in a run; with too few runs the official allowance. What reading the scale leaves open comes on top.
     */
    public double doubt() {
        OptionalDouble spread = spread();
        if (spread.isEmpty()) {
            return Math.hypot(OfficialDropper.ALLOWANCE, reading());
        }
        int freedom = Math.min(grams.size() - 1, STUDENT.length);
        double ofMean = STUDENT[freedom - 1] * spread.getAsDouble() / Math.sqrt(grams.size());
        return Math.hypot(Math.max(ofMean, 0.5 / count / Math.sqrt(grams.size())), reading());
    }

    /** Returns those that go with the others, where some do not and some do; else empty. */
    public Optional<DropWeighings> consistent() {
        List<Integer> strange = inconsistent();
        List<Double> kept = new ArrayList<>();
        for (int i = 0; i < grams.size(); i++) {
            if (!strange.contains(i + 1)) {
                kept.add(grams.get(i));
            }
        }
        return strange.isEmpty() || kept.isEmpty()
                ? Optional.empty()
                : Optional.of(new DropWeighings(count, kept, readTo));
    }

    /** Returns the runs that do not go with the others, numbered from 1. */
    public List<Integer> inconsistent() {
        List<Double> sorted = new ArrayList<>(grams);
        Collections.sort(sorted);
        int half = sorted.size() / 2;
        double middle = sorted.size() % 2 == 1 ? sorted.get(half) : 0.5 * (sorted.get(half - 1) + sorted.get(half));
        List<Integer> strange = new ArrayList<>();
        for (int i = 0; i < grams.size(); i++) {
            if (Math.abs(grams.get(i) - middle) > CONSISTENT * middle) {
                strange.add(i + 1);
            }
        }
        return strange;
    }
}
