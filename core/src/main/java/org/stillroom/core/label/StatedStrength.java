package org.stillroom.core.label;

import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.TableSet;

/**
 * The strength as a label states it, with how far the bottle may lie from it.
 *
 * @param percent % vol at 20 °C in one decimal, as Annex XII of Regulation (EU) 1169/2011 wants it at most
 * @param tolerance % vol either way, by the law of the place
 * @param leftIn what stays in the bottle
 */
public record StatedStrength(double percent, double tolerance, LeftIn leftIn) {
    /** What stays in the bottle with the drink. */
    public enum LeftIn {
        NOTHING("any other beverage above 1.2 % vol (normal liqueur)"),
        FRUIT_OR_PLANTS("beverages containing macerated fruit or parts of plants");

        private final String row;

        LeftIn(String row) {
            this.row = row;
        }
    }

    /** Of every spirit in the USA, whatever stays in the bottle, % vol. Source: 27 CFR 19.356(c) and (d); 5.65(c), from memory. */
    private static final double US_TOLERANCE = 0.3;

    /** Returns how a strength is stated by the law of a place: rounded to the tenth, half a tenth upwards. */
    public static StatedStrength of(TableSet tables, double found, LeftIn leftIn, Market market) {
        double tolerance = market == Market.US ? US_TOLERANCE : tolerance(tables, leftIn);
        return new StatedStrength(Bounds.tenths(found) / 10.0, tolerance, leftIn);
    }

    private static double tolerance(TableSet tables, LeftIn leftIn) {
        for (Table.Row row : tables.open("label/eu_abv_tolerance.csv").rows()) {
            if (row.text("beverage").equals(leftIn.row)) {
                return row.number("tolerance_pct_vol");
            }
        }
        throw new IllegalStateException("label/eu_abv_tolerance.csv has no row of " + leftIn.row);
    }

    /** Returns the same strength with how far a bottle may lie from it in the USA. */
    public StatedStrength inUs() {
        return new StatedStrength(percent, US_TOLERANCE, leftIn);
    }

    /** Returns the least that the bottle may hold, % vol. */
    public double low() {
        return Math.max(0.0, percent - tolerance);
    }

    /** Returns the most that the bottle may hold, % vol. */
    public double high() {
        return Math.min(100.0, percent + tolerance);
    }

    /** Returns whether a bottle of this strength may carry the label; both ends may, what binary fractions add is not counted. */
    public boolean accepts(double found) {
        return Math.abs(found - percent) <= tolerance + 1e-9;
    }
}
