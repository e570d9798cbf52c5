package org.stillroom.studio.usecase.batch;

import java.time.LocalDate;

/**
 * Something that waits.
 *
 * @param id number of the entry that says so; below zero where the recipe does
 * @param batch id
 * @param what it is waiting for
 * @param from the day on which it began
 * @param until the day on which it is ready, as it was postponed last
 * @param note the maker's own words; mostly empty
 * @param done whether it was seen to
 */
public record Waiting(long id, String batch, What what, LocalDate from, LocalDate until, String note, boolean done) {
    /** What liquids wait for. */
    public enum What {
        /** Plants give what they have. */
        MACERATING,
        /** A haze settles. */
        CLEARING,
        /** What was mixed comes together. */
        MARRYING,
        /** It stands in wood or glass. */
        AGEING,
        /** Something of the maker's own. */
        OTHER
    }

    Waiting postponedTo(LocalDate day) {
        return new Waiting(id, batch, what, from, day, note, done);
    }

    Waiting seenTo() {
        return new Waiting(id, batch, what, from, until, note, true);
    }
}
