package org.stillroom.core.gauging;

/**
 * The thermometer that all readings of one vessel share: what it shows too much is one error common to them all.
 *
 * @param halfWidth within which it is right, °C, 0 or more; every value within is as likely
 */
public record Thermometer(double halfWidth) {
    /** One that is never off. */
    public static final Thermometer EXACT = new Thermometer(0.0);
    /** One of a kitchen; from memory. */
    public static final Thermometer USUAL = new Thermometer(0.5);

    public Thermometer {
        if (!(halfWidth >= 0.0 && halfWidth <= 20.0)) {
            throw new IllegalArgumentException("a thermometer is right within 0 to 20 °C, not " + halfWidth);
        }
    }

    /** Returns the standard deviation of a value that lies anywhere within the half-width, °C. */
    double sigma() {
        return halfWidth / Math.sqrt(3.0);
    }
}
