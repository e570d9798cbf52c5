package org.stillroom.studio.usecase.learn;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.quantity.QuantityWords;

/**
 * What weighing bottles tells of drops.
 *
 * @param dropper that they were counted with
 * @param liquid what they are drops of, or null where it is told of the dropper whatever the liquid
 * @param lot id of the bottle, or null
 * @param reckoned g that a drop is reckoned to weigh; 1 where it is told of a dropper
 * @param found what it weighs, g, with the central 90 %; of a dropper how many times the reckoned
 * @param weighings how many tell of it
 */
public record LearntDrop(
        String dropper, @Nullable String liquid, @Nullable String lot, double reckoned, Interval found, int weighings) {
    /** Returns whether it differs from what is reckoned by more than the doubt. */
    public boolean isClear() {
        return differsFrom(reckoned);
    }

    /** Returns whether it differs from a drop of so many grams by more than the doubt. */
    public boolean differsFrom(double grams) {
        return found.low() > grams || found.high() < grams;
    }

    /** Returns it as it would be typed, such as "0.0235 g". */
    public String typed() {
        return QuantityWords.fixed(found.value(), 4) + " g";
    }
}
