package org.stillroom.core.safety;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * A greatest amount that a law allows, and what is said of an amount beside it.
 *
 * <p>The most that can be in the drink is compared, by the most adverse source group. What is not known never passes, and what is
 * from memory never clears.
 *
 * @param rule name of the rule
 * @param jurisdiction whose law, or "house"
 * @param category what kind of drink it is for
 * @param value mg/kg or mg/L
 * @param basis per kilogram or per litre of the drink
 * @param edge whether the figure itself is allowed
 * @param source where it stands; null for a house rule, which the maker wrote
 */
record Limit(
        String rule,
        String jurisdiction,
        String category,
        double value,
        Basis basis,
        Edge edge,
        @Nullable Source source) {
    /** More are not shown of an amount that lies a hair above a limit. */
    private static final int MOST_PLACES = 6;

    /** Where even a hair less is enough, %, in the places that are told. */
    private static final double SHORT_OF_ALL = 99.9;

    /** Whether the figure itself is still allowed. */
    enum Edge {
        UP_TO("at most "),
        BELOW("below ");

        private final String word;

        Edge(String word) {
            this.word = word;
        }
    }

    /** What the limit counts per. */
    enum Basis {
        PER_KILOGRAM("mg/kg") {
            @Override
            Range of(Amount amount) {
                return amount.perKilogram();
            }
        },
        PER_LITRE("mg/L") {
            @Override
            Range of(Amount amount) {
                return amount.perLitre();
            }
        };

        private final String unit;

        Basis(String unit) {
            this.unit = unit;
        }

        abstract Range of(Amount amount);
    }

    /** Returns what is to be said. */
    Finding judge(Amount amount) {
        Range range = basis.of(amount);
        boolean over = isOver(range.most());
        if (over) {
            boolean surely = isOver(range.middle());
            return finding(
                    amount, Severity.STOP, surely ? "above the limit" : "above the limit at worst", remedy(range));
        }
        if (!amount.isKnown()) {
            return finding(
                    amount,
                    Severity.CAUTION,
                    "not known",
                    "Ask the supplier for " + amount.watched().name() + " in the lot, or have the drink analysed.");
        }
        if (!amount.status().mayClear()) {
            return finding(
                    amount,
                    Severity.NOTE,
                    "not shown to be within",
                    "Nothing is asked by these figures; the supplier's analysis of the lot decides.");
        }
        return finding(amount, Severity.NOTE, "within the limit", "");
    }

    /** A hair above the limit is above it; what binary fractions add is not. */
    private boolean isOver(double found) {
        return edge == Edge.UP_TO ? found > value * (1.0 + 1e-9) : found >= value * (1.0 - 1e-9);
    }

    private String remedy(Range range) {
        double most = Math.floor(1000.0 * value / range.most()) / 10.0;
        String part = QuantityWords.fixed(edge == Edge.BELOW && most == 100.0 ? SHORT_OF_ALL : most, 1);
        return "Take at most " + part + " % of what brings it now, or have an analysis of the lot that says less.";
    }

    private Finding finding(Amount amount, Severity severity, String verdict, String remedy) {
        return new Finding(
                rule,
                severity,
                amount.where(),
                jurisdiction,
                verdict,
                message(amount),
                howSure(amount),
                remedy,
                edge.word + QuantityWords.plain(value) + " " + basis.unit + " of "
                        + amount.watched().name() + ", " + category,
                source);
    }

    private String message(Amount amount) {
        String name = capital(amount.watched().name());
        String bound =
                "the limit is " + edge.word + QuantityWords.plain(value) + " " + basis.unit + " (" + category + ").";
        if (amount.from().isEmpty()) {
            return name + ": how much there is, is not known; " + bound;
        }
        String known = name + ": " + told(basis.of(amount)) + " " + basis.unit + " of the drink; " + bound;
        return amount.isKnown() ? known : known + " That counts only what is known; the rest is not.";
    }

    /** Returns the amount in three figures, or in as many as show that it passes the limit. */
    private String told(Range range) {
        String usual = range.told();
        if (!isOver(range.most()) || edge == Edge.BELOW) {
            return usual;
        }
        int places = QuantityWords.places(range.most());
        while (places < MOST_PLACES && Double.parseDouble(QuantityWords.fixed(range.most(), places)) <= value) {
            places++;
        }
        if (places == QuantityWords.places(range.most())) {
            return usual;
        }
        String least = QuantityWords.fixed(range.least(), places);
        String most = QuantityWords.fixed(range.most(), places);
        return least.equals(most) ? most : least + " to " + most;
    }

    static String howSure(Amount amount) {
        if (amount.basis().isEmpty()) {
            return "";
        }
        List<String> groups =
                amount.basis().stream().filter(each -> !Amount.isAnalysis(each)).toList();
        String analysed = amount.basis().stream()
                .filter(Amount::isAnalysis)
                .findFirst()
                .map(analysis -> "by " + analysis + ", as printed")
                .orElse("");
        if (groups.isEmpty()) {
            return analysed;
        }
        return (analysed.isEmpty() ? "" : analysed + "; of the rest ")
                + "the most is that of the most adverse source group (" + String.join("; ", groups) + ")"
                + (amount.status().mayClear() ? "" : "; composition from memory");
    }

    static String capital(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
