package org.stillroom.core.batch;

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
 */
public record Held(Contents contents, @Nullable Births births, Outlay outlay) {
    /** An empty vessel. */
    public static final Held NOTHING = new Held(Contents.NONE, null, Outlay.NONE);
    /** Less than this is a wet vessel, g. */
    private static final double WET = 1e-6;

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
        return new Held(contents.times(part), births, outlay.times(part));
    }

    Held plus(Held other) {
        return new Held(
                contents.plus(other.contents),
                Births.together(births, ethanol(), other.births, other.ethanol()),
                outlay.plus(other.outlay));
    }

    /** Returns it with other contents; alcohol and cost stay where they came from. */
    Held holding(Contents now) {
        return new Held(now, births, outlay);
    }

    /** Returns it with the cost of what was lost put on what is left. */
    Held costing(Outlay all) {
        return new Held(contents, births, all);
    }
}
