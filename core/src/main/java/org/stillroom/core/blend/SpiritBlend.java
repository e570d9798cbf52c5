package org.stillroom.core.blend;

import java.util.List;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/**
 * Spirits and water poured together, nothing else dissolved.
 *
 * <p>Ethanol and water are kept by mass; every volume and strength by volume is at the temperature of one basis. Good to the
 * density formula, about 0.02 % vol. Source: OIML R 22; conservation of mass.
 *
 * @param mass of it all
 * @param strength on the basis
 * @param volume at the temperature of the basis
 * @param contraction the volumes before mixing less the volume after, mL; below zero where the volume grows
 */
public record SpiritBlend(Mass mass, AlcoholByVolume strength, Volume volume, double contraction) {
    /** Less than this apart, two strengths are the same, grams of ethanol per gram. */
    private static final double SAME = 1e-12;

    /**
     * A spirit, or water at a strength of zero.
     *
     * @param mass of spirit
     * @param ethanol per mass of it
     */
    public record Part(Mass mass, MassFraction ethanol) {
        /** Returns so much by mass of a spirit. */
        public static Part of(Mass mass, Strength strength) {
            return new Part(mass, Strengths.massFraction(strength));
        }

        /** Returns so much by volume of a spirit, measured at the temperature of the basis. */
        public static Part of(Volume volume, Strength strength, VolumeBasis basis) {
            MassFraction ethanol = Strengths.massFraction(strength);
            double density = EthanolWater.at(basis.temperature()).density(ethanol.fraction());
            return new Part(new Mass(volume.millilitres() * density / 1000.0), ethanol);
        }

        /** Returns the ethanol and the water in it. */
        public Contents contents() {
            double grams = mass.grams() * ethanol.fraction();
            return Contents.of(Substance.ETHANOL, grams).with(Substance.WATER, mass.grams() - grams);
        }

        /** Returns the volume at the temperature of a basis. */
        public Volume volume(VolumeBasis basis) {
            double density = EthanolWater.at(basis.temperature()).density(ethanol.fraction());
            return new Volume(1000.0 * mass.grams() / density);
        }
    }

    /**
     * Returns what comes of these together.
     *
     * @param parts at least one, not all of them nothing
     * @throws IllegalArgumentException when there is nothing to blend, with a text for people
     */
    public static SpiritBlend of(List<Part> parts, VolumeBasis basis, Workings workings) {
        Part whole = together(parts);
        String at = " at " + basis.label();
        double before = 0.0;
        for (Part part : parts) {
            before += part.volume(basis).millilitres();
        }
        workings.step("volumes before mixing, added", before, "mL" + at, Source.OIML_R22);
        workings.step("mass", whole.mass().grams(), "g", Source.BALANCE);
        workings.step("ethanol per mass", whole.ethanol().fraction(), "g/g", Source.BALANCE);
        Volume volume = whole.volume(basis);
        workings.step("volume", volume.millilitres(), "mL" + at, Source.OIML_R22);
        AlcoholByVolume strength = Strengths.byVolume(whole.ethanol(), basis);
        workings.step("strength", strength.percent(), "% vol" + at, Source.OIML_R22);
        return new SpiritBlend(whole.mass(), strength, volume, before - volume.millilitres());
    }

    /**
     * Returns how much of one more spirit (or of water) brings these to a strength.
     *
     * @param parts what is there already
     * @param more the strength of what is added
     * @param target between that of {@code parts} together and that of {@code more}
     * @throws IllegalArgumentException when no amount of it does, with a text for people
     */
    public static Part toReach(List<Part> parts, Strength more, Strength target, Workings workings) {
        Part there = together(parts);
        MassFraction wanted = Strengths.massFraction(target);
        MassFraction added = Strengths.massFraction(more);
        double missing = wanted.fraction() - there.ethanol().fraction();
        double brings = added.fraction() - wanted.fraction();
        if (Math.abs(missing) <= SAME) {
            return new Part(new Mass(0.0), added);
        }
        if (!(Math.abs(brings) > SAME && missing > 0.0 == brings > 0.0)) {
            throw new IllegalArgumentException("what is there has " + words(there.ethanol()) + " and what is added "
                    + words(added) + "; no amount of it gives " + words(wanted));
        }
        workings.step("ethanol wanted per mass", wanted.fraction(), "g/g", Source.OIML_R22);
        Mass mass = new Mass(there.mass().grams() * missing / brings);
        workings.step("mass to add", mass.grams(), "g", Source.BALANCE);
        return new Part(mass, added);
    }

    private static Part together(List<Part> parts) {
        double mass = 0.0;
        double ethanol = 0.0;
        for (Part part : parts) {
            mass += part.mass().grams();
            ethanol += part.mass().grams() * part.ethanol().fraction();
        }
        if (!(mass > 0.0)) {
            throw new IllegalArgumentException("there is nothing to blend; give an amount above zero");
        }
        return new Part(new Mass(mass), new MassFraction(Math.min(1.0, ethanol / mass)));
    }

    private static String words(MassFraction ethanol) {
        return QuantityWords.fixed(
                        Strengths.byVolume(ethanol, VolumeBasis.AT_20C).percent(), 2) + " % vol";
    }
}
