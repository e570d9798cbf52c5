package org.stillroom.core.plan;

/**
 * What is taken of one line, and how far the measure may err.
 *
 * @param grams taken, g
 * @param halfWidth half-width within which that is right, g; for a line made up to the mark, of the mark, mL
 */
public record Taken(double grams, double halfWidth) {}
