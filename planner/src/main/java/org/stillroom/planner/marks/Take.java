package org.stillroom.planner.marks;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Source;

/**
 * An amount that an instrument can take.
 *
 * @param reading what it shows
 * @param grams what that weighs
 * @param toleranceGrams half-width of the instrument's error
 * @param halfMarkGrams half of what lies between neighbouring readings: what rounding can cost at most
 * @param scalesWithAmount whether the error is a part of the amount, so that a larger batch does not make it smaller
 * @param source of the tolerance, or null when the maker said it
 */
record Take(
        Reading reading,
        double grams,
        double toleranceGrams,
        double halfMarkGrams,
        boolean scalesWithAmount,
        @Nullable Source source) {
    double error() {
        return toleranceGrams + halfMarkGrams;
    }
}
