package org.stillroom.planner.marks;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Source;

/**
 * One line as it is really measured.
 *
 * @param exact what the plan would take
 * @param reading what the instrument shows
 * @param grams what is then really taken, g; about so much where a vessel is made up to its mark
 * @param toleranceGrams half-width of the instrument's own error, g; the doubt of an ingredient's density comes on top where
 *     {@link Reading#isByVolume()}
 * @param toleranceSource where the tolerance comes from, or null when the maker said it
 */
public record MeasuredLine(
        PlannedLine exact,
        Reading reading,
        double grams,
        double toleranceGrams,
        @Nullable Source toleranceSource) {
    public String name() {
        return exact.name();
    }
}
