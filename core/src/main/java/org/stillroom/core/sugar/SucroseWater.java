package org.stillroom.core.sugar;

import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;

/**
 * What sucrose adds to the density of water, by the formula of the sugar trade.
 *
 * <p>ρ(w,t) − ρ_water(t) = Σₖ₌₀..₄ θᵏ Σᵢ cₖᵢ wⁱ with θ = (t − 20 °C)/100 °C and w the mass fraction of sucrose, kg/m³. Only
 * this excess is taken from the formula; the water is the alcohol formula's own, so that syrup and spirit meet without a
 * seam. Range 0 to 100 °C (from memory), to saturation. One of two transcriptions prints c₀₄ as −3.9646: at most
 * 0.0003 kg/m³. Source: Bubník, Kadlec, Urban, Bruhns, Sugar Technologists Manual (ICUMSA SPS-4).
 */
public final class SucroseWater {
    private static final double[][] C = {
        {385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289},
        {-46.272, -7.172, 1.1597, 5.1126, 17.5254},
        {59.7712, 7.2491, 12.363, -35.4791},
        {-47.2207, -21.6977, 27.6301},
        {18.3184, 12.3081}
    };

    private static final Isotherm TWENTY = isotherm(20.0);

    private SucroseWater() {}

    /** Returns the excess densities at one temperature. */
    public static Isotherm at(Temperature temperature) {
        return temperature.celsius() == 20.0 ? TWENTY : isotherm(temperature.celsius());
    }

    private static Isotherm isotherm(double celsius) {
        double theta = (celsius - 20.0) / 100.0;
        double[] ofFraction = new double[C[0].length];
        double power = 1.0;
        for (double[] row : C) {
            for (int i = 0; i < row.length; i++) {
                ofFraction[i] += row[i] * power;
            }
            power *= theta;
        }
        return new Isotherm(ofFraction);
    }

    /** What sucrose adds to the density of water at one temperature. */
    public static final class Isotherm {
        private final double[] coefficients;

        private Isotherm(double[] coefficients) {
            this.coefficients = coefficients;
        }

        /**
         * Returns the density of the solution less that of water, kg/m³.
         *
         * @param sucroseFraction grams of sucrose per gram of sucrose and water, 0 to 1
         */
        public double excess(double sucroseFraction) {
            double sum = 0.0;
            for (int i = coefficients.length - 1; i >= 0; i--) {
                sum = (sum + coefficients[i]) * sucroseFraction;
            }
            return sum;
        }

        /** Returns how the density changes with the mass fraction of sucrose, kg/m³ per unit of fraction. */
        public double slope(double sucroseFraction) {
            double sum = 0.0;
            for (int i = coefficients.length - 1; i >= 0; i--) {
                sum = sum * sucroseFraction + (i + 1) * coefficients[i];
            }
            return sum;
        }

        /**
         * Returns the mass fraction of sucrose whose solution is so much denser than water.
         *
         * @param excess density of the solution less that of water, kg/m³, from zero to that of sucrose alone
         * @throws IllegalArgumentException outside that range: no syrup is so light or so heavy
         */
        public double fractionOfExcess(double excess) {
            if (!(excess >= 0.0 && excess <= excess(1.0))) {
                throw new IllegalArgumentException("sucrose makes water denser by 0 to " + excess(1.0)
                        + " kg/m³ at this temperature, not by " + excess);
            }
            return Root.of(w -> excess(w) - excess, this::slope);
        }
    }
}
