package org.stillroom.studio.usecase;

import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;

/** Tells what a spirit or a liqueur of known strength and sugar weighs. */
public final class TellDensity {
    private TellDensity() {}

    /**
     * What is known.
     *
     * @param strength of the liquid; where it is sweetened, by volume at 20 °C
     * @param sugar sucrose per litre at 20 °C
     * @param temperature at which the density is wanted, −20 to 40 °C
     */
    public record Asked(Strength strength, MassConcentration sugar, Temperature temperature) {}

    /**
     * Returns the figures of a litre (at 20 °C) of it.
     *
     * @throws Impossible when a litre cannot hold so much, or outside the range of temperature
     */
    public static Figures answer(Asked asked, Workings workings) {
        Range.refuseOutside(asked.temperature());
        return Liquid.figures(litre(asked), asked.temperature(), workings);
    }

    private static Contents litre(Asked asked) {
        if (asked.sugar().gramsPerLitre() == 0.0) {
            return MadeUp.spirit(asked.strength());
        }
        if (asked.strength() instanceof AlcoholByVolume byVolume && byVolume.basis() == VolumeBasis.AT_20C) {
            return Impossible.unless(
                    "sugar", "Give less sugar or less strength.", () -> MadeUp.sweetened(byVolume, asked.sugar()));
        }
        throw new Impossible(
                "strength",
                "the strength of a sweetened liquid is read as % vol at 20 °C only.",
                "Give it so, such as 28 %.");
    }
}
