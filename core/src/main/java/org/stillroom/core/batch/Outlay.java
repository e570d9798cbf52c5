package org.stillroom.core.batch;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a liquid has cost so far; it goes where the liquid goes, and what is lost makes the rest dearer.
 *
 * @param money by currency as it was typed
 * @param complete whether the price of everything in it is known; else it cost more
 */
public record Outlay(Map<String, Double> money, boolean complete) {
    /** Nothing was spent. */
    public static final Outlay NONE = new Outlay(Map.of(), true);
    /** Nobody knows what it cost. */
    public static final Outlay UNKNOWN = new Outlay(Map.of(), false);

    public Outlay {
        money = Collections.unmodifiableMap(new TreeMap<>(money));
    }

    public static Outlay of(double amount, String currency) {
        return new Outlay(Map.of(currency, amount), true);
    }

    public Outlay plus(Outlay other) {
        Map<String, Double> both = new TreeMap<>(money);
        other.money.forEach((currency, amount) -> both.merge(currency, amount, Double::sum));
        return new Outlay(both, complete && other.complete);
    }

    /** Returns the cost of such a part of the liquid. */
    public Outlay times(double part) {
        Map<String, Double> scaled = new TreeMap<>();
        money.forEach((currency, amount) -> scaled.put(currency, amount * part));
        return new Outlay(scaled, complete);
    }
}
