package org.stillroom.core.extraction;

import org.stillroom.core.liquid.Bounded;

/**
 * How far an extraction has come in time: first order, c = c∞·(1 − e^(−k·t)).
 *
 * <p>Rates of the table are derived from the times after which handbooks stop: an order of magnitude, to plan tasting days by. Samples
 * of the maker's own do better ({@link SteepingFit}).
 *
 * @param perDay k
 * @param slowest P5 of k; 0 where nothing says that it ever ends
 * @param quickest P95 of k; infinite where all may have come before anyone looked
 */
public record Steeping(double perDay, double slowest, double quickest) {
    /** How far a rate of the table may be off, by a factor; own estimate. */
    public static final double WEAK = 3.0;

    /** Activation energy, J/mol, middle of 20 to 35 kJ/mol, from memory. */
    private static final double ACTIVATION = 27_500.0;

    private static final double GAS_CONSTANT = 8.314;
    private static final double ROOM_KELVIN = 293.15;

    public Steeping {
        if (!(slowest >= 0.0 && perDay > 0.0 && slowest <= perDay && perDay <= quickest)) {
            throw new IllegalArgumentException("a rate lies above zero between its bounds, not " + slowest + ", "
                    + perDay + " and " + quickest + " per day");
        }
    }

    /** Returns how a sort of plant gives at a temperature, °C. */
    public static Steeping of(PlantSort sort, double celsius) {
        double kelvin = celsius + 273.15;
        double warmth = Math.exp(-ACTIVATION / GAS_CONSTANT * (1.0 / kelvin - 1.0 / ROOM_KELVIN));
        double perDay = sort.perDay() * warmth;
        return new Steeping(perDay, perDay / WEAK, perDay * WEAK);
    }

    static double gone(double times) {
        return -Math.expm1(-times);
    }

    /** Returns the part that has come after so many days, 0 to 1. */
    public double after(double days) {
        return gone(perDay * days);
    }

    /** Returns the part that has come after so many days with its bounds, 0 to 1. */
    public Bounded partAfter(double days) {
        return new Bounded(after(days), gone(slowest * days), gone(quickest * days));
    }

    /** Returns the days after which so much has come, a part from 0 to below 1; the upper bound is infinite where no end is seen. */
    public Bounded daysTo(double part) {
        double times = -Math.log1p(-part);
        return new Bounded(times / perDay, times / quickest, times / slowest);
    }
}
