package org.stillroom.studio.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Figures as people read them: a point for decimals whatever the machine's language, rounded only here. */
public final class Figure {
    /** Digits shown of a figure in the steps of a computation: enough to redo the next step by hand. */
    private static final MathContext STEP = new MathContext(8, RoundingMode.HALF_EVEN);

    private Figure() {}

    /**
     * Returns the value with just so many decimals, such as "37.50"; never "-0.0".
     *
     * @param decimals digits after the point, 0 or more
     */
    public static String decimals(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.toPlainString();
    }

    /** Returns the value with eight significant digits and no zeros after them. */
    static String significant(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(STEP).stripTrailingZeros();
        boolean plain = Math.abs(value) >= 1e-4 && Math.abs(value) < 1e9;
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}
