package org.stillroom.core.batch;

import java.time.Instant;

/**
 * An entry of the log.
 *
 * @param id in the order of writing; of what happens at one moment the lower number came first
 * @param at when it happened
 * @param event what happened
 */
public record Entry(long id, Instant at, Event event) {}
