package org.stillroom.core.drops;

import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;

/**
 * What a drop weighs from the official dropper, whose drop of water is 50 mg: drops weigh in proportion to the surface tension
 * (Tate's law).
 *
 * <p>Good to 5 to 10 % for the official dropper; bottle lips and inserts give drops up to twice as large. A person's own dropper,
 * weighed once, does better. Sources: USP dropper, a drop of water 45 to 55 mg; surface tension of ethanol and water after
 * Vazquez, Alvarez, Navaza, J. Chem. Eng. Data 40, 1995, from memory but for its water end; essential oils 27 to 40 mN/m, from
 * memory.
 */
public final class OfficialDropper {
    /** Half-width of the central 90 %, part of the mass, that covers ordinary droppers; our own estimate. */
    public static final double RELATIVE_DOUBT = 0.3;

    /** How far drops of one dropper may differ, part of the mass. Source: USP, a drop of water weighs 45 to 55 mg. */
    public static final double ALLOWANCE = 0.10;

    /** Surface tension of an essential oil of which nothing is known, mN/m at 20 °C; they lie from 27 to 40. From memory. */
    static final double OIL_TENSION = 29.0;

    /**
     * How far the rule may be off where the dropper's drop of water is known, part of the mass: five of seven printed observations
     * lie within it; own estimate.
     */
    public static final double OF_RULE = 0.10;

    /**
     * No dropper gives drops lighter than this part of its own: that takes a needle of 0.3 mm, the official end being 3 mm wide. Own
     * estimate by Tate's law; the width is from memory.
     */
    static final double LIGHTEST = 0.1;

    /**
     * No tip gives drops so many times as heavy as its own: from tips of 2 cm and wider a liquid no longer falls in single drops. Own
     * estimate by Tate's law with the part of a hanging drop that falls, 0.53, which is from memory (Harkins and Brown).
     */
    static final double HEAVIEST = 6.0;

    static final double WATER_DROP_GRAMS = 0.050;
    private static final double WATER_TENSION = 72.75;

    /** Mass fraction of ethanol, then surface tension at 20 °C, mN/m. */
    private static final double[][] TENSION = {
        {0.0, 72.75}, {0.05, 56.41}, {0.10, 48.14}, {0.15, 42.72}, {0.20, 38.56}, {0.25, 36.09}, {0.30, 33.53},
        {0.40, 30.69}, {0.50, 28.51}, {0.60, 26.72}, {0.70, 25.48}, {0.80, 24.32}, {0.90, 23.23}, {1.0, 22.31}
    };

    private OfficialDropper() {}

    /** Returns what a drop of a liquid that is no oil weighs, g. */
    public static double gramsPerDrop(Contents liquid) {
        return gramsPerDrop(tension(liquid));
    }

    /**
     * Returns what a drop weighs, g.
     *
     * @param millinewtonsPerMetre surface tension at 20 °C
     */
    static double gramsPerDrop(double millinewtonsPerMetre) {
        return WATER_DROP_GRAMS * millinewtonsPerMetre / WATER_TENSION;
    }

    private static double tension(Contents liquid) {
        double wet = liquid.grams(Substance.ETHANOL) + liquid.grams(Substance.WATER);
        double p = wet > 0.0 ? liquid.grams(Substance.ETHANOL) / wet : 0.0;
        int above = 1;
        while (TENSION[above][0] < p) {
            above++;
        }
        double[] low = TENSION[above - 1];
        double[] high = TENSION[above];
        return low[1] + (p - low[0]) / (high[0] - low[0]) * (high[1] - low[1]);
    }
}
