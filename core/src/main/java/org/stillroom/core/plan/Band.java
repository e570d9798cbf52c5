package org.stillroom.core.plan;

/**
 * Where a figure will lie in nine batches of ten.
 *
 * @param low 5th percentile
 * @param high 95th percentile
 * @param mostFrom what contributes most to it, in words, such as "the label of vodka"
 * @param partOfMost how much of its variance comes from there, 0 to 1
 */
public record Band(double low, double high, String mostFrom, double partOfMost) {}
