package org.stillroom.core.gauging;

import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Temperature;

/**
 * One reading of what is in the vessel.
 *
 * @param shown which instrument, and on which scale
 * @param value what it showed, in the unit of {@code shown}
 * @param at temperature of the liquid when it was read, as the thermometer showed it, −20 to 40 °C
 * @param halfWidth within which the reading is right, in the same unit, above zero; every value within is as likely
 */
public record Reading(Shown shown, double value, Temperature at, double halfWidth) {
    public Reading {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading is a number, not " + value);
        }
        if (!(halfWidth > 0.0 && halfWidth < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the error of a reading lies above zero, not at " + halfWidth);
        }
    }

    /** Returns a reading with the error that such an instrument usually has. */
    public static Reading usual(Shown shown, double value, Temperature at) {
        return new Reading(shown, value, at, shown.usualHalfWidth(value));
    }

    /**
     * Returns what an instrument would show of a liquid that follows the formulas.
     *
     * @param halfWidth within which the instrument is right, or NaN for what such an instrument usually has
     */
    public static Reading foreseen(Shown shown, Contents liquid, Temperature at, double halfWidth) {
        double value = shown.of(new Mixture(liquid.toGrams()), at);
        return Double.isNaN(halfWidth) ? usual(shown, value, at) : new Reading(shown, value, at, halfWidth);
    }

    /** Returns what it would have shown of a liquid. */
    double of(Mixture mixture) {
        return shown.of(mixture, mixture.real(at));
    }

    /** Returns the variance of a value that lies anywhere within the half-width. */
    double variance() {
        return halfWidth * halfWidth / 3.0;
    }
}
