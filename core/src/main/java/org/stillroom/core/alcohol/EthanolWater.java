package org.stillroom.core.alcohol;

import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;

/**
 * Density of ethanol with water by the international formula.
 *
 * <p>ρ(p,t) = A₁ + Σₖ₌₂..₁₂ Aₖ pᵏ⁻¹ + Σₖ₌₁..₆ Bₖ (t−20)ᵏ + Σᵢ₌₁..₅ Σₖ₌₁..ₘᵢ Cᵢₖ pᵏ (t−20)ⁱ, where p is the mass fraction of
 * ethanol, t the temperature in °C (IPTS-68, at most 0.01 °C from today's scale here) and ρ the density in kg/m³ of the
 * mass in vacuum. At a given temperature it is a polynomial in p alone, which {@link #at} works out once.
 *
 * <p>Range −20 to 40 °C. Source: OIML R 22, International alcoholometric tables, 1975; the same text in the Annex of
 * Directive 76/766/EEC.
 */
public final class EthanolWater {
    /** Lowest temperature of the formula, °C. */
    public static final double LOWEST_CELSIUS = -20.0;
    /** Highest temperature of the formula, °C. */
    public static final double HIGHEST_CELSIUS = 40.0;

    private static final double[] A = {
        998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388,
        306287.4042, -613838.1234, 747017.2998, -547846.1354, 223446.0334, -39032.85426
    };
    private static final double[] B = {
        -0.20618513, -0.0052682542, 3.6130013e-5, -3.8957702e-7, 7.169354e-9, -9.9739231e-11
    };
    private static final double[][] C = {
        {
            0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792,
            3924.090430035045, -12101.64659068747, 22486.46550400788, -26055.62982188164,
            18523.73922069467, -7420.201433430137, 1285.617841998974
        },
        {
            -0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029,
            -50.29988758547014, 109.635566657757, -142.2753946421155, 108.043594285623,
            -44.14153236817392, 7.442971530188783
        },
        {
            -0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922,
            -2.895696483903638, 4.810060584300675, -4.672147440794683, 2.458043105903461,
            -0.5411227621436812
        },
        {4.075376675622027e-6, -8.76305857347111e-6, 6.515031360099368e-6, -1.51578483698721e-6},
        {-2.788074354782409e-8, 1.345612883493354e-8}
    };

    private static final Isotherm TWENTY = isotherm(20.0);

    private EthanolWater() {}

    /**
     * Returns the densities at one temperature.
     *
     * @throws IllegalArgumentException outside −20 to 40 °C, where the formula says nothing
     */
    public static Isotherm at(Temperature temperature) {
        double celsius = temperature.celsius();
        if (celsius == 20.0) {
            return TWENTY;
        }
        if (!(celsius >= LOWEST_CELSIUS && celsius <= HIGHEST_CELSIUS)) {
            throw new IllegalArgumentException(
                    "the density of ethanol with water is known from −20 to 40 °C, not at " + celsius + " °C");
        }
        return isotherm(celsius);
    }

    private static Isotherm isotherm(double celsius) {
        double[] ofFraction = A.clone();
        double power = 1.0;
        for (int k = 0; k < B.length; k++) {
            power *= celsius - 20.0;
            ofFraction[0] += B[k] * power;
            if (k < C.length) {
                for (int j = 0; j < C[k].length; j++) {
                    ofFraction[j + 1] += C[k][j] * power;
                }
            }
        }
        return new Isotherm(ofFraction);
    }

    /** Densities of ethanol with water at one temperature. */
    public static final class Isotherm {
        private final double[] coefficients;

        private Isotherm(double[] coefficients) {
            this.coefficients = coefficients;
        }

        /**
         * Returns the density in kg/m³.
         *
         * @param ethanolFraction grams of ethanol per gram of ethanol and water, 0 to 1
         */
        public double density(double ethanolFraction) {
            double sum = 0.0;
            for (int k = coefficients.length - 1; k >= 0; k--) {
                sum = sum * ethanolFraction + coefficients[k];
            }
            return sum;
        }

        /** Returns how the density changes with the mass fraction of ethanol, kg/m³ per unit of fraction. */
        public double slope(double ethanolFraction) {
            double sum = 0.0;
            for (int k = coefficients.length - 1; k >= 1; k--) {
                sum = sum * ethanolFraction + k * coefficients[k];
            }
            return sum;
        }

        /** Returns the density of water, kg/m³. */
        public double water() {
            return coefficients[0];
        }

        /** Returns the density of ethanol, kg/m³. */
        public double ethanol() {
            return density(1.0);
        }

        /** Returns millilitres of ethanol in 100 mL, both at this temperature. */
        public double percentByVolume(double ethanolFraction) {
            return 100.0 * ethanolFraction * density(ethanolFraction) / ethanol();
        }

        /**
         * Returns the mass fraction of ethanol of the given strength by volume at this temperature.
         *
         * @param percent 0 to 100 % vol
         */
        public double fractionOfPercentByVolume(double percent) {
            double wanted = percent / 100.0 * ethanol();
            return Root.of(p -> p * density(p) - wanted, p -> density(p) + p * slope(p));
        }

        /**
         * Returns the mass fraction of ethanol that has the given density at this temperature.
         *
         * @param kilogramsPerCubicMetre from that of ethanol to that of water at this temperature
         * @throws IllegalArgumentException outside that range: no mixture of the two is so light or so heavy
         */
        public double fractionOfDensity(double kilogramsPerCubicMetre) {
            if (!(kilogramsPerCubicMetre >= ethanol() && kilogramsPerCubicMetre <= water())) {
                throw new IllegalArgumentException("ethanol with water weighs from " + ethanol() + " to " + water()
                        + " kg/m³ at this temperature, not " + kilogramsPerCubicMetre);
            }
            return Root.of(p -> kilogramsPerCubicMetre - density(p), p -> -slope(p));
        }
    }
}
