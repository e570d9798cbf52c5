package org.stillroom.core.extraction;

import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Substance;

/**
 * The pressure in a jar that was closed at 20 °C and warmed: air that is warmer and has less room, and the vapour of the spirit over it.
 *
 * <p>Vapour by {@link Vapour}, the air as an ideal gas. Holds while some of the jar is empty; what the plants let go is not counted.
 */
public final class SealedJar {
    /** Empty part of the jar when it is closed, where nobody says it. Common practice, no source. */
    static final double EMPTY = 0.2;

    /** How far that part may be off, either way. Own judgement. */
    private static final double EMPTY_DOUBT = 0.05;

    /** Warmer than this a sealed jar is asked for no more, °C: spirit boils from 78 °C on. Own judgement. */
    public static final double WARMEST = 70.0;

    /** Growth of the liquid, part of it per kelvin: that of ethanol, from memory; watery spirit grows less. */
    private static final double GROWTH = 1.1e-3;

    private static final double ZERO_CELSIUS = 273.15;
    private static final double CLOSED_AT = 20.0;
    private static final double PASCAL_PER_BAR = 1e5;

    private SealedJar() {}

    /**
     * Returns the pressure over that of the room, bar; its doubt is that of how much of the jar is empty.
     *
     * @param liquid in the jar
     * @param celsius from 20 to {@link #WARMEST}
     */
    public static Estimate pressure(Contents liquid, double celsius) {
        if (!(celsius >= CLOSED_AT && celsius <= WARMEST)) {
            throw new IllegalArgumentException(
                    "a sealed jar is warmed to 20 to " + WARMEST + " °C, not to " + celsius + " °C");
        }
        double x = ethanol(liquid);
        double fuller = bar(x, celsius, EMPTY - EMPTY_DOUBT);
        double emptier = bar(x, celsius, EMPTY + EMPTY_DOUBT);
        return new Estimate(bar(x, celsius, EMPTY), 0.5 * (fuller - emptier));
    }

    /** Returns the temperature at which a spirit boils in the open at sea level, °C. */
    public static double boilsAt(Contents spirit) {
        return Vapour.over(ethanol(spirit)).kelvin() - ZERO_CELSIUS;
    }

    private static double bar(double x, double celsius, double empty) {
        double room = empty - GROWTH * (celsius - CLOSED_AT) * (1.0 - empty);
        double air = (Vapour.PRESSURE - Vapour.pressure(x, CLOSED_AT + ZERO_CELSIUS))
                * (celsius + ZERO_CELSIUS)
                / (CLOSED_AT + ZERO_CELSIUS)
                * empty
                / room;
        double total = air + Vapour.pressure(x, celsius + ZERO_CELSIUS);
        return (total - Vapour.PRESSURE) / PASCAL_PER_BAR;
    }

    private static double ethanol(Contents liquid) {
        double ethanol = liquid.grams(Substance.ETHANOL) / PotStill.GRAMS_PER_MOLE_ETHANOL;
        double water = liquid.grams(Substance.WATER) / PotStill.GRAMS_PER_MOLE_WATER;
        return ethanol / (ethanol + water);
    }
}
