package org.stillroom.core.quantity;

import org.jspecify.annotations.Nullable;

/**
 * A unit that amounts are typed in.
 *
 * @param kind what it measures
 * @param scale how many grams, millilitres or drops it holds
 * @param assumed what is taken for granted by reading it so, a sentence for the person, or null
 */
record Unit(Kind kind, TypedNumber.Scale scale, @Nullable String assumed) {
    /** What a unit measures, with the unit in which Stillroom keeps it. */
    enum Kind {
        MASS("a mass", "300 g"),
        VOLUME("a volume", "330 ml"),
        DROPS("a count of drops", "15 drops");

        private final String label;
        private final String example;

        Kind(String label, String example) {
            this.label = label;
            this.example = example;
        }

        String label() {
            return label;
        }

        String example() {
            return example;
        }
    }

    /** Makes the amount from a value in the unit that Stillroom keeps it in. */
    Amount amount(double value) {
        return switch (kind) {
            case MASS -> new Mass(value);
            case VOLUME -> new Volume(value);
            case DROPS -> new Drops(value);
        };
    }
}
