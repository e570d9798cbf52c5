package org.stillroom.studio.usecase;

import java.util.List;
import org.stillroom.core.alcohol.Reduction;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.blend.SpiritBlend.Part;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.Warming;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Tells the water that brings a spirit down to strength. */
public final class BringDown {
    /**
     * Half-width of the water, part of the spirit's volume: 0.1 mL per 100 mL, within which nine in ten entries of the
     * Gay-Lussac dilution table at 15 °C agree.
     */
    private static final double DOUBT = 0.001;

    private BringDown() {}

    /**
     * The question.
     *
     * @param from strength of the spirit, on any scale
     * @param to strength wanted, on any scale, lower and above zero
     * @param spirit its volume at the temperature of the basis
     * @param basis temperature at which volumes are given and wanted
     */
    public record Asked(Strength from, Strength to, Volume spirit, VolumeBasis basis) {}

    /**
     * What it takes.
     *
     * @param water mL on the basis
     * @param waterMass g
     * @param finalVolume mL on the basis
     * @param contraction mL on the basis; below zero where the volume grows
     * @param warming °C, of both at the temperature of the basis, if no heat is lost
     */
    public record Found(
            Estimate water, Estimate waterMass, Estimate finalVolume, Estimate contraction, Estimate warming) {}

    /**
     * Returns the water.
     *
     * @throws Impossible when water cannot do it
     */
    public static Found answer(Asked asked, Workings workings) {
        AlcoholByVolume from = onBasis(asked.from(), asked.basis());
        AlcoholByVolume to = onBasis(asked.to(), asked.basis());
        Reduction reduction = Impossible.unless("to", "", () -> Reduction.of(from, to, asked.spirit(), workings));
        Estimate warming = warming(Part.of(asked.spirit(), from, asked.basis()), reduction.waterMass(), asked.basis());
        workings.step("warming, if no heat is lost", warming.value(), "°C", Source.LARKIN_1975);
        double doubt = DOUBT * asked.spirit().millilitres();
        double water = reduction.water().millilitres();
        return new Found(
                new Estimate(water, doubt),
                new Estimate(
                        reduction.waterMass().grams(),
                        doubt * reduction.waterMass().grams() / water),
                new Estimate(reduction.finalVolume().millilitres(), 0.0),
                new Estimate(reduction.contraction(), doubt),
                warming);
    }

    private static Estimate warming(Part spirit, Mass water, VolumeBasis basis) {
        return Warming.of(List.of(spirit.contents(), Contents.of(Substance.WATER, water.grams())), basis.temperature());
    }

    private static AlcoholByVolume onBasis(Strength strength, VolumeBasis basis) {
        return strength instanceof AlcoholByVolume byVolume && byVolume.basis() == basis
                ? byVolume
                : Strengths.byVolume(Strengths.massFraction(strength), basis);
    }
}
