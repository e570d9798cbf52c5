package org.stillroom.studio.sheet;

/**
 * How a day sheet is laid out.
 *
 * @param paper what it is printed on
 * @param units in which amounts to take are told; exact amounts stay in g and mL
 * @param saying the language that it is written in
 */
public record SheetOptions(Paper paper, Units units, Saying saying) {
    /** A sheet in English on A4 in grams and millilitres. */
    public static final SheetOptions USUAL = new SheetOptions(Paper.A4, Units.METRIC, Saying.ENGLISH);

    /** Paper sizes, upright. */
    public enum Paper {
        /** 210 × 297 mm (ISO 216). */
        A4("A4"),
        /** 8.5 × 11 in. */
        LETTER("letter");

        private final String label;

        Paper(String label) {
            this.label = label;
        }

        /** Returns the name that style sheets and people use. */
        public String label() {
            return label;
        }
    }

    /** Units of the amounts to take. */
    public enum Units {
        METRIC,
        /** United States fluid ounces, cups and spoons; pounds and ounces by weight. */
        US
    }
}
