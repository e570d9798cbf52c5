package org.stillroom.core.liquid;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Curve;
import org.stillroom.core.reference.Tables;
import org.stillroom.core.sugar.SucroseSolubility;

/**
 * How much sucrose a spirit can hold dissolved: advice, never a promise.
 *
 * <p>Grams per litre of the saturated solution against the strength of its ethanol and water without the sugar, at 14 °C;
 * from 0 to 14 °C it hardly changes, warmer holds more. Recalled from memory (old figures of Scheibler and Schrefeld as
 * tabulated by Seidell), so that a fifth is kept as a margin. Other sugars are not counted: they crystallise on their own
 * terms, and invert sugar keeps sucrose in solution.
 */
public final class SugarLimit {
    /** Margin kept below the tabulated limit, and the doubt told with it. */
    static final double MARGIN = 0.2;

    /** How far tables of plain water lie apart, part of the sucrose: 0.5 % by mass at 67 %. */
    private static final double IN_WATER = 0.023;

    private static final Curve LIMIT = Curve.of(
            Tables.open("liquid/sucrose_solubility_in_alcohol.csv").rows(), "alcohol_percent", "grams_per_litre");

    /** Sucrose per litre of a saturated solution in water at 20 °C, g. */
    private static final double WATER_HOLDS = waterHolds();

    private SugarLimit() {}

    private static double waterHolds() {
        double part = SucroseSolubility.saturated(Temperature.TWENTY_CELSIUS).degrees() / 100.0;
        Contents gram = Contents.of(Substance.SUCROSE, part).with(Substance.WATER, 1.0 - part);
        return 1000.0 * part / VolumeModel.atTwenty().millilitres(gram.toGrams());
    }

    /** Returns whether the table reaches this strength; it ends at 90 % vol. */
    static boolean known(double[] grams) {
        return grams[Substance.WATER.ordinal()] > 0.0 && solvent(grams) <= LIMIT.last();
    }

    /** Returns the sucrose that a litre can hold, g/L at 14 °C. */
    static Estimate of(double[] grams) {
        double limit = LIMIT.at(solvent(grams));
        return new Estimate(limit, MARGIN * limit);
    }

    /** Returns whether {@link #dissolved} can tell: there is water, and the strength without the sugar is 90 % vol at most. */
    public static boolean knows(Contents liquid) {
        return known(liquid.toGrams());
    }

    /**
     * Returns the sucrose that ethanol and water of a liquid hold dissolved at 20 °C, g: what plain water holds at 20 °C, less by what
     * the table says that alcohol takes off (own estimate, since the table is for 14 °C).
     *
     * <p>In doubt by what tables of water differ by and half of what alcohol takes off, a fifth at most (own estimate).
     *
     * @param liquid whose own sugar does not matter
     * @throws IllegalArgumentException where the table does not reach
     */
    public static Estimate dissolved(Contents liquid) {
        Contents dry = liquid.with(Substance.SUCROSE, 0.0);
        double ofWater = LIMIT.at(solvent(dry.toGrams())) / LIMIT.at(LIMIT.first());
        double perLitre = WATER_HOLDS * ofWater;
        double most = 3.0 * dry.total(); // water at 100 °C holds twice its mass at 20 °C
        double grams = most
                * Root.of(part -> most * part
                        - perLitre
                                / 1000.0
                                * VolumeModel.atTwenty()
                                        .millilitres(dry.with(Substance.SUCROSE, most * part)
                                                .toGrams()));
        return new Estimate(grams, Math.min(MARGIN, IN_WATER + 0.5 * (1.0 - ofWater)) * grams);
    }

    private static double solvent(double[] grams) {
        double ethanol = grams[Substance.ETHANOL.ordinal()];
        return EthanolWater.at(Temperature.TWENTY_CELSIUS)
                .percentByVolume(ethanol / (ethanol + grams[Substance.WATER.ordinal()]));
    }
}
