package org.stillroom.core.alcohol;

/**
 * Refractive index of ethanol with water at 20 °C and 589.3 nm.
 *
 * <p>n = 1.33299 + Σₖ₌₁..₇ cₖ pᵏ to a mass fraction of 0.98, our own least-squares fit of the CRC Handbook's table (residuals
 * at most 0.0001); from there straight to the 1.3614 that the table gives for pure ethanol. The index has a flat maximum
 * near 0.8, so that two strengths share one index above 0.6. Source: CRC Handbook of Chemistry and Physics, 102nd ed.,
 * Concentrative properties of aqueous solutions.
 */
public final class EthanolRefraction {
    private static final double WATER = 1.33299;
    private static final double[] C = {
        0.05357394, 0.15796847, -0.37774403, -0.27211498, 1.47693473, -1.49960564, 0.49039984
    };
    private static final double FIT_END = 0.98;
    private static final double ETHANOL = 1.3614;

    private EthanolRefraction() {}

    /**
     * Returns the refractive index.
     *
     * @param ethanolFraction grams of ethanol per gram of ethanol and water, 0 to 1
     */
    public static double index(double ethanolFraction) {
        if (ethanolFraction > FIT_END) {
            double end = fit(FIT_END);
            return end + (ethanolFraction - FIT_END) / (1.0 - FIT_END) * (ETHANOL - end);
        }
        return fit(ethanolFraction);
    }

    private static double fit(double p) {
        double sum = 0.0;
        for (int k = C.length - 1; k >= 0; k--) {
            sum = (sum + C[k]) * p;
        }
        return WATER + sum;
    }
}
