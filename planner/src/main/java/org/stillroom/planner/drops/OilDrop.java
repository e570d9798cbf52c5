package org.stillroom.planner.drops;

/**
 * An oil of an essence as whole drops see it.
 *
 * @param name what the maker calls it
 * @param part of the mass of all oils together, 0 to 1
 * @param gramsPerDrop from the maker's dropper
 */
public record OilDrop(String name, double part, double gramsPerDrop) {
    public OilDrop {
        if (!(part > 0.0 && part <= 1.0)) {
            throw new IllegalArgumentException(
                    name + ": a part of the oils lies above 0 and at most at 1, not at " + part);
        }
        if (!(gramsPerDrop > 0.0 && gramsPerDrop < 1.0)) {
            throw new IllegalArgumentException(
                    name + ": a drop weighs above 0 and below 1 g, not " + gramsPerDrop + " g");
        }
    }

    /** Returns this oil diluted in spirit, so that a drop carries less of it, g of oil per drop. */
    OilDrop carrying(double gramsOfOil) {
        return new OilDrop(name, part, gramsOfOil);
    }
}
