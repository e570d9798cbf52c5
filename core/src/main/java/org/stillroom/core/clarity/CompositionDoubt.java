package org.stillroom.core.clarity;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.stillroom.core.aroma.ConstituentGroup;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.quantity.Span;

/** How far each constituent of a liquid's oils may lie from its typical amount, gathered oil by oil. */
public final class CompositionDoubt {
    /**
     * How far a constituent of share w lies from its typical share where no range of it is known: ± 0.45 w (1 − w). Own estimate, from
     * the ranges of pharmacopoeias (limonene of lemon oil 60 to 80 %, anethole of anise oil 87 to 94 %, from memory).
     */
    private static final double USUAL = 0.45;

    private final Map<String, Amounts> amounts = new TreeMap<>();
    private final Set<String> from = new TreeSet<>();

    /** Of one constituent, all in one unit. */
    private record Amounts(double typical, double least, double most) {
        Amounts plus(Amounts other) {
            return new Amounts(typical + other.typical, least + other.least, most + other.most);
        }
    }

    /** Returns the half-width of a constituent of which no range is known, as a part of its amount. */
    static double usual(double share) {
        return USUAL * (1.0 - share);
    }

    /**
     * Takes an oil by its published ranges, in the unit of all other amounts.
     *
     * @param amount of the oil, zero or more
     */
    public void add(EssentialOil oil, double amount) {
        double rest = 1.0;
        for (Map.Entry<String, Double> each : oil.shares().entrySet()) {
            double share = each.getValue();
            Material.Range range = oil.ranges().get(each.getKey());
            double less = range == null ? share * (1.0 - usual(share)) : Math.min(share, range.low());
            double more = range == null ? share * (1.0 + usual(share)) : Math.max(share, range.high());
            add(each.getKey(), amount * share, amount * less, amount * more);
            rest -= share;
        }
        addUnknown(amount, rest);
        if (!oil.ranges().isEmpty()) {
            from.add(oil.name() + ": " + oil.rangesFrom());
        }
    }

    /**
     * Takes an oil by the analyses of its lots, in the unit of all other amounts; typical is the middle between them.
     *
     * @param name of the ingredient
     * @param analysed least and most part of the oil, 0 to 1, by CAS number or name
     * @param amount of the oil, zero or more
     */
    public void add(String name, Map<String, Span> analysed, double amount) {
        double all = 0.0;
        for (Span each : analysed.values()) {
            all += 0.5 * (each.low() + each.high());
        }
        double part = amount / Math.max(1.0, all); // certificates round
        analysed.forEach((key, each) -> add(
                OilParts.of(key).key(),
                part * 0.5 * (each.low() + each.high()),
                part * each.low(),
                part * each.high()));
        addUnknown(amount, 1.0 - all);
        from.add(name + ": analysis of the lot");
    }

    private void addUnknown(double amount, double rest) {
        if (rest > 1e-9) {
            add(
                    ConstituentGroup.UNKNOWN.label(),
                    amount * rest,
                    amount * rest * (1.0 - usual(rest)),
                    amount * rest * (1.0 + usual(rest)));
        }
    }

    /** Takes a constituent of which just so much is in it. */
    public void add(String constituent, double amount) {
        add(OilParts.of(constituent).key(), amount, amount, amount);
    }

    private void add(String key, double amount, double less, double more) {
        amounts.merge(key, new Amounts(amount, less, more), Amounts::plus);
    }

    /** Returns the least and the most of each constituent as parts of its typical amount, by CAS number or name. */
    public Map<String, Span> spans() {
        Map<String, Span> spans = new TreeMap<>();
        amounts.forEach((key, each) -> {
            if (each.typical > 0.0) {
                spans.put(key, new Span(each.least / each.typical, each.most / each.typical));
            }
        });
        return spans;
    }

    /** Returns the groups of figures that state the ranges, by oil. */
    public Set<String> from() {
        return new TreeSet<>(from);
    }
}
