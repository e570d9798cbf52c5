package org.stillroom.core.recipe;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.drops.OwnDropper;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

/**
 * A thing that the maker measures with.
 *
 * @param name what the maker calls it
 * @param kind scale, cylinder, jigger, spoon, cup, dropper, syringe
 * @param marks the least step it shows: mass for a scale, volume else; null where {@code sizes} or the kind says it
 * @param tolerance half-width within which it is right, of a dropper by mass within which its drop of water is known; null takes the
 *     default of its kind
 * @param holds the most it takes at once, or null when not said
 * @param sizes the fixed volumes of a jigger, spoon or cup set; empty else
 * @param drop what a drop of water from a dropper weighs, or null where that is not known
 */
public record Measure(
        String name,
        MeasureKind kind,
        @Nullable Typed<Amount> marks,
        @Nullable Typed<Amount> tolerance,
        @Nullable Typed<Amount> holds,
        List<Typed<Volume>> sizes,
        @Nullable Typed<Mass> drop) {
    public Measure {
        sizes = List.copyOf(sizes);
    }

    /** Returns the dropper that it is, or null where it is none or its drop of water is not known. */
    public @Nullable OwnDropper ownDropper() {
        if (kind != MeasureKind.DROPPER || drop == null) {
            return null;
        }
        double within = tolerance != null && tolerance.value() instanceof Mass mass ? mass.grams() : 0.0;
        return new OwnDropper(name, drop.value(), within / drop.value().grams());
    }
}
