package org.stillroom.core.plan;

/**
 * Amounts that fulfil a problem, or come nearest to it.
 *
 * @param grams of each line
 * @param millilitres of the finished liquid at 20 °C
 * @param missed by how much the asked figures are missed together, as parts of what was asked; 0 when all are met
 */
@SuppressWarnings("ArrayRecordComponent") // numbers of the inner loop, never compared, never leaving the package
record Solution(double[] grams, double millilitres, double missed) {
    /** What is missed by less than this is rounding of the arithmetic. */
    private static final double ROUNDING = 1e-10;

    boolean reached() {
        return missed <= ROUNDING;
    }
}
