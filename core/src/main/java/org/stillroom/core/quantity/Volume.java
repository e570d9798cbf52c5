package org.stillroom.core.quantity;

/** A volume in millilitres, zero or more; its temperature is said where it is used. */
public record Volume(double millilitres) implements Amount {
    /** The US fluid ounce: 1/128 of 231 cubic inches, exactly. */
    public static final double MILLILITRES_PER_US_OUNCE = 29.5735295625;

    public Volume {
        if (!(millilitres >= 0 && millilitres < 1e12)) {
            throw new IllegalArgumentException(
                    "a volume lies from 0 to below 1e12 mL, not " + QuantityWords.plain(millilitres) + " mL");
        }
    }

    public static Volume litres(double litres) {
        return new Volume(litres * 1000.0);
    }

    public double litres() {
        return millilitres / 1000.0;
    }
}
