package org.stillroom.studio.store;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened.
 *
 * @param id number of the entry; later ones have higher ones
 * @param at when it was written
 * @param subject what it happened to, such as "lot:k3m9x2w8ab"
 * @param kind what happened, such as "lot.weighed"
 * @param body JSON: what it was before, what it is now, why
 * @param undoes the entry that it takes back, or null
 */
public record HistoryEntry(
        long id,
        Instant at,
        String subject,
        String kind,
        String body,
        @Nullable Long undoes) {}
