package org.stillroom.core.liquid;

import org.stillroom.core.reference.Source;

/**
 * Volume that a dissolved substance adds to its own water at 20 °C, mL per gram of it: φ(w) = a + b·w + c·w², w being its mass
 * per mass of it and of the water.
 *
 * <p>Up to {@code fitEnd} the coefficients are our own least-squares fits of CRC Handbook densities at 20 °C (malic acid: a
 * maker's density table to three decimals); beyond, the value at the end is held. Where no density source exists the figure
 * is a rule of thumb and {@code doubt} is wide.
 *
 * @param a mL/g at infinite dilution
 * @param b change with w, mL/g
 * @param c change with w², mL/g
 * @param fitEnd greatest w of the table that was fitted; 1 where nothing was fitted
 * @param doubt half-width of the central 90 %, part of the volume, our own estimate
 */
record ApparentVolume(double a, double b, double c, double fitEnd, double doubt) {
    private static final double FITTED = 0.003;
    private static final double THUMB = 0.10;
    private static final ApparentVolume MALIC_ACID = new ApparentVolume(0.58634, 0.23637, -0.28536, 0.40, 0.02);
    /** Least doubt beyond the end of a fit, where its last value is held: honey comes out 2 % too dense so, by two sugars at once. */
    private static final double HELD = 0.04;
    /** From this doubt on the figure is a rule of thumb. */
    private static final double RULE_OF_THUMB_FROM = 0.03;

    /** Returns the volume per gram, mL/g, at the mass fraction w in its own water. */
    double at(double w) {
        double x = Math.min(w, fitEnd);
        return a + x * (b + x * c);
    }

    /** Returns how that volume changes with w, mL/g; zero beyond the end of the fit, where the value is held. */
    double slope(double w) {
        return w > fitEnd ? 0.0 : b + 2.0 * c * w;
    }

    /** Returns the doubt at the mass fraction w, part of the volume. */
    double doubtAt(double w) {
        return w > fitEnd ? Math.max(HELD, doubt) : doubt;
    }

    boolean ruleOfThumb() {
        return doubt >= RULE_OF_THUMB_FROM;
    }

    Source source() {
        return ruleOfThumb() ? Source.RULE_OF_THUMB : equals(MALIC_ACID) ? Source.MALIC_MAKER : Source.CRC_SOLUTIONS;
    }

    /** Returns the apparent volume of a substance; ethanol, water and sucrose have formulas of their own. */
    static ApparentVolume of(Substance substance) {
        return switch (substance) {
            case GLUCOSE -> new ApparentVolume(0.61900, 0.02518, 0.00376, 0.60, FITTED);
            case FRUCTOSE -> new ApparentVolume(0.60994, 0.02663, 0.00630, 0.48, FITTED);
            case MALTOSE -> new ApparentVolume(0.61859, -0.00529, 0.03370, 0.60, FITTED);
            case LACTOSE -> new ApparentVolume(0.6075, 0.0, 0.0, 0.18, 0.005);
            case GLYCEROL -> new ApparentVolume(0.77469, -0.01609, 0.03450, 1.0, FITTED);
            case CITRIC -> new ApparentVolume(0.59579, 0.00184, 0.04331, 0.30, FITTED);
            case LACTIC -> new ApparentVolume(0.78428, -0.00749, 0.04166, 0.80, FITTED);
            case ACETIC -> new ApparentVolume(0.864214, 0.0262802, 0.0551024, 0.94, 0.005);
            case MALIC -> MALIC_ACID;
            case PHOSPHORIC -> new ApparentVolume(0.475748, 0.0318901, 0.0165962, 0.40, 0.01);
            case SALT -> new ApparentVolume(0.290884, 0.359536, -0.341054, 0.26, FITTED);
            // Like citric acid: the nearest fruit acid that has been measured.
            case TARTARIC -> new ApparentVolume(0.59579, 0.0, 0.0, 1.0, THUMB);
            case ASCORBIC -> new ApparentVolume(0.59579, 0.0, 0.0, 1.0, THUMB);
            // Like sugar.
            case OTHER_SOLIDS -> new ApparentVolume(0.62, 0.0, 0.0, 1.0, THUMB);
            // Partial specific volume of proteins in water, from memory.
            case PROTEIN -> new ApparentVolume(0.73, 0.0, 0.0, 1.0, 0.05);
            // Milk fat and aroma oil do not dissolve in the water; liquid density, from memory.
            case FAT -> new ApparentVolume(1.0 / 0.92, 0.0, 0.0, 1.0, 0.03);
            // Which oil it is, is not told here: nine of ten of the table of materials have 0.853 to 1.059 g/mL.
            case OIL -> new ApparentVolume(1.0 / 0.88, 0.0, 0.0, 1.0, 0.17);
            case ETHANOL, WATER, SUCROSE ->
                throw new IllegalArgumentException(substance.label() + " has a density formula of its own");
        };
    }
}
