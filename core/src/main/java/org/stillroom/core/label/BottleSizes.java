package org.stillroom.core.label;

import java.util.List;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.TableSet;

/** The sizes in which spirits may be sold: Directive 2007/45/EC from 100 to 2000 mL, and 27 CFR 5.203. */
public final class BottleSizes {
    private static final String ONLY_CANS = "before 2025 only for metal containers";
    private static final double EU_FROM = 100.0;
    private static final double EU_TO = 2000.0;

    private BottleSizes() {}

    /** Returns the sizes of a market, mL, smallest first. */
    public static List<Double> of(TableSet tables, Market market) {
        return tables.open("label/bottle_sizes.csv").rows().stream()
                .filter(row -> row.text("market").equals(market.name()))
                .filter(row -> !row.text("rule").startsWith(ONLY_CANS))
                .map((Table.Row row) -> row.number("mL"))
                .distinct()
                .sorted()
                .toList();
    }

    /** Returns whether spirits may be sold in this size; in the EU any size is free below 100 and above 2000 mL. */
    public static boolean isLawful(TableSet tables, Market market, double millilitres) {
        if (market == Market.EU && (millilitres < EU_FROM || millilitres > EU_TO)) {
            return true;
        }
        return of(tables, market).stream().anyMatch(size -> Math.abs(size - millilitres) < 1e-6);
    }
}
