package org.stillroom.studio.store;

import java.time.Instant;

/**
 * What a finished make left.
 *
 * @param id of the batch
 * @param make that it came from
 * @param recipe id of the recipe
 * @param number 1 for the first batch of the studio
 * @param made when
 * @param body JSON: what was added, by lot, and what came of it
 */
public record Batch(String id, String make, String recipe, int number, Instant made, String body) {}
