package org.stillroom.core.alcohol;

import org.stillroom.core.quantity.AlcoholByMass;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Proof;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.VolumeBasis;

/**
 * Restates the strength of ethanol with water, nothing else dissolved.
 *
 * <p>By volume = mass fraction × density of the mixture ÷ density of ethanol, all at the temperature of the basis. The
 * density of ethanol is the formula's own (789.239 kg/m³ at 20 °C; the conventional 789.24 differs by 1 in a million), so
 * that pure ethanol is 100 % vol on every basis. Source: OIML R 22; for proof 27 CFR 30.11.
 */
public final class Strengths {
    private Strengths() {}

    /** Returns grams of ethanol per gram of ethanol and water. */
    public static MassFraction massFraction(Strength strength) {
        if (strength instanceof AlcoholByVolume byVolume) {
            return new MassFraction(
                    EthanolWater.at(byVolume.basis().temperature()).fractionOfPercentByVolume(byVolume.percent()));
        }
        if (strength instanceof AlcoholByMass byMass) {
            return new MassFraction(byMass.percent() / 100.0);
        }
        return massFraction(new AlcoholByVolume(((Proof) strength).degrees() / 2.0, VolumeBasis.AT_60F));
    }

    /** Returns the strength by volume on the given basis. */
    public static AlcoholByVolume byVolume(MassFraction ethanol, VolumeBasis basis) {
        double percent = EthanolWater.at(basis.temperature()).percentByVolume(ethanol.fraction());
        return new AlcoholByVolume(Math.min(100.0, percent), basis);
    }

    /** Returns the United States proof: twice the % vol at 60 °F. */
    public static Proof proof(MassFraction ethanol) {
        return new Proof(2.0 * byVolume(ethanol, VolumeBasis.AT_60F).percent());
    }
}
