package org.stillroom.core.clarity;

/**
 * What is in doubt of a batch besides solubility and composition.
 *
 * @param strengthHalfWidth half-width of the central 90 % of its strength, % vol
 * @param doseHalfWidth half-width within which the dose of oil lies, as a part of it, each value as likely
 */
public record Doubts(double strengthHalfWidth, double doseHalfWidth) {
    /** Strength and dose are exactly as said. */
    public static final Doubts NONE = new Doubts(0.0, 0.0);

    public Doubts {
        if (!(strengthHalfWidth >= 0.0 && doseHalfWidth >= 0.0 && doseHalfWidth < 1.0)) {
            throw new IllegalArgumentException(
                    "half-widths are zero or more, that of the dose below 1: " + strengthHalfWidth + ", " + doseHalfWidth);
        }
    }
}
