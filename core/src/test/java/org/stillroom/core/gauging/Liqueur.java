package org.stillroom.core.gauging;

import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;

/** Liquids of a strength and a sugar that are known. */
final class Liqueur {
    private Liqueur() {}

    /** Returns a litre at 20 °C of so many % vol and g/L of sucrose. */
    static Contents litre(double strength, double sugar) {
        return MadeUp.sweetened(AlcoholByVolume.at20(strength), new MassConcentration(sugar));
    }
}
