package org.stillroom.studio.recipefile;

import org.stillroom.core.reference.Finding;

/**
 * Something wrong with one field of a sheet.
 *
 * @param key of the field, or empty when it concerns the sheet as a whole
 * @param finding what is wrong and what to write instead
 */
public record SheetProblem(String key, Finding finding) {}
