package org.stillroom.core.batch;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;

/**
 * What an entry brought to a batch or took from it.
 *
 * @param entry number of the entry
 * @param at when
 * @param batch id
 * @param kind of flow
 * @param cause of a loss, else null
 * @param in grams that came
 * @param out grams that went
 */
public record Flow(
        long entry, Instant at, String batch, Kind kind, Wastage.@Nullable Cause cause, Contents in, Contents out) {
    /** Ways into a batch and out of it. */
    public enum Kind {
        BEGUN,
        ADDED,
        /** From another batch. */
        RECEIVED,
        /** To another batch. */
        GIVEN,
        LOST,
        EVAPORATED,
        BOTTLED,
        /** What was measured in place of what was reckoned. */
        MEASURED
    }
}
