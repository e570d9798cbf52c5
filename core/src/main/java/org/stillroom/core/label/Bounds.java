package org.stillroom.core.label;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Table;

/**
 * From where to where a figure of a class lies. Bounds compare at the tenth.
 *
 * @param what "strength" or "sugar"
 * @param unit of both ends
 * @param least or null where there is none
 * @param most or null where there is none
 * @param open which end is not of it any more
 */
record Bounds(
        String what,
        String unit,
        @Nullable Double least,
        @Nullable Double most,
        Open open) {
    private static final double TENTH = 0.1;
    /** Less than this two decimals do not show. */
    private static final double SHOWN = 0.005;

    /** Which end a text draws open: "more than", "less than". */
    enum Open {
        NONE(""),
        LEAST("min"),
        MOST("max");

        private final String cell;

        Open(String cell) {
            this.cell = cell;
        }

        static Open of(Table.Row row) {
            for (Open open : values()) {
                if (open.cell.equals(row.textOrEmpty("open_end"))) {
                    return open;
                }
            }
            throw row.fault("open_end", "is neither min nor max nor empty");
        }
    }

    static Bounds of(Table.Row row, String what, String unit, String least, String most, Open open) {
        @Nullable Double low = bound(row, least);
        @Nullable Double high = bound(row, most);
        if (low != null && high != null && low > high) {
            throw row.fault(most, "lies below " + least);
        }
        return new Bounds(what, unit, low, high, open);
    }

    static @Nullable Double bound(Table.Row row, String column) {
        if (row.textOrEmpty(column).isEmpty()) {
            return null;
        }
        if (!(row.number(column) >= 0.0)) {
            throw row.fault(column, "lies below zero");
        }
        return row.number(column);
    }

    /** Returns how the figure of a drink misses them; empty where it lies within. */
    List<Miss> misses(double found) {
        List<Miss> misses = new ArrayList<>();
        if (least != null && tenths(found) < tenths(least) + (open == Open.LEAST ? 1 : 0)) {
            misses.add(new Miss(what, found, least, unit, open == Open.LEAST ? "more than" : "at least"));
        }
        if (most != null && tenths(found) > tenths(most) - (open == Open.MOST ? 1 : 0)) {
            misses.add(new Miss(what, found, most, unit, open == Open.MOST ? "less than" : "at most"));
        }
        return misses;
    }

    /** Returns that a figure lies within by its tenth alone, in a sentence; empty where it does not, or two decimals show no difference. */
    List<String> metByRounding(double found) {
        if (!misses(found).isEmpty()) {
            return List.of();
        }
        String exact = QuantityWords.fixed(found, 2);
        if (least != null && found < least - SHOWN) {
            return List.of("By the rounding of the label " + what + " meets at least " + QuantityWords.plain(least)
                    + " " + unit + "; the exact figure is " + exact + ", below it.");
        }
        if (most != null && found > most + SHOWN) {
            return List.of("By the rounding of the label " + what + " meets at most " + QuantityWords.plain(most) + " "
                    + unit + "; the exact figure is " + exact + ", above it.");
        }
        return List.of();
    }

    /** Returns the figures to aim at from below and from above, as far as there are such ends. */
    List<Double> ends() {
        List<Double> ends = new ArrayList<>();
        if (least != null) {
            ends.add(open == Open.LEAST ? least + TENTH : least);
        }
        if (most != null) {
            ends.add(open == Open.MOST ? most - TENTH : most);
        }
        return ends;
    }

    /** Returns tenths, half a one upwards, of what is first put to the ninth decimal, so that binary fractions decide nothing. */
    static long tenths(double value) {
        return (long) Math.floor(Math.rint(value * 1e9) / 1e8 + 0.5);
    }
}
