package org.stillroom.core.quantity;

import java.util.function.DoubleUnaryOperator;

/** Where a quantity that rises from at most zero at 0 to at least zero at 1 crosses zero; kept inside a bracket throughout. */
public final class Root {
    private static final int MOST_STEPS = 200;
    /** Steps below this change nothing that a double near 1 could show. */
    private static final double FINEST = 1e-17;

    private Root() {}

    /** Returns the root by Newton's rule, halving the bracket whenever a step would leave it. */
    public static double of(DoubleUnaryOperator function, DoubleUnaryOperator slope) {
        double low = 0.0;
        double high = 1.0;
        double x = 0.5;
        for (int i = 0; i < MOST_STEPS && low < high; i++) {
            double value = function.applyAsDouble(x);
            if (value == 0.0) {
                return x;
            }
            if (value < 0.0) {
                low = x;
            } else {
                high = x;
            }
            double next = x - value / slope.applyAsDouble(x);
            if (!(next >= low && next <= high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - x) < FINEST) {
                return next;
            }
            x = next;
        }
        return x;
    }

    /** Returns the root of a function whose slope is not at hand, by Ridders' rule (IEEE Trans. Circuits Syst. 26, 1979). */
    public static double of(DoubleUnaryOperator function) {
        double low = 0.0;
        double high = 1.0;
        double atLow = function.applyAsDouble(low);
        double atHigh = function.applyAsDouble(high);
        double x = atLow < 0.0 ? high : low;
        for (int i = 0; i < MOST_STEPS && atLow < 0.0 && atHigh > 0.0; i++) {
            double middle = 0.5 * (low + high);
            double atMiddle = function.applyAsDouble(middle);
            double next = middle - (middle - low) * atMiddle / Math.sqrt(atMiddle * atMiddle - atLow * atHigh);
            if (atMiddle < 0.0) {
                low = middle;
                atLow = atMiddle;
            } else {
                high = middle;
                atHigh = atMiddle;
            }
            double atNext = function.applyAsDouble(next);
            if (Math.abs(next - x) < FINEST || atNext == 0.0) {
                return next;
            }
            x = next;
            if (atNext < 0.0) {
                low = x;
                atLow = atNext;
            } else {
                high = x;
                atHigh = atNext;
            }
        }
        return x;
    }
}
