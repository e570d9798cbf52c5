package org.stillroom.core.triangle;

/**
 * What the lines of the triangle say of a place in it.
 *
 * @param strength % vol at 20 °C
 * @param sugar g/L at 20 °C, on the basis on which the recipe asks for it
 */
public record Reading(double strength, double sugar) {}
