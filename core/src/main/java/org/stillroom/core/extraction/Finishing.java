package org.stillroom.core.extraction;

import java.util.OptionalDouble;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;

/**
 * What makes a liqueur of a macerate: strong spirit, sugar, and water to the mark.
 *
 * @param spirit mL at 20 °C
 * @param sugar g
 * @param water g
 * @param made the liqueur
 */
public record Finishing(double spirit, double sugar, double water, Contents made) {
    private static final int HALVINGS = 50;

    /** Says that a liqueur cannot be so strong, for want of room for spirit, and how strong it can be. */
    public static final class TooStrong extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        private final double most;

        private TooStrong(Wanted wanted, double most) {
            super(QuantityWords.fixed(wanted.strength(), 1) + " % vol cannot be reached: "
                    + QuantityWords.fixed(wanted.volume(), 0) + " mL filled up with the spirit alone come to "
                    + QuantityWords.fixed(most, 1) + " % vol, " + QuantityWords.fixed(wanted.strength() - most, 1)
                    + " % vol less");
            this.most = most;
        }

        /** Returns the strength that can be reached, % vol. */
        public double most() {
            return most;
        }
    }

    /**
     * What the liqueur is to be.
     *
     * @param volume mL at 20 °C
     * @param strength % vol
     * @param sugar g/L, as dissolved; empty where what the macerate brings is enough
     */
    public record Wanted(double volume, double strength, OptionalDouble sugar) {
        public Wanted(double volume, double strength, double sugar) {
            this(volume, strength, OptionalDouble.of(sugar));
        }
    }

    /**
     * Returns what is to be added to all of a macerate.
     *
     * @param macerate what came
     * @param litreOfSpirit a litre of the spirit to fortify with
     * @throws IllegalArgumentException when it cannot be, with a text for people
     */
    public static Finishing of(Contents macerate, Wanted wanted, Contents litreOfSpirit) {
        double ethanol = wanted.volume() * wanted.strength() / 100.0 * ethanolDensity();
        double lacking = ethanol - macerate.grams(Substance.ETHANOL);
        if (lacking < -1e-6 * ethanol) {
            double enough = macerate.grams(Substance.ETHANOL) / ethanol * wanted.volume() / 1000.0;
            throw new IllegalArgumentException("the macerate alone brings alcohol for "
                    + QuantityWords.fixed(enough, 2) + " L at " + QuantityWords.fixed(wanted.strength(), 1)
                    + " % vol; make that much, or take a part of it");
        }
        double litres = Math.max(0.0, lacking) / litreOfSpirit.grams(Substance.ETHANOL);
        double sugar = sugar(macerate, wanted);
        Contents strong = macerate.plus(litreOfSpirit.times(litres)).plus(Contents.of(Substance.SUCROSE, sugar));
        Contents sweet = macerate.plus(Contents.of(Substance.SUCROSE, sugar));
        if (millilitres(strong) > wanted.volume() && millilitres(sweet) < wanted.volume()) {
            throw new TooStrong(wanted, strengthFilledUp(sweet, wanted.volume(), litreOfSpirit));
        }
        Contents made = toTheMark(strong, wanted.volume());
        double water = made.grams(Substance.WATER) - strong.grams(Substance.WATER);
        return new Finishing(1000.0 * litres, sugar, water, made);
    }

    /** Returns the strength of what is filled up with spirit alone, % vol. */
    private static double strengthFilledUp(Contents sweet, double volume, Contents litreOfSpirit) {
        double low = 0.0;
        double high = volume / 1000.0 + 1.0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            boolean over = millilitres(sweet.plus(litreOfSpirit.times(middle))) > volume;
            low = over ? low : middle;
            high = over ? middle : high;
        }
        return Essentials.of(sweet.plus(litreOfSpirit.times(low)).toGrams()).strength();
    }

    private static double millilitres(Contents contents) {
        return VolumeModel.atTwenty().millilitres(contents.toGrams());
    }

    private static double sugar(Contents macerate, Wanted wanted) {
        if (wanted.sugar().isEmpty()) {
            return 0.0;
        }
        double gramsPerLitre = wanted.sugar().getAsDouble();
        double sugar = gramsPerLitre * wanted.volume() / 1000.0 - macerate.sugars();
        if (sugar < 0.0) {
            String enough = gramsPerLitre == 0.0
                    ? ""
                    : ", enough for " + QuantityWords.fixed(macerate.sugars() / gramsPerLitre, 2) + " L";
            throw new IllegalArgumentException("the macerate alone brings " + QuantityWords.fixed(macerate.sugars(), 0)
                    + " g of sugar" + enough + "; ask for that much or for more sugar, or take a part of it");
        }
        return sugar;
    }

    private static Contents toTheMark(Contents strong, double millilitres) {
        double already = millilitres(strong);
        if (already > millilitres) {
            throw new IllegalArgumentException(
                    "there is no room for water: what goes in takes " + QuantityWords.fixed(already, 0) + " mL of "
                            + QuantityWords.fixed(millilitres, 0) + " mL already");
        }
        return MadeUp.withWater(strong.with(Substance.WATER, 0.0), new Volume(millilitres));
    }

    private static double ethanolDensity() {
        return 1.0
                / VolumeModel.atTwenty()
                        .millilitres(Contents.of(Substance.ETHANOL, 1.0).toGrams());
    }

    /** Returns the strength of the liqueur, % vol. */
    public double strength() {
        return Essentials.of(made.toGrams()).strength();
    }
}
