package org.stillroom.core.batch;

import java.time.Instant;

/**
 * Bottles of a batch, filled alike.
 *
 * @param entry number of the entry
 * @param at when they were filled
 * @param batch id
 * @param first number of the first
 * @param fill how many and how full
 * @param each what is in one of them, and what one has cost, with the empty bottle where that is counted
 */
public record Bottling(long entry, Instant at, String batch, int first, Event.Fill fill, Held each) {
    /** Returns the number of the last. */
    public int last() {
        return first + fill.count() - 1;
    }
}
