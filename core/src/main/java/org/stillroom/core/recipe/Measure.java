package org.stillroom.core.recipe;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

/**
 * A thing that the maker measures with.
 *
 * @param name what the maker calls it
 * @param kind scale, cylinder, jigger, spoon, cup, dropper, syringe
 * @param marks the least step it shows: mass for a scale, volume else; null where {@code sizes} or the kind says it
 * @param tolerance half-width within which it is right; null takes the default of its kind
 * @param holds the most it takes at once, or null when not said
 * @param sizes the fixed volumes of a jigger, spoon or cup set; empty else
 */
public record Measure(
        String name,
        MeasureKind kind,
        @Nullable Typed<Amount> marks,
        @Nullable Typed<Amount> tolerance,
        @Nullable Typed<Amount> holds,
        List<Typed<Volume>> sizes) {
    public Measure {
        sizes = List.copyOf(sizes);
    }
}
