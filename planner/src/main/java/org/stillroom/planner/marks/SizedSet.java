package org.stillroom.planner.marks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Source;

/**
 * Measures that are filled to the brim or to a line: jiggers, spoons, cups; any of them several times.
 *
 * @param name what the maker calls the set
 * @param sizes what each holds, largest first
 * @param perPour half-width of the error of one pour, mL, where the maker said it; else 0
 * @param part half-width of the error as a part of the amount
 * @param source of that part, or null when the maker said the tolerance
 */
record SizedSet(
        String name,
        List<Typed<Volume>> sizes,
        Pour perPour,
        double part,
        @Nullable Source source) implements Instrument {
    /** Beside the largest size, no more pours than this are counted out. */
    private static final int SMALL_POURS = 4;

    private static final double SAME_MILLILITRES = 1e-6;

    SizedSet {
        sizes = sizes.stream()
                .sorted(Comparator.comparingDouble(
                        (Typed<Volume> size) -> -size.value().millilitres()))
                .toList();
    }

    /** The error of one pour, mL. */
    record Pour(double millilitres) {}

    /** How often each size is filled. */
    @SuppressWarnings("ArrayRecordComponent") // counts of the search, never compared, never leaving the class
    private record Combination(int[] times, double millilitres, int pours) {}

    @Override
    public boolean canTake(Portion portion) {
        return portion.gramsPerMillilitre().isPresent();
    }

    @Override
    public List<Take> near(Portion portion, int eachSide) {
        double wanted = portion.grams() / portion.gramsPerMillilitre().orElseThrow();
        List<Combination> all = combinations(wanted);
        List<Combination> near = new ArrayList<>();
        int first = 0;
        while (first < all.size() && all.get(first).millilitres() < wanted - SAME_MILLILITRES) {
            first++;
        }
        boolean same = first < all.size() && all.get(first).millilitres() <= wanted + SAME_MILLILITRES;
        int from = Math.max(0, first - eachSide);
        int to = Math.min(all.size(), first + eachSide + (same ? 1 : 0));
        near.addAll(all.subList(from, to));
        double half = 0.5 * smallestStep(near);
        return near.stream().map(each -> take(portion, each, half)).toList();
    }

    private double smallestStep(List<Combination> near) {
        double step = sizes.get(sizes.size() - 1).value().millilitres();
        for (int i = 1; i < near.size(); i++) {
            step = Math.min(step, near.get(i).millilitres() - near.get(i - 1).millilitres());
        }
        return step;
    }

    /** Returns the sums that can be poured near an amount, smallest first, each with the fewest pours. */
    private List<Combination> combinations(double wanted) {
        double largest = sizes.get(0).value().millilitres();
        int base = Math.toIntExact((long) Math.max(0.0, Math.floor(wanted / largest) - 1.0));
        int[] times = new int[sizes.size()];
        times[0] = base;
        List<Combination> found = new ArrayList<>();
        add(0, times, SMALL_POURS, found);
        found.sort(Comparator.comparingDouble(Combination::millilitres).thenComparingInt(Combination::pours));
        List<Combination> distinct = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (Combination each : found) {
            if (each.millilitres() > last + SAME_MILLILITRES) {
                distinct.add(each);
                last = each.millilitres();
            }
        }
        return distinct;
    }

    private void add(int size, int[] times, int left, List<Combination> found) {
        if (size == sizes.size()) {
            found.add(combination(times.clone()));
            return;
        }
        for (int more = 0; more <= left; more++) {
            times[size] += more;
            add(size + 1, times, left - more, found);
            times[size] -= more;
        }
    }

    private Combination combination(int[] times) {
        double millilitres = 0.0;
        int pours = 0;
        for (int i = 0; i < times.length; i++) {
            millilitres += times[i] * sizes.get(i).value().millilitres();
            pours += times[i];
        }
        return new Combination(times, millilitres, pours);
    }

    private Take take(Portion portion, Combination combination, double halfStep) {
        List<Reading.Filling> fillings = new ArrayList<>();
        String unit = "mL";
        double unitMillilitres = 1.0;
        for (int i = 0; i < sizes.size(); i++) {
            if (combination.times()[i] > 0) {
                fillings.add(
                        new Reading.Filling(combination.times()[i], sizes.get(i).text()));
            }
        }
        for (int i = sizes.size() - 1; i >= 0; i--) {
            String whole = Pours.wholeUnit(sizes.get(i).text());
            double each = sizes.get(i).value().millilitres();
            if (!whole.isEmpty() && (unit.equals("mL") || each <= combination.millilitres())) {
                unit = whole;
                unitMillilitres = each;
            }
        }
        double volume = combination.millilitres();
        String words = fillings.isEmpty() ? "none" : Pours.inWords(fillings);
        Reading reading = Reading.rounded(new Volume(volume), volume / unitMillilitres, unit, name, fillings, words);
        double fixed = perPour.millilitres() * combination.pours();
        double density = portion.gramsPerMillilitre().orElseThrow();
        double error = Math.max(fixed, part * volume);
        return new Take(reading, volume * density, error * density, halfStep * density, true, source);
    }
}
