package org.stillroom.studio.shelffile;

import org.stillroom.core.reference.Finding;

/**
 * Something to say about a line of a table.
 *
 * @param line from 1, the header's; 0 when it concerns the whole
 * @param finding what is wrong and what to write instead
 */
public record LineProblem(int line, Finding finding) {}
