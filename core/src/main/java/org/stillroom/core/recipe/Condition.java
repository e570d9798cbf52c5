package org.stillroom.core.recipe;

import org.jspecify.annotations.Nullable;

/**
 * What a maker knows of the finished drink itself.
 *
 * @param ph as measured, 0 to 14, or null where nobody measured it
 * @param treatment what was done so that it keeps
 */
public record Condition(@Nullable Double ph, Treatment treatment) {
    /** Nothing was measured, nothing was done. */
    public static final Condition AS_MIXED = new Condition(null, Treatment.NONE);

    public Condition {
        if (ph != null && !(ph >= 0.0 && ph <= 14.0)) {
            throw new IllegalArgumentException("pH lies from 0 to 14, not " + ph);
        }
    }

    public boolean isPasteurised() {
        return treatment == Treatment.PASTEURISED;
    }

    /** Returns this where it says something, else what the other says. */
    public Condition or(Condition other) {
        return new Condition(ph == null ? other.ph : ph, isPasteurised() ? treatment : other.treatment);
    }
}
