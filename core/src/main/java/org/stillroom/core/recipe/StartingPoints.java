package org.stillroom.core.recipe;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Span;

/**
 * Figures to start from for who asks "which number do I want?".
 *
 * <p>Common practice, no source: where recipes of a kind mostly lie. Nothing is judged by them; labels follow drink law.
 */
public final class StartingPoints {
    /** What a row is about. */
    public enum Of {
        SUGAR("sugar", "g/L"),
        STRENGTH("strength", "% vol"),
        ACIDITY("acidity", "g/L as citric");

        private final String label;
        private final String unit;

        Of(String label, String unit) {
            this.label = label;
            this.unit = unit;
        }

        public String label() {
            return label;
        }

        /** Returns the unit; contents and strength are at 20 °C. */
        public String unit() {
            return unit;
        }
    }

    /**
     * One row.
     *
     * @param of what it is about
     * @param kind of liqueur, as makers call it
     * @param range in the unit of {@code of}
     * @param words the range in words
     */
    public record Row(Of of, String kind, Span range, String words) {}

    /** More than a litre holds: the end of a range that has none. */
    private static final double NO_END = 2000.0;

    private static final List<Row> ROWS = List.of(
            new Row(Of.SUGAR, "dry", new Span(60, 100), "60 to 100 g/L"),
            new Row(Of.SUGAR, "ordinary", new Span(180, 250), "180 to 250 g/L"),
            new Row(Of.SUGAR, "crème", new Span(250, NO_END), "above 250 g/L"),
            new Row(Of.STRENGTH, "fruit", new Span(16, 25), "16 to 25 % vol"),
            new Row(Of.STRENGTH, "herbal", new Span(25, 40), "25 to 40 % vol"),
            new Row(Of.ACIDITY, "any", new Span(0, 6), "0 to 6 g/L as citric"));

    private StartingPoints() {}

    /** Returns every row, by what it is about and upwards. */
    public static List<Row> rows() {
        return ROWS;
    }

    /**
     * Returns the row that a figure falls in, or null between and outside of them; where two meet, the lower one.
     *
     * @param figure in the unit of {@code of}
     */
    public static @Nullable Row matching(Of of, double figure) {
        for (Row row : ROWS) {
            if (row.of() == of
                    && figure >= row.range().low()
                    && figure <= row.range().high()) {
                return row;
            }
        }
        return null;
    }
}
