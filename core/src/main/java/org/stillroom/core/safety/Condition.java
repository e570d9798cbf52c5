package org.stillroom.core.safety;

import org.jspecify.annotations.Nullable;

/**
 * What a maker knows of the finished drink itself.
 *
 * @param ph as measured, or null where nobody measured it
 * @param treatment what was done so that it keeps
 */
public record Condition(@Nullable Double ph, Treatment treatment) {
    /** Nothing was measured, nothing was done. */
    public static final Condition AS_MIXED = new Condition(null, Treatment.NONE);

    /** What is done so that a drink keeps. */
    public enum Treatment {
        NONE,
        /** Heated in closed bottles, or filled hot, so that yeasts, moulds and most bacteria are dead; spores are not. */
        PASTEURISED
    }

    public Condition {
        if (ph != null && !(ph >= 0.0 && ph <= 14.0)) {
            throw new IllegalArgumentException("pH lies from 0 to 14, not " + ph);
        }
    }

    boolean isPasteurised() {
        return treatment == Treatment.PASTEURISED;
    }
}
