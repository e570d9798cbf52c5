package org.stillroom.core.alcohol;

import java.util.function.DoubleUnaryOperator;

/** Root of a function that rises from at most zero at 0 to at least zero at 1: Newton, kept inside a bracket by halving. */
final class Bracketed {
    private static final int MOST_STEPS = 200;

    private Bracketed() {}

    static double root(DoubleUnaryOperator function, DoubleUnaryOperator slope) {
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
            if (next == x) {
                return x;
            }
            x = next;
        }
        return x;
    }
}
