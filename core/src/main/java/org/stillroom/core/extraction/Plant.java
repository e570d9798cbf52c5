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
 * @param waterBy who says so
 * @param sugar part of its mass; 0 where nobody says
 * @param sugarDoubt half-width of that part
 * @param sugarBy who says so
 * @param standing how the figures of the table came to us
 */
public record Plant(
        String name,
        List<String> aliases,
        PlantSort sort,
        double water,
        double waterDoubt,
        By waterBy,
        double sugar,
        double sugarDoubt,
        By sugarBy,
        Standing standing) {
    /** Who says how much of something is in it. */
    public enum By {
        /** The table. */
        TABLE,
        /** Whoever macerates it; taken as exact, as all that is typed. */
        MAKER,
        /** Nobody: none is counted, or a range that holds whatever it may be. */
        NOBODY
    }

    /** Of what is not water in a fruit, so much is sugar at most. Own estimate, by the table: raspberry 0.31 to plum 0.78, banana 0.49. */
    private static final double SUGAR_OF_DRY = 0.8;

    public Plant {
        aliases = List.copyOf(aliases);
        if (!(water >= 0.0 && water <= 1.0 && sugar >= 0.0 && water + sugar <= 1.0)) {
            throw new IllegalArgumentException(
                    name + ": water and sugar are parts of its mass from 0 to 1, not " + water + " and " + sugar);
        }
    }

    /**
     * Returns a plant that no table has, by what its maker knows of it. The sugar of a fresh fruit is in doubt from none to four fifths of
     * what is not water; of other sorts none is counted.
     *
     * @param water part of its mass, 0 to 1
     */
    public static Plant own(String name, PlantSort sort, double water) {
        double sugar = unknownSugar(sort, water);
        return new Plant(name, List.of(), sort, water, 0.0, By.MAKER, sugar, sugar, By.NOBODY, Standing.OWN);
    }

    /** Returns the middle of what the sugar of a plant may be that nobody states; as much either way is possible, part of its mass. */
    static double unknownSugar(PlantSort sort, double water) {
        return sort.isFruit() ? 0.5 * SUGAR_OF_DRY * (1.0 - water) : 0.0;
    }

    /** Returns whether none of its sugar is counted because nobody says how much it holds. */
    public boolean isSugarNotSaid() {
        return sugarBy == By.NOBODY && sugarDoubt == 0.0;
    }

    /** Returns whether it is dried: dried goods hold less than a third of water. */
    public boolean isDried() {
        return water < 1.0 / 3.0;
    }

    /** Returns the plant with the water that its maker knows, part of its mass. */
    public Plant withWater(double part) {
        double room = Math.min(sugar, 1.0 - part);
        return new Plant(name, aliases, sort, part, 0.0, By.MAKER, room, sugarDoubt, sugarBy, standing);
    }

    /** Returns the plant with the sugar that its maker knows, part of its mass; its water gives way where both do not fit. */
    public Plant withSugar(double part) {
        double room = Math.min(water, 1.0 - part);
        return new Plant(name, aliases, sort, room, waterDoubt, waterBy, part, 0.0, By.MAKER, standing);
    }
}
