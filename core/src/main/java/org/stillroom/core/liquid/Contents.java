package org.stillroom.core.liquid;

import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is in something: grams of each substance, and of each aroma constituent within its oil.
 *
 * <p>Grams are what adds; volumes do not. Every gram is zero or more.
 */
public final class Contents {
    /** Nothing at all. */
    public static final Contents NONE = new Contents(new double[Substance.COUNT], Map.of());

    private final double[] grams;
    private final Map<String, Double> aroma;

    private Contents(double[] grams, Map<String, Double> aroma) {
        this.grams = grams;
        this.aroma = aroma;
    }

    public static Contents of(Substance substance, double grams) {
        return NONE.with(substance, grams);
    }

    /** Returns the contents given as an array in the order of {@link Substance}. */
    public static Contents ofGrams(double[] grams) {
        if (grams.length != Substance.COUNT) {
            throw new IllegalArgumentException(
                    "grams are wanted of " + Substance.COUNT + " substances, not " + grams.length);
        }
        for (Substance substance : Substance.values()) {
            check(substance, grams[substance.ordinal()]);
        }
        return new Contents(grams.clone(), Map.of());
    }

    private static void check(Substance substance, double amount) {
        if (!(amount >= 0 && amount < 1e12)) {
            throw new IllegalArgumentException(
                    "grams of " + substance.label() + " lie from 0 to below 1e12, not " + amount);
        }
    }

    /**
     * Returns these contents with so much of a substance in place of what there was.
     *
     * @param amount grams, zero or more
     */
    public Contents with(Substance substance, double amount) {
        check(substance, amount);
        double[] changed = grams.clone();
        changed[substance.ordinal()] = amount;
        return new Contents(changed, aroma);
    }

    /**
     * Returns these contents with oil of a known constituent added; the oil as a whole grows with it.
     *
     * @param constituent CAS number
     * @param amount grams, zero or more
     */
    public Contents plusConstituent(String constituent, double amount) {
        Contents more = with(Substance.OIL, grams(Substance.OIL) + amount);
        Map<String, Double> changed = new TreeMap<>(aroma);
        changed.merge(constituent, amount, Double::sum);
        return new Contents(more.grams, Collections.unmodifiableMap(changed));
    }

    /**
     * Returns these contents with what is known of their oil in place of what was: the oil as a whole stays as it is.
     *
     * @param shares part of the oil's mass by CAS number, or by the name of a group of constituents that have none in common;
     *     together at most 1
     */
    public Contents knowingOil(Map<String, Double> shares) {
        Map<String, Double> known = new TreeMap<>();
        shares.forEach((constituent, share) -> known.put(constituent, share * grams(Substance.OIL)));
        return new Contents(grams, Collections.unmodifiableMap(known));
    }

    public Contents plus(Contents other) {
        double[] sum = grams.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += other.grams[i];
        }
        Map<String, Double> both = new TreeMap<>(aroma);
        other.aroma.forEach((constituent, amount) -> both.merge(constituent, amount, Double::sum));
        return new Contents(sum, Collections.unmodifiableMap(both));
    }

    /** Returns so many times these contents; the factor is zero or more. */
    public Contents times(double factor) {
        if (!(factor >= 0 && factor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("contents are multiplied by zero or more, not by " + factor);
        }
        double[] scaled = grams.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        Map<String, Double> scaledAroma = new TreeMap<>();
        aroma.forEach((constituent, amount) -> scaledAroma.put(constituent, amount * factor));
        return new Contents(scaled, Collections.unmodifiableMap(scaledAroma));
    }

    /** Returns the contents of one gram. */
    public Contents perGram() {
        return times(1.0 / total());
    }

    public double grams(Substance substance) {
        return grams[substance.ordinal()];
    }

    /** Returns a fresh array of the grams in the order of {@link Substance}. */
    public double[] toGrams() {
        return grams.clone();
    }

    /** Returns the grams of each aroma constituent that is known, by CAS number. */
    public Map<String, Double> aroma() {
        return aroma;
    }

    /** Returns the grams of everything together. */
    public double total() {
        double sum = 0.0;
        for (double each : grams) {
            sum += each;
        }
        return sum;
    }

    /** Returns the grams of all sugars together, as they are dissolved. */
    public double sugars() {
        double sum = 0.0;
        for (Substance substance : Substance.values()) {
            if (substance.sugar() != null) {
                sum += grams(substance);
            }
        }
        return sum;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Contents that && Arrays.equals(grams, that.grams) && aroma.equals(that.aroma);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(grams) + aroma.hashCode();
    }

    @Override
    public String toString() {
        StringBuilder words = new StringBuilder();
        for (Substance substance : Substance.values()) {
            if (grams(substance) > 0.0) {
                words.append(words.isEmpty() ? "" : ", ")
                        .append(grams(substance))
                        .append(" g ")
                        .append(substance.label());
            }
        }
        return words.isEmpty() ? "nothing" : words.toString();
    }
}
