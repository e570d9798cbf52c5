package org.stillroom.core.extraction;

/**
 * A small cask beside a large one: what the wood gives goes by its surface per litre.
 *
 * <p>The cask is taken as a cylinder 1.3 times as high as it is wide, heads included; own estimate. A cask of 225 L then has 92 cm² per
 * litre, where about 90 are usual (from memory). How long is common practice, no source.
 *
 * @param litres that it holds
 */
public record Cask(double litres) {
    private static final double LARGE = 225.0;
    private static final double HEIGHT_OVER_WIDTH = 1.3;

    /** In a large cask one tastes once a month. Common practice, no source. */
    private static final double TASTE_EVERY_DAYS = 30.0;

    private static final double DAYS_IN_YEAR = 365.0;

    public Cask {
        if (!(litres >= 0.5 && litres <= 1000.0)) {
            throw new IllegalArgumentException("a cask holds 0.5 to 1000 L, not " + litres + " L");
        }
    }

    /** Returns the inner surface, cm² per litre. */
    public double surfacePerLitre() {
        double width = Math.cbrt(1000.0 * litres * 4.0 / (Math.PI * HEIGHT_OVER_WIDTH));
        double surface = Math.PI * width * width * (HEIGHT_OVER_WIDTH + 0.5);
        return surface / litres;
    }

    /** Returns how many times as much wood a litre meets as in a cask of 225 L. */
    public double timesOfLarge() {
        return surfacePerLitre() / new Cask(LARGE).surfacePerLitre();
    }

    /** Returns every how many days to taste. */
    public double tasteEveryDays() {
        return TASTE_EVERY_DAYS / timesOfLarge();
    }

    /** Returns the days in which the wood gives as much as a large cask in a year. */
    public double daysForAYear() {
        return DAYS_IN_YEAR / timesOfLarge();
    }
}
