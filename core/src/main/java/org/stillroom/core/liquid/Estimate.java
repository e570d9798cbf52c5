package org.stillroom.core.liquid;

/**
 * A figure and how far it may be off.
 *
 * @param value in the unit of its {@link Figure}
 * @param doubt half-width of the central 90 % in the same unit, zero where the figure follows from the grams alone; it covers
 *     the formulas, not the weighing
 */
public record Estimate(double value, double doubt) {}
