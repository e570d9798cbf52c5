package org.stillroom.core.extraction;

import java.util.List;
import org.stillroom.core.reference.Standing;

/**
 * A plant as it goes into spirit.
 *
 * @param name the name that we show
 * @param aliases other names that mean the same
 * @param sort what it is like
 * @param water part of its mass, 0 to 1
 * @param waterDoubt half-width of that part
 * @param sugar part of its mass; 0 where the source has none
 * @param sugarDoubt half-width of that part
 * @param sugarKnown whether the source states a sugar
 * @param standing how the figures came to us
 */
public record Plant(
        String name,
        List<String> aliases,
        PlantSort sort,
        double water,
        double waterDoubt,
        double sugar,
        double sugarDoubt,
        boolean sugarKnown,
        Standing standing) {
    public Plant {
        aliases = List.copyOf(aliases);
        if (!(water >= 0.0 && water <= 1.0 && sugar >= 0.0 && water + sugar <= 1.0)) {
            throw new IllegalArgumentException(
                    name + ": water and sugar are parts of its mass from 0 to 1, not " + water + " and " + sugar);
        }
    }

    /** Returns the plant with the water that its maker knows, part of its mass. */
    public Plant withWater(double part) {
        double room = Math.min(sugar, 1.0 - part);
        return new Plant(name, aliases, sort, part, 0.0, room, sugarDoubt, sugarKnown, standing);
    }

    /** Returns the plant with the sugar that its maker knows, part of its mass; its water gives way where both do not fit. */
    public Plant withSugar(double part) {
        double room = Math.min(water, 1.0 - part);
        return new Plant(name, aliases, sort, room, waterDoubt, part, 0.0, true, standing);
    }
}
