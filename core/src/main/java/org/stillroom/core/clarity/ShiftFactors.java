package org.stillroom.core.clarity;

/**
 * By how much the load of each constituent changes when the part of cosolvent shifts: exp(−exponent · shift), tabulated over what a
 * normal deviate reaches and straight between. It errs by less than 0.01 % of itself as long as one standard deviation changes the load
 * by less than a third.
 */
final class ShiftFactors {
    private static final int STEPS = 128;
    /** Standard deviations to either side; 6 in 10 million draws lie beyond, and count as there. */
    private static final double REACH = 5.0;

    private final double reach;
    private final double[][] factors;
    private int below;
    private double part;

    /**
     * Makes the table.
     *
     * @param exponents how the logarithm of each solubility grows with the part of cosolvent
     * @param deviation one standard deviation of the shift, 0 where nothing shifts
     */
    ShiftFactors(double[] exponents, double deviation) {
        this.reach = REACH * deviation;
        int steps = reach > 0.0 ? STEPS : 1;
        this.factors = new double[steps + 1][exponents.length];
        for (int k = 0; k <= steps; k++) {
            double shift = reach * (2.0 * k / steps - 1.0);
            for (int i = 0; i < exponents.length; i++) {
                factors[k][i] = Math.exp(-exponents[i] * shift);
            }
        }
    }

    /** Goes to a shift. */
    void at(double shift) {
        double place = reach > 0.0 ? STEPS * Math.max(0.0, Math.min(1.0, 0.5 * (shift / reach + 1.0))) : 0.0;
        below = Math.min((int) place, factors.length - 2);
        part = place - below;
    }

    /** Returns the factor of a constituent at the shift. */
    double of(int constituent) {
        double low = factors[below][constituent];
        return low + part * (factors[below + 1][constituent] - low);
    }
}
