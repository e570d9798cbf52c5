package org.stillroom.core.liquid;

/**
 * How far a figure may be off, in one word, for whoever does not want the half-width.
 *
 * <p>Small is what no kitchen instrument shows; fair is up to what the label of a spirit may be off by, 0.3 % vol
 * (Regulation (EU) No 1169/2011, Annex XII; from memory); the bounds of the other figures are our own, chosen to go with it.
 */
public enum DoubtWord {
    /** The figure follows from the grams alone. */
    NONE("none"),
    SMALL("small"),
    FAIR("fair"),
    LARGE("large"),
    /** Nothing tells how far it may be off. */
    NOT_TOLD("not told");

    /** Part of a volume, a density or a content up to which doubt is small, and up to which it is fair. */
    private static final Bounds OF_PART = new Bounds(0.003, 0.01);

    private static final Bounds OF_STRENGTH = new Bounds(0.1, 0.3);
    /** Proof counts twice as many degrees as % vol; British degrees, nearly twice as many, are taken along. */
    private static final Bounds OF_PROOF = new Bounds(0.2, 0.6);

    private static final Bounds OF_BRIX = new Bounds(0.3, 1.0);
    /** What goes with the bounds of Brix, at about 0.002 to the degree. */
    private static final Bounds OF_REFRACTIVE_INDEX = new Bounds(0.0006, 0.002);
    /** Freezers hold their temperature to a few degrees. */
    private static final Bounds OF_FREEZING_POINT = new Bounds(0.5, 2.0);

    private final String label;

    DoubtWord(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Returns the word for a figure of a liquid. */
    public static DoubtWord of(Figure figure, Estimate estimate) {
        return switch (figure) {
            case STRENGTH, STRENGTH_BY_MASS, STRENGTH_15C -> OF_STRENGTH.word(estimate.doubt());
            case PROOF_US, PROOF_BRITISH -> OF_PROOF.word(estimate.doubt());
            case HYDROMETER_BRIX, REFRACTOMETER_BRIX -> OF_BRIX.word(estimate.doubt());
            case REFRACTIVE_INDEX -> OF_REFRACTIVE_INDEX.word(estimate.doubt());
            case FREEZING_POINT -> OF_FREEZING_POINT.word(estimate.doubt());
            case MASS,
                    VOLUME,
                    VOLUME_20C,
                    DENSITY,
                    SPECIFIC_GRAVITY_20_20,
                    SPECIFIC_GRAVITY_60F_60F,
                    SUGAR,
                    SUGAR_AS_INVERT,
                    SUGAR_AS_SUCROSE,
                    SUGAR_BY_MASS,
                    SUGAR_LIMIT,
                    ACIDITY,
                    ACID,
                    ENERGY_KJ,
                    ENERGY_KCAL -> ofPart(estimate);
        };
    }

    /** Returns the word for an amount or a content: by how large a part of itself it may be off. */
    public static DoubtWord ofPart(Estimate estimate) {
        if (estimate.doubt() == 0.0) {
            return NONE;
        }
        if (!estimate.tellsDoubt()) {
            return NOT_TOLD;
        }
        return OF_PART.word(estimate.doubt() / Math.abs(estimate.value()));
    }

    /** Greatest half-width that is small, and greatest that is fair. */
    private record Bounds(double small, double fair) {
        DoubtWord word(double halfWidth) {
            if (halfWidth == 0.0) {
                return NONE;
            }
            return halfWidth <= small ? SMALL : halfWidth <= fair ? FAIR : LARGE;
        }
    }
}
