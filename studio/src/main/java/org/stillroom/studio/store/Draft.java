package org.stillroom.studio.store;

import java.time.Instant;

/**
 * Work on a recipe that is not a revision yet; kept as it is typed, only the latest.
 *
 * @param recipe id of the recipe
 * @param basedOn number of the revision that it started from, 0 for none
 * @param at when it was kept
 * @param body what was typed, as the page that keeps it writes it
 */
public record Draft(String recipe, int basedOn, Instant at, String body) {}
