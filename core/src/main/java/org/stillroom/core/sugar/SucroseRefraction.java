package org.stillroom.core.sugar;

import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.RefractiveIndex;

/**
 * The scale of a refractometer: °Brix from the refractive index of sucrose with water at 20 °C and 589.3 nm, and back.
 *
 * <p>Brix = ((((11758.74 n − 88885.21) n + 270177.93) n − 413145.80) n + 318417.95) n − 99127.4536, a fit of the ICUMSA table.
 * The fit puts water at n = 1.333009; it is shifted so that water is 1.33299, as in the curve of ethanol with water. Good to
 * 0.08 °Bx (0.00016 in n) below 80 °Bx and 0.14 °Bx at 84, checked against the CRC Handbook; above, the scale goes on to 100 unchecked.
 */
public final class SucroseRefraction {
    /** Refractive index of water at 20 °C, 589.3 nm. */
    public static final double WATER = 1.33299;
    /** Greatest Brix at which the scale was checked. */
    public static final double CHECKED_TO = 84.0;

    private static final double[] BRIX = {-99127.4536, 318417.95, -413145.80, 270177.93, -88885.21, 11758.74};
    private static final double WATER_OF_FIT = indexOf(0.0);
    private static final double ALL_SUGAR = indexOf(100.0) - WATER_OF_FIT + WATER;

    private SucroseRefraction() {}

    /**
     * Returns what a refractometer would show.
     *
     * @throws IllegalArgumentException below the index of water or beyond 100 °Bx: off the scale
     */
    public static Brix brix(RefractiveIndex index) {
        if (!(index.value() >= WATER && index.value() <= ALL_SUGAR)) {
            throw new IllegalArgumentException(
                    "the Brix scale runs from n = " + WATER + " to " + ALL_SUGAR + ", not to " + index.value());
        }
        return new Brix(Math.max(0.0, Math.min(100.0, polynomial(index.value() - WATER + WATER_OF_FIT))));
    }

    /** Returns the refractive index of sucrose with water. */
    public static RefractiveIndex index(Brix brix) {
        return new RefractiveIndex(indexOf(brix.degrees()) - WATER_OF_FIT + WATER);
    }

    /** Returns how the index changes with Brix, per °Bx. */
    public static double slope(RefractiveIndex index) {
        return 1.0 / derivative(index.value() - WATER + WATER_OF_FIT);
    }

    private static double indexOf(double degrees) {
        double n = 1.333 + 0.0018 * degrees;
        for (int i = 0; i < 50; i++) {
            double step = (polynomial(n) - degrees) / derivative(n);
            n -= step;
            if (Math.abs(step) < 1e-12) {
                break;
            }
        }
        return n;
    }

    private static double polynomial(double n) {
        double sum = 0.0;
        for (int k = BRIX.length - 1; k >= 0; k--) {
            sum = sum * n + BRIX[k];
        }
        return sum;
    }

    private static double derivative(double n) {
        double sum = 0.0;
        for (int k = BRIX.length - 1; k >= 1; k--) {
            sum = sum * n + k * BRIX[k];
        }
        return sum;
    }
}
