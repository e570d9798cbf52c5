package org.stillroom.core.aroma;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Standing;

/**
 * One substance of an essential oil or essence, known by its CAS number.
 *
 * @param cas CAS Registry Number
 * @param name the name that we show
 * @param aliases other names that mean the same substance
 * @param formula empirical formula
 * @param gramsPerMole molar mass
 * @param waterSolubility mg/L in water at 25 °C; of a solid, of the solid
 * @param logP decimal logarithm of the octanol–water partition coefficient
 * @param density g/mL near 20 °C, or null where none is known
 */
public record Constituent(
        String cas,
        String name,
        List<String> aliases,
        String formula,
        double gramsPerMole,
        Property waterSolubility,
        Property logP,
        @Nullable Property density) {
    /**
     * A property with where it comes from.
     *
     * @param value in the unit of the property
     * @param standing how it came to us
     * @param source the collection and its record numbers, or empty where it is recalled
     */
    public record Property(double value, Standing standing, String source) {}
}
