package org.stillroom.core.quantity;

/** What "oz" and "fl oz" mean to the person who typed it; never mixed within one recipe. */
public enum OunceMeaning {
    /** The US fluid ounce, 29.5735 mL: what is meant unless the file or the settings say otherwise. */
    US_FLUID(Volume.MILLILITRES_PER_US_OUNCE, "an ounce is taken as the US fluid ounce, 29.5735 mL"),
    /** The bar's round ounce of 30 mL, also the labelling ounce of 21 CFR 101.9(b)(5)(viii). */
    THIRTY_MILLILITRES(30.0, "an ounce is taken as 30 mL");

    private final double millilitres;
    private final String assumption;

    OunceMeaning(double millilitres, String assumption) {
        this.millilitres = millilitres;
        this.assumption = assumption;
    }

    public double millilitres() {
        return millilitres;
    }

    /** Returns what is taken for granted where someone wrote "oz", a sentence to show beside the value. */
    public String assumption() {
        return assumption;
    }
}
