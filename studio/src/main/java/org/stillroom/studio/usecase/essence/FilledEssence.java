package org.stillroom.studio.usecase.essence;

import java.util.Map;
import java.util.TreeMap;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.clarity.Medium;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.planner.drops.Choice;
import org.stillroom.planner.drops.Essence;
import org.stillroom.studio.usecase.Impossible;

/**
 * Oils with so much carrier that both together fill the volume of an essence.
 *
 * @param contents of all of it
 * @param millilitres of all of it at 20 °C
 * @param carrier of it, mL at 20 °C
 */
record FilledEssence(Contents contents, double millilitres, double carrier) {
    /** More oil than this part of the volume is no essence. Own judgement. */
    private static final double MOST_OIL = 0.5;

    /**
     * Returns the essence that a choice of drops makes.
     *
     * @param litre of the carrier
     * @throws Impossible when the oils leave no room for the carrier, or it is no spirit
     */
    static FilledEssence of(Essence asked, Choice choice, Contents litre) {
        Contents oils = Contents.NONE;
        for (int i = 0; i < asked.oils().size(); i++) {
            double grams = choice.drops().get(i) * asked.oils().get(i).gramsPerDrop();
            oils = oils.plus(oil(asked.oils().get(i).name(), grams));
        }
        double volume = choice.essenceMillilitres(asked);
        double litres = litres(oils, volume, litre);
        return new FilledEssence(oils.plus(litre.times(litres)), volume, 1000.0 * litres);
    }

    static Contents oil(String name, double grams) {
        Contents oil = Contents.of(Substance.OIL, grams);
        EssentialOil known = EssentialOils.find(name);
        return known == null ? oil : oil.knowingOil(known.shares());
    }

    private static double litres(Contents oils, double volume, Contents litre) {
        VolumeModel model = VolumeModel.atTwenty();
        if (!(litre.grams(Substance.ETHANOL) > 0.0)) {
            throw new Impossible("carrier", "oils do not dissolve in water.", "Take strong spirit, such as 96 %.");
        }
        if (model.millilitres(oils.toGrams()) > MOST_OIL * volume) {
            throw new Impossible(
                    "dose",
                    EssenceFindings.millilitres(volume) + " of essence would be more than half oil.",
                    "Dose more of it: a larger “dose” makes a weaker essence.");
        }
        return volume
                / 1000.0
                * Root.of(part -> model.millilitres(
                                oils.plus(litre.times(part * volume / 1000.0)).toGrams())
                        - volume);
    }

    /** Returns % vol at 20 °C. */
    double strength() {
        return Essentials.of(contents.toGrams()).strength();
    }

    /** Returns g/L of each constituent that is known, by CAS number. */
    Map<String, Double> constituents() {
        Map<String, Double> perLitre = new TreeMap<>();
        contents.aroma().forEach((cas, grams) -> perLitre.put(cas, 1000.0 * grams / millilitres));
        return perLitre;
    }

    /** Returns the oils over what stays dissolved at 20 °C. */
    double load() {
        return Oils.of(contents).load(Medium.of(contents, Temperature.TWENTY_CELSIUS));
    }
}
