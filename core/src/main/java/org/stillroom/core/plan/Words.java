package org.stillroom.core.plan;

import org.stillroom.core.quantity.QuantityWords;

/** Numbers in the sentences of a plan. */
final class Words {
    private Words() {}

    static String number(double value, int decimals) {
        return QuantityWords.fixed(value, decimals);
    }

    /**
     * Returns a bound rounded away from {@code from}, so that whoever follows the figure as printed is past it; the margin that a
     * way out carries does not count, else an edge at 40 would read 39.9.
     */
    static String bound(double from, double to, int decimals) {
        double unit = Math.pow(10.0, -decimals);
        double steps = to / unit;
        double margin = 2.0 * WaysOut.MARGIN * Math.abs(to - from) / unit + 1e-6;
        double rounded = to > from ? Math.ceil(steps - margin) : Math.floor(steps + margin);
        return QuantityWords.fixed(rounded * unit, decimals);
    }

    static String grams(double grams) {
        if (grams >= 100.0) {
            return number(grams, 0) + " g";
        }
        return grams >= 1.0 ? number(grams, 1) + " g" : number(1000.0 * grams, 0) + " mg";
    }
}
