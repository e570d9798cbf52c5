package org.stillroom.core.ingredient;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A dose of a liquid per litre of what is made, in each unit in which people dose.
 *
 * @param drops from the maker's own dropper where that is known, else from the official one
 * @param millilitres at 20 °C; empty where its density is not known
 * @param grams of it
 */
public record DoseUnits(double drops, OptionalDouble millilitres, double grams) {
    /** A litre takes less than this of what is dosed, g; more is poured. Own judgement. */
    private static final double MOST = 20.0;

    /** Returns the dose, or null for what is weighed as a solid, is poured, or is not taken at all. */
    public static @Nullable DoseUnits of(Resolved ingredient, double gramsPerLitre) {
        if (ingredient.solid() || !(gramsPerLitre > 0.0 && gramsPerLitre < MOST)) {
            return null;
        }
        OptionalDouble density = ingredient.gramsPerMillilitre();
        return new DoseUnits(
                gramsPerLitre / ingredient.gramsPerDrop(),
                density.isPresent() ? OptionalDouble.of(gramsPerLitre / density.getAsDouble()) : density,
                gramsPerLitre);
    }

    /** Returns µL at 20 °C; empty where its density is not known. */
    public OptionalDouble microlitres() {
        return millilitres.isPresent() ? OptionalDouble.of(1000.0 * millilitres.getAsDouble()) : millilitres;
    }

    public double milligrams() {
        return 1000.0 * grams;
    }
}
