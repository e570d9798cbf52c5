package org.stillroom.core.quantity;

/** What "oz" means to the person who typed it; never mixed within one recipe. */
public enum OunceMeaning {
    /** The US fluid ounce, 29.5735 mL: what is meant unless the file or the settings say otherwise. */
    US_FLUID(Volume.MILLILITRES_PER_US_OUNCE),
    /** The bar's round ounce of 30 mL, also the labelling ounce of 21 CFR 101.9(b)(5)(viii). */
    THIRTY_MILLILITRES(30.0);

    private final double millilitres;

    OunceMeaning(double millilitres) {
        this.millilitres = millilitres;
    }

    public double millilitres() {
        return millilitres;
    }
}
