package org.stillroom.core.liquid;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;

/** Liquids made up with water to a mark at 20 °C, as in a volumetric flask; exact by the volume model. */
public final class MadeUp {
    private static final Volume LITRE = Volume.litres(1.0);

    private MadeUp() {}

    /**
     * Returns these contents with water in them up to the mark.
     *
     * @param contents without water
     * @param mark above the volume of the contents, at 20 °C
     * @throws IllegalArgumentException when they leave no room for water, with a text for people
     */
    public static Contents withWater(Contents contents, Volume mark) {
        VolumeModel model = VolumeModel.atTwenty();
        double already = model.millilitres(contents.toGrams());
        if (!(already < mark.millilitres())) {
            throw new IllegalArgumentException("there is no room for water: what goes in takes "
                    + QuantityWords.fixed(already, 1) + " mL of " + QuantityWords.fixed(mark.millilitres(), 1)
                    + " mL already");
        }
        double most = 2.0 * mark.millilitres();
        double water = most
                * Root.of(part -> model.millilitres(
                                contents.with(Substance.WATER, most * part).toGrams())
                        - mark.millilitres());
        return contents.with(Substance.WATER, water);
    }

    /**
     * Returns a litre, at 20 °C, of ethanol and water of so much strength.
     *
     * @param strength on any scale: nothing else is in it, so they say the same
     */
    public static Contents spirit(Strength strength) {
        MassFraction ethanol = Strengths.massFraction(strength);
        double grams = EthanolWater.at(Temperature.TWENTY_CELSIUS).density(ethanol.fraction());
        return Contents.of(Substance.ETHANOL, ethanol.fraction() * grams)
                .with(Substance.WATER, (1.0 - ethanol.fraction()) * grams);
    }

    /**
     * Returns a litre, at 20 °C, of a sweetened spirit.
     *
     * @param strength by volume at 20 °C, of the sweetened liquid
     * @param sucrose per litre of it
     * @throws IllegalArgumentException when a litre cannot hold both, with a text for people
     */
    public static Contents sweetened(AlcoholByVolume strength, MassConcentration sucrose) {
        if (strength.basis() != VolumeBasis.AT_20C) {
            throw new IllegalArgumentException("the strength of a sweetened liquid is wanted at 20 °C, not at "
                    + strength.basis().label());
        }
        return withWater(
                Contents.of(Substance.ETHANOL, ethanolOfLitre(strength.percent()))
                        .with(Substance.SUCROSE, sucrose.gramsPerLitre()),
                LITRE);
    }

    /**
     * Returns the ethanol in a litre, g.
     *
     * @param percent by volume, both at 20 °C
     */
    public static double ethanolOfLitre(double percent) {
        return percent / 100.0 * EthanolWater.at(Temperature.TWENTY_CELSIUS).ethanol();
    }
}
