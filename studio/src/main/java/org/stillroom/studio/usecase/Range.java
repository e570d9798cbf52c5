package org.stillroom.studio.usecase;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;

/** The range in which anything can be said of a liquid. */
final class Range {
    private Range() {}

    /** Refuses a temperature at which no density is known. */
    static void refuseOutside(Temperature temperature) {
        double celsius = temperature.celsius();
        if (!(celsius >= EthanolWater.LOWEST_CELSIUS && celsius <= EthanolWater.HIGHEST_CELSIUS)) {
            String range = QuantityWords.plain(EthanolWater.LOWEST_CELSIUS) + " to "
                    + QuantityWords.plain(EthanolWater.HIGHEST_CELSIUS) + " °C";
            throw new Impossible(
                    "temperature",
                    "densities of spirits are known from " + range + ", not at " + QuantityWords.fixed(celsius, 1)
                            + " °C.",
                    "Give a temperature from " + range + ".");
        }
    }
}
