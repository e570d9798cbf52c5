package org.stillroom.core.batch;

import org.stillroom.core.reference.Finding;

/**
 * An entry that cannot have happened.
 *
 * @param entry that cannot
 * @param finding why, and what to do
 */
public record Refused(Entry entry, Finding finding) {}
