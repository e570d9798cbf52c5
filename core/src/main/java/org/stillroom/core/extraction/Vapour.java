package org.stillroom.core.extraction;

/**
 * The vapour over ethanol and water, boiling at 101.325 kPa or not.
 *
 * <p>yᵢ = xᵢ·γᵢ·pᵢ(T)/P with vapour pressures by log₁₀ p = A − B/(T + C) and activity by NRTL: τᵢⱼ = bᵢⱼ/T, G = e^(−ατ). Fractions are by
 * amount, ethanol first. Against the table of Perry's handbook y is within 0.016 and the boiling point within 0.6 °C; the azeotrope comes out
 * at 0.882 in place of 0.894, so that nothing is said beyond it. Constants from open collections of such parameters: standing secondary.
 */
public final class Vapour {
    /** Pressure of the air, Pa. */
    static final double PRESSURE = 101_325.0;
    /** Above this part of ethanol the model gives no stronger vapour. */
    static final double AZEOTROPE = 0.88;

    private static final double[] A = {10.33675, 10.11564};
    private static final double[] B = {1648.22, 1687.537};
    private static final double[] C = {-42.232, -42.98};
    private static final double B12 = -29.166654483541816;
    private static final double B21 = 624.8676222389441;
    private static final double ALPHA = 0.2937;
    private static final int MOST_STEPS = 60;

    private Vapour() {}

    /**
     * Vapour over a boiling liquid.
     *
     * @param ethanol part of it by amount
     * @param kelvin boiling point
     */
    record Over(double ethanol, double kelvin) {}

    /**
     * Returns the vapour over a liquid.
     *
     * @param x ethanol in the liquid, part by amount, 0 to 1
     */
    static Over over(double x) {
        double low = 345.0;
        double high = 380.0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double middle = 0.5 * (low + high);
            boolean boils = pressure(x, middle) > PRESSURE;
            low = boils ? low : middle;
            high = boils ? middle : high;
        }
        double kelvin = 0.5 * (low + high);
        return new Over(x * activity(x, kelvin, 0) * saturation(kelvin, 0) / PRESSURE, kelvin);
    }

    /**
     * Returns the activity of the water in ethanol and water.
     *
     * @param x ethanol in the liquid, part by amount, 0 to 1
     */
    public static double waterActivity(double x, double kelvin) {
        return (1.0 - x) * activity(x, kelvin, 1);
    }

    /** Returns the pressure of the vapour over a liquid, Pa. */
    static double pressure(double x, double kelvin) {
        return x * activity(x, kelvin, 0) * saturation(kelvin, 0)
                + (1.0 - x) * activity(x, kelvin, 1) * saturation(kelvin, 1);
    }

    private static double saturation(double kelvin, int which) {
        return Math.pow(10.0, A[which] - B[which] / (kelvin + C[which]));
    }

    private static double activity(double x1, double kelvin, int which) {
        double x2 = 1.0 - x1;
        double tau12 = B12 / kelvin;
        double tau21 = B21 / kelvin;
        double g12 = Math.exp(-ALPHA * tau12);
        double g21 = Math.exp(-ALPHA * tau21);
        double down21 = x1 + x2 * g21;
        double down12 = x2 + x1 * g12;
        double ln = which == 0
                ? x2 * x2 * (tau21 * square(g21 / down21) + tau12 * g12 / square(down12))
                : x1 * x1 * (tau12 * square(g12 / down12) + tau21 * g21 / square(down21));
        return Math.exp(ln);
    }

    private static double square(double value) {
        return value * value;
    }
}
