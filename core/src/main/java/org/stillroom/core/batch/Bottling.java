package org.stillroom.core.batch;

import java.time.Instant;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Bottles of a batch, filled alike.
 *
 * @param entry number of the entry
 * @param at when they were filled
 * @param batch id
 * @param first number of the first
 * @param fill how many and how full
 * @param each what is in one of them, and what one has cost, with the empty bottle where that is counted
 * @param pasteurised when they were heated closed, or filled hot, or null where they were not
 */
public record Bottling(
        long entry,
        Instant at,
        String batch,
        int first,
        Event.Fill fill,
        Held each,
        @Nullable Instant pasteurised) {
    /** Returns the number of the last. */
    public int last() {
        return first + fill.count() - 1;
    }

    /** Returns some of the bottles; both numbers have to be among these. */
    Bottling part(int from, int to) {
        return new Bottling(
                entry,
                at,
                batch,
                from,
                new Event.Fill(to - from + 1, fill.millilitres(), fill.bottle()),
                each,
                pasteurised);
    }

    /** Returns them with what was found out of each. */
    Bottling known(UnaryOperator<Held> finding) {
        return new Bottling(entry, at, batch, first, fill, finding.apply(each), pasteurised);
    }

    Bottling pasteurisedAt(Instant when) {
        return new Bottling(entry, at, batch, first, fill, each, when);
    }
}
