package org.stillroom.core.clarity;

import java.util.Map;
import org.stillroom.core.quantity.Span;

/**
 * What is in doubt of a batch besides solubility.
 *
 * @param strengthHalfWidth half-width of the central 90 % of its strength, % vol
 * @param doseHalfWidth half-width within which the dose of oil lies, as a part of it, each value as likely
 * @param composition least and most of constituents as parts of their typical amounts, by CAS number or name; below and above the
 *     typical as likely; of what is not among them our own estimate holds
 */
public record Doubts(double strengthHalfWidth, double doseHalfWidth, Map<String, Span> composition) {
    /** Strength and dose are exactly as said. */
    public static final Doubts NONE = new Doubts(0.0, 0.0, Map.of());

    public Doubts {
        composition = Map.copyOf(composition);
        if (!(strengthHalfWidth >= 0.0 && doseHalfWidth >= 0.0 && doseHalfWidth < 1.0)) {
            throw new IllegalArgumentException("half-widths are zero or more, that of the dose below 1: "
                    + strengthHalfWidth + ", " + doseHalfWidth);
        }
    }
}
