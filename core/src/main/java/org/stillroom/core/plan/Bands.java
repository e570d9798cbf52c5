package org.stillroom.core.plan;

/**
 * Where the figures of a batch will lie, at 20 °C.
 *
 * @param volume mL
 * @param strength % vol
 * @param sugar g/L, as dissolved
 * @param acidity g/L, as citric
 */
public record Bands(Band volume, Band strength, Band sugar, Band acidity) {}
