package org.stillroom.core.quantity;

/**
 * Strength by volume: volume of pure ethanol per 100 volumes of the liquid, both at the temperature of the basis.
 *
 * @param percent 0 to 100 % vol
 * @param basis the temperature of both volumes
 */
public record AlcoholByVolume(double percent, VolumeBasis basis) implements Strength {
    public AlcoholByVolume {
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException(
                    "a strength lies from 0 to 100 % vol, not " + QuantityWords.plain(percent) + " % vol");
        }
    }

    /** Returns a strength at 20 °C, the basis meant wherever none is named. */
    public static AlcoholByVolume at20(double percent) {
        return new AlcoholByVolume(percent, VolumeBasis.AT_20C);
    }
}
