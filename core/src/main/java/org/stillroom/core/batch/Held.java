package org.stillroom.core.batch;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;

/**
 * What a vessel holds.
 *
 * @param contents grams
 * @param births of its alcohol, or null where none is in it
 * @param outlay what it has cost so far
 * @param ph as measured, 0 to 14, or null where it was not measured since something came to it
 * @param origins which part of what each entry brought is in it, 0 to 1, by the number of the entry
 */
public record Held(
        Contents contents,
        @Nullable Births births,
        Outlay outlay,
        @Nullable Double ph,
        Map<Long, Double> origins) {
    /** An empty vessel. */
    public static final Held NOTHING = new Held(Contents.NONE, null, Outlay.NONE, null, Map.of());
    /** Less than this is a wet vessel, g. */
    private static final double WET = 1e-6;

    public Held {
        origins = Collections.unmodifiableMap(new TreeMap<>(origins));
    }

    /** Returns what an entry brings. */
    static Held brought(Entry by, Contents contents, @Nullable Births births, Outlay outlay) {
        return new Held(contents, births, outlay, null, Map.of(by.id(), 1.0));
    }

    public boolean isEmpty() {
        return contents.total() < WET;
    }

    /** Returns volume, strength, sugar and acidity at 20 °C; zeros of an empty vessel. */
    public Essentials essentials() {
        return isEmpty() ? new Essentials(0, 0, 0, 0, 0) : Essentials.of(contents.toGrams());
    }

    public double grams() {
        return contents.total();
    }

    double ethanol() {
        return contents.grams(Substance.ETHANOL);
    }

    /** Returns such a part of it; its cost goes along. */
    Held part(double part) {
        Map<Long, Double> parts = new TreeMap<>();
        origins.forEach((entry, all) -> parts.put(entry, all * part));
        return new Held(contents.times(part), births, outlay.times(part), ph, parts);
    }

    /** Returns both together; a pH holds for one of them alone. */
    Held plus(Held other) {
        Map<Long, Double> both = new TreeMap<>(origins);
        other.origins.forEach((entry, part) -> both.merge(entry, part, Double::sum));
        return new Held(
                contents.plus(other.contents),
                Births.together(births, ethanol(), other.births, other.ethanol()),
                outlay.plus(other.outlay),
                isEmpty() ? other.ph : other.isEmpty() ? ph : null,
                both);
    }

    /** Returns it with other contents by what was measured; all else stays as it is. */
    Held holding(Contents now) {
        return new Held(now, births, outlay, ph, origins);
    }

    /** Returns it with what is left after some has evaporated; its pH has moved then, and nobody measured how far. */
    Held concentrated(Contents now) {
        return new Held(now, births, outlay, null, origins);
    }

    /** Returns it with the cost of what was lost put on what is left. */
    Held costing(Outlay all) {
        return new Held(contents, births, all, ph, origins);
    }

    /** Returns it with a pH that was measured. */
    Held atPh(double measured) {
        return new Held(contents, births, outlay, measured, origins);
    }
}
