package org.stillroom.core.quantity;

/**
 * Random numbers that are the same for the same seed on every machine and in every browser.
 *
 * <p>Source: G. Steele, D. Lea, C. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014 (the 64-bit mix);
 * normal deviates by G. Marsaglia's polar method, SIAM Review 6, 1964.
 */
public final class SeededDraws {
    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;
    private static final double UNIT = 0x1.0p-53;

    private long state;
    private double spare = Double.NaN;

    /** Starts a sequence; the same seed starts the same one. */
    public SeededDraws(long seed) {
        this.state = seed;
    }

    /** Returns a number from 0 to below 1, each as likely. */
    public double unit() {
        state += GOLDEN_GAMMA;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return ((z ^ (z >>> 31)) >>> 11) * UNIT;
    }

    /** Returns a number from −1 to 1, each as likely. */
    public double between() {
        return 2.0 * unit() - 1.0;
    }

    /** Returns a number of the standard normal distribution. */
    public double normal() {
        if (!Double.isNaN(spare)) {
            double kept = spare;
            spare = Double.NaN;
            return kept;
        }
        double x = between();
        double y = between();
        double square = x * x + y * y;
        while (square >= 1.0 || square == 0.0) {
            x = between();
            y = between();
            square = x * x + y * y;
        }
        double factor = Math.sqrt(-2.0 * Math.log(square) / square);
        spare = y * factor;
        return x * factor;
    }
}
