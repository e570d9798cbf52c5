package org.stillroom.studio.store;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One making of a revision; its log is in the history under "make:ID".
 *
 * @param id of the make
 * @param recipe id of the recipe
 * @param revision number of the revision that is made
 * @param begun when
 * @param start JSON: what was settled at the beginning (size, instruments, lots)
 * @param finished when it became a batch, or null
 */
public record Make(
        String id,
        String recipe,
        int revision,
        Instant begun,
        String start,
        @Nullable Instant finished) {}
