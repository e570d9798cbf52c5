package org.stillroom.studio.usecase.batch;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Something that waits.
 *
 * @param id number of the entry that says so, or with which the rest of a make began; below zero where the recipe of a batch does
 * @param batch id; empty of what is still being made
 * @param make what is still being made, or null
 * @param what it is waiting for
 * @param from the day on which it began
 * @param until the day on which it is ready, as it was postponed last
 * @param note the maker's own words; mostly empty
 * @param done whether it was seen to
 */
public record Waiting(
        long id,
        String batch,
        @Nullable Made make,
        What what,
        LocalDate from,
        LocalDate until,
        String note,
        boolean done) {
    /**
     * A make that stands at a rest.
     *
     * @param id of the make
     * @param title of what stands there
     */
    public record Made(String id, String title) {}

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
        return new Waiting(id, batch, make, what, from, day, note, done);
    }

    Waiting seenTo() {
        return new Waiting(id, batch, make, what, from, until, note, true);
    }
}
