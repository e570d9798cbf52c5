package org.stillroom.core.drops;

import org.stillroom.core.quantity.Mass;

/**
 * A maker's own dropper, known by what a drop of water from it weighs: drops of other liquids weigh in proportion to their surface
 * tension, as those of the official dropper do.
 *
 * @param name what the maker calls it
 * @param waterDrop what a drop of water weighs on the mean, above 0 and below 1 g
 * @param relativeDoubt half-width of the central 90 % of that mean, part of it; 0 where it was not said
 */
public record OwnDropper(String name, Mass waterDrop, double relativeDoubt) {
    public OwnDropper {
        if (!(waterDrop.grams() > 0.0 && waterDrop.grams() < 1.0)) {
            throw new IllegalArgumentException(
                    "a drop of water weighs above 0 and below 1 g, not " + waterDrop.grams() + " g");
        }
        if (!(relativeDoubt >= 0.0 && relativeDoubt < 1.0)) {
            throw new IllegalArgumentException("a drop is in doubt by a part of it, not by " + relativeDoubt);
        }
    }

    /** Returns how many times as heavy its drops are as those of the official dropper. */
    public double times() {
        return waterDrop.grams() / OfficialDropper.WATER_DROP_GRAMS;
    }

    /** Returns the half-width of the central 90 % of the mean drop of a liquid other than water, part of it. */
    public double doubtOfOthers() {
        return Math.hypot(OfficialDropper.OF_RULE, relativeDoubt);
    }
}
