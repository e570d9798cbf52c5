package org.stillroom.core.batch;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.gauging.Gauging;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.safety.Assay;

/**
 * What a vessel holds.
 *
 * @param contents grams
 * @param births of its alcohol, or null where none is in it
 * @param outlay what it has cost so far
 * @param ph as measured, 0 to 14, or null where it was not measured since something came to it
 * @param analysed what a laboratory found in it since something came to it
 * @param origins which part of what each entry brought is in it, 0 to 1, by the number of the entry
 * @param slips how far the contents may be off
 */
public record Held(
        Contents contents,
        @Nullable Births births,
        Outlay outlay,
        @Nullable Double ph,
        Assay analysed,
        Map<Long, Double> origins,
        Slips slips) {
    /** An empty vessel. */
    public static final Held NOTHING =
            new Held(Contents.NONE, null, Outlay.NONE, null, Assay.NONE, Map.of(), Slips.NONE);
    /** Less than this is a wet vessel, g. */
    private static final double WET = 1e-6;

    public Held {
        origins = Collections.unmodifiableMap(new TreeMap<>(origins));
    }

    /** Returns what an entry brings. */
    static Held brought(Entry by, Contents contents, @Nullable Births births, Outlay outlay, Slips slips) {
        return new Held(contents, births, outlay, null, Assay.NONE, Map.of(by.id(), 1.0), slips);
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

    /** Returns what is known of it before it is gauged; null where it is not known how far it may be off. */
    public @Nullable Poured poured() {
        return isEmpty() || !slips.isKnown() ? null : new Poured(contents, slips.all());
    }

    /**
     * Returns how far its figures may be off, half-widths of the central 90 %: volume (mL), strength (% vol), sugar and acidity (g/L), all
     * at 20 °C; empty where it is not known.
     */
    public Map<Asked, Double> doubt() {
        Poured poured = poured();
        Gauged gauged = poured == null
                ? null
                : Gauging.of(List.of(), poured, Thermometer.EXACT).orElse(null);
        Interval volume = gauged == null ? null : gauged.volume();
        Interval acidity = gauged == null ? null : gauged.acidity();
        if (gauged == null || volume == null || acidity == null) {
            return Map.of();
        }
        return Map.of(
                Asked.VOLUME, volume.halfWidth(),
                Asked.STRENGTH, gauged.strength().halfWidth(),
                Asked.SUGAR, gauged.sugar().halfWidth(),
                Asked.ACIDITY, acidity.halfWidth());
    }

    /** Returns such a part of it; its cost goes along. */
    Held part(double part) {
        Map<Long, Double> parts = new TreeMap<>();
        origins.forEach((entry, all) -> parts.put(entry, all * part));
        return new Held(contents.times(part), births, outlay.times(part), ph, analysed, parts, slips.times(part));
    }

    /** Returns both together; a pH, as what a laboratory found, holds for one of them alone. */
    Held plus(Held other) {
        Map<Long, Double> both = new TreeMap<>(origins);
        other.origins.forEach((entry, part) -> both.merge(entry, part, Double::sum));
        return new Held(
                contents.plus(other.contents),
                Births.together(births, ethanol(), other.births, other.ethanol()),
                outlay.plus(other.outlay),
                isEmpty() ? other.ph : other.isEmpty() ? ph : null,
                isEmpty() ? other.analysed : other.isEmpty() ? analysed : Assay.NONE,
                both,
                slips.plus(other.slips));
    }

    /** Returns it with other contents by what was measured; all else stays as it is. */
    Held holding(Contents now, Slips off) {
        return new Held(now, births, outlay, ph, analysed, origins, off);
    }

    /** Returns it with what is left after some has evaporated; its pH and all shares in it have moved then, and nobody measured how far. */
    Held concentrated(Contents now, Slips off) {
        return new Held(now, births, outlay, null, Assay.NONE, origins, off);
    }

    /** Returns it with something more that may be off. */
    Held off(Slips more) {
        return new Held(contents, births, outlay, ph, analysed, origins, slips.plus(more));
    }

    /** Returns it with the cost of what was lost put on what is left. */
    Held costing(Outlay all) {
        return new Held(contents, births, all, ph, analysed, origins, slips);
    }

    /** Returns it with a pH that was measured. */
    Held atPh(double measured) {
        return new Held(contents, births, outlay, measured, analysed, origins, slips);
    }

    /** Returns it with what a laboratory found in it; what an earlier one found of other substances stays. */
    Held withFound(Assay found) {
        return new Held(contents, births, outlay, ph, analysed.and(found), origins, slips);
    }
}
