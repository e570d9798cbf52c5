package org.stillroom.studio.store;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One saved state of a recipe; never changed.
 *
 * @param recipe id of the recipe
 * @param number 1 for the first
 * @param at when it was saved
 * @param title of the recipe at that time
 * @param text the recipe file, byte for byte as it was saved
 * @param note what the maker wrote about the change, or null
 */
public record Revision(
        String recipe,
        int number,
        Instant at,
        String title,
        String text,
        @Nullable String note) {}
