package org.stillroom.core.batch;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.liquid.Contents;

/**
 * How far what a vessel holds may be off: what each label, measure and reading changes at the end of its range, each independent of the
 * others. What is off in two vessels alike, since one was poured from the other, goes by one name, so that it is off alike when they meet
 * again.
 */
public final class Slips {
    /** Nothing is off. */
    public static final Slips NONE = new Slips(Map.of(), true);
    /** Nobody knows how far it is off. */
    public static final Slips UNKNOWN = new Slips(Map.of(), false);

    /** Part of a slip by which what happens is tried, so that it is followed by its slope. */
    private static final double TRIED = 1e-3;

    /** Stands between whose slip it is and what it is called. */
    static final String OF = ": ";

    private final Map<String, double[]> atItsEnd;
    private final boolean known;

    private Slips(Map<String, double[]> atItsEnd, boolean known) {
        this.atItsEnd = atItsEnd;
        this.known = known;
    }

    /**
     * Returns slips of what was poured.
     *
     * @param of tells the slips of one vessel from those of others
     */
    public static Slips of(String of, List<Poured.Slip> slips) {
        Slips all = NONE;
        for (Poured.Slip slip : slips) {
            all = all.plus(of(of + OF + slip.what(), slip.atItsEnd()));
        }
        return all;
    }

    /** Returns one slip, grams of each substance at the end of its range. */
    static Slips of(String name, double[] atItsEnd) {
        Map<String, double[]> one = new TreeMap<>();
        one.put(name, atItsEnd.clone());
        return new Slips(one, true);
    }

    /** Returns one slip: so much of a liquid more or less. */
    static Slips of(String name, Contents liquid, double part) {
        return of(name, scaled(liquid.toGrams(), part));
    }

    /** Returns one slip: what lies between two liquids. */
    static Slips between(String name, Contents one, Contents other) {
        return of(name, minus(other.toGrams(), one.toGrams()));
    }

    /** Returns whether it is known how far all of it may be off. */
    public boolean isKnown() {
        return known;
    }

    /** Returns them one by one, as the maker would call them. */
    public List<Poured.Slip> all() {
        return atItsEnd.entrySet().stream()
                .map(slip -> new Poured.Slip(
                        slip.getKey().substring(slip.getKey().indexOf(OF) + OF.length()),
                        slip.getValue().clone()))
                .toList();
    }

    Slips plus(Slips other) {
        Map<String, double[]> both = new TreeMap<>(atItsEnd);
        other.atItsEnd.forEach((name, grams) -> both.merge(name, grams, (one, more) -> minus(one, scaled(more, -1.0))));
        return new Slips(both, known && other.known);
    }

    Slips minus(Slips other) {
        return plus(other.times(-1.0));
    }

    Slips times(double part) {
        Map<String, double[]> scaled = new TreeMap<>();
        atItsEnd.forEach((name, grams) -> scaled.put(name, scaled(grams, part)));
        return new Slips(scaled, known);
    }

    /**
     * Returns what becomes of them when something happens to the liquid.
     *
     * @param before the liquid that may be so far off
     * @param after what becomes of it
     * @param happens what becomes of any such liquid
     */
    Slips through(Contents before, Contents after, UnaryOperator<Contents> happens) {
        Map<String, double[]> moved = new TreeMap<>();
        atItsEnd.forEach((name, grams) -> {
            try {
                Contents tried = happens.apply(shifted(before, grams));
                moved.put(name, scaled(minus(tried.toGrams(), after.toGrams()), 1.0 / TRIED));
            } catch (CannotHaveHappened beyond) {
                moved.put(name, grams); // at the edge of what can be: as far off as before
            }
        });
        return new Slips(moved, known);
    }

    /** Returns the same, known for all of it. */
    Slips asKnown() {
        return new Slips(atItsEnd, true);
    }

    private static Contents shifted(Contents before, double[] grams) {
        double[] shifted = before.toGrams();
        for (int i = 0; i < shifted.length; i++) {
            shifted[i] = Math.max(0.0, shifted[i] + TRIED * grams[i]);
        }
        return Contents.ofGrams(shifted);
    }

    private static double[] minus(double[] grams, double[] less) {
        double[] left = grams.clone();
        for (int i = 0; i < left.length; i++) {
            left[i] -= less[i];
        }
        return left;
    }

    private static double[] scaled(double[] grams, double part) {
        double[] scaled = grams.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= part;
        }
        return scaled;
    }

    @Override
    public boolean equals(Object other) {
        if (!(other instanceof Slips slips)
                || known != slips.known
                || !atItsEnd.keySet().equals(slips.atItsEnd.keySet())) {
            return false;
        }
        return atItsEnd.entrySet().stream()
                .allMatch(slip ->
                        Arrays.equals(slip.getValue(), slips.atItsEnd.getOrDefault(slip.getKey(), new double[0])));
    }

    @Override
    public int hashCode() {
        return atItsEnd.keySet().hashCode();
    }
}
