package org.stillroom.core.alcohol;

import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/**
 * Bringing a spirit down to strength with water: the trade's reduction.
 *
 * <p>Ethanol is kept and water is added by mass; both strengths and all volumes are at the temperature of the strengths' basis.
 * The mixture takes less room than spirit and water apart: the contraction. Good to the density formula, about 0.1 mL of water
 * per 100 mL of spirit. Source: OIML R 22; conservation of mass.
 *
 * @param water the water to add, at the temperature of the basis
 * @param waterMass the same water
 * @param finalVolume what comes of it
 * @param contraction spirit and water before mixing, less what comes of it, mL; below zero where the volume grows, as it does
 *     when a weak spirit is brought down further
 */
public record Reduction(Volume water, Mass waterMass, Volume finalVolume, double contraction) {
    /**
     * Returns what it takes to bring a spirit down.
     *
     * @param to lower than {@code from}, above zero, on the same basis
     * @param spirit volume of the spirit at the temperature of the basis
     * @throws IllegalArgumentException when there is nothing to bring down, with a text for people
     */
    public static Reduction of(AlcoholByVolume from, AlcoholByVolume to, Volume spirit, Workings workings) {
        refuseTheImpossible(from, to);
        String basis = " at " + from.basis().label();
        EthanolWater.Isotherm isotherm = EthanolWater.at(from.basis().temperature());
        double before = isotherm.fractionOfPercentByVolume(from.percent());
        double after = isotherm.fractionOfPercentByVolume(to.percent());
        double mass = spirit.millilitres() * isotherm.density(before) / 1000.0;
        workings.step("mass of the spirit", mass, "g", Source.OIML_R22);
        double ethanol = mass * before;
        workings.step("ethanol in it, which stays", ethanol, "g", Source.BALANCE);
        double finalMass = ethanol / after;
        workings.step("mass after reduction", finalMass, "g", Source.OIML_R22);
        double waterMass = finalMass - mass;
        workings.step("water to add", waterMass, "g", Source.BALANCE);
        double water = 1000.0 * waterMass / isotherm.water();
        workings.step("water to add", water, "mL" + basis, Source.OIML_R22);
        double finalVolume = 1000.0 * finalMass / isotherm.density(after);
        workings.step("final volume", finalVolume, "mL" + basis, Source.OIML_R22);
        double contraction = spirit.millilitres() + water - finalVolume;
        workings.step("contraction", contraction, "mL" + basis, Source.BALANCE);
        return new Reduction(new Volume(water), new Mass(waterMass), new Volume(finalVolume), contraction);
    }

    private static void refuseTheImpossible(AlcoholByVolume from, AlcoholByVolume to) {
        if (from.basis() != to.basis()) {
            throw new IllegalArgumentException("both strengths are wanted on one basis, not at "
                    + from.basis().label() + " and at " + to.basis().label());
        }
        if (!(to.percent() < from.percent())) {
            throw new IllegalArgumentException("water only lowers strength: a spirit of "
                    + QuantityWords.fixed(from.percent(), 2) + " % vol cannot be brought to "
                    + QuantityWords.fixed(to.percent(), 2)
                    + " % vol; give a lower strength to reach, or add a stronger spirit.");
        }
        if (!(to.percent() > 0.0)) {
            throw new IllegalArgumentException(
                    "no amount of water brings a spirit down to 0 % vol; give a strength above 0 % vol.");
        }
    }
}
