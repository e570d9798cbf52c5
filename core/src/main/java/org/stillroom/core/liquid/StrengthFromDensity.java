package org.stillroom.core.liquid;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Proof;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/**
 * Strength of a spirit or liqueur from what it weighs, when its sugar is known: the volume model turned round.
 *
 * <p>Sought is the litre (at 20 °C) that holds the known sucrose and weighs what was measured at the temperature of the
 * measurement. Exact to 1e-9 there and back; how sure: {@link Measured#doubt}. Range −20 to 40 °C.
 */
public final class StrengthFromDensity {
    /** Cubic expansion of soda-lime glass, per °C; from memory, and it brings every example of 27 CFR 30.23 closer. */
    private static final double GLASS = 25e-6;
    /** Density of air in a room, g/mL, and of the weights that a scale was adjusted with, g/mL. */
    private static final double AIR = 0.0012;

    private static final double WEIGHTS = 8.0;
    /** A reading may leave the possible range by this much and be taken for its end, kg/m³: rounding, not measuring. */
    private static final double ROUNDING = 1e-6;

    private final VolumeModel model;
    private final double sucrose;

    private StrengthFromDensity(Temperature temperature, MassConcentration sucrose) {
        this.model = VolumeModel.at(temperature);
        this.sucrose = sucrose.gramsPerLitre();
    }

    /**
     * What was found.
     *
     * @param litre the grams in one litre at 20 °C; every other figure follows from them
     * @param strength % vol at 20 °C
     * @param doubt half-width of the central 90 % of the strength, % vol, for a density measured without error
     */
    public record Measured(Contents litre, AlcoholByVolume strength, double doubt) {}

    /** How a weight was taken. */
    public enum Weighed {
        /** As a scale shows it, adjusted with steel weights in air. */
        IN_AIR,
        /** The mass itself, as in a recipe of this program. */
        IN_VACUUM
    }

    /**
     * Returns the strength of a liquid of measured density.
     *
     * @param density at the temperature
     * @param sucrose sugar known to be in it, per litre at 20 °C, as sucrose
     * @throws IllegalArgumentException when no such liquid weighs that, with a text for people
     */
    public static Measured of(Density density, Temperature temperature, MassConcentration sucrose, Workings workings) {
        workings.step("density", density.kilogramsPerCubicMetre(), "kg/m³ as measured", Source.BALANCE);
        StrengthFromDensity inverse = new StrengthFromDensity(temperature, sucrose);
        double part = inverse.ethanolPart(density.kilogramsPerCubicMetre(), temperature);
        workings.step("ethanol in its ethanol and water", part, "g/g", Source.VOLUME_MODEL);
        Contents litre = Contents.ofGrams(inverse.litre(part));
        double strength = inverse.strength(part);
        workings.step("strength", strength, "% vol at 20 °C", Source.VOLUME_MODEL);
        return new Measured(litre, AlcoholByVolume.at20(strength), inverse.doubt(part));
    }

    /**
     * Returns the strength from a spirit hydrometer read at another temperature than its own.
     *
     * <p>The reading stands for a density at the hydrometer's own temperature (that of the scale: 20 or 15 °C, 60 °F for
     * proof); its glass has since grown by 25e-6 of its volume per °C.
     *
     * @param reading as the stem shows it
     */
    public static Measured ofHydrometer(
            Strength reading, Temperature temperature, MassConcentration sucrose, Workings workings) {
        Temperature own = ownTemperature(reading);
        double onScale =
                EthanolWater.at(own).density(Strengths.massFraction(reading).fraction());
        workings.step("density that the reading stands for", onScale, "kg/m³", Source.OIML_R22);
        double warmer = temperature.celsius() - own.celsius();
        double density = onScale * (1.0 - GLASS * warmer);
        workings.step("density less the growth of the glass", density, "kg/m³", Source.GLASS_EXPANSION);
        return of(new Density(density), temperature, sucrose, workings);
    }

    private static Temperature ownTemperature(Strength reading) {
        if (reading instanceof Proof) {
            return VolumeBasis.AT_60F.temperature();
        }
        return reading instanceof AlcoholByVolume byVolume
                ? byVolume.basis().temperature()
                : Temperature.TWENTY_CELSIUS;
    }

    /** Returns the strength from the weight of a known volume. */
    public static Measured ofWeighing(
            Weighing weighing, Temperature temperature, MassConcentration sucrose, Workings workings) {
        return of(new Density(weighing.density()), temperature, sucrose, workings);
    }

    /**
     * A measured volume and what it weighed.
     *
     * @param weight as the scale showed it, without the vessel
     * @param volume at the temperature of the measurement, above zero
     * @param how whether buoyancy of the air is still in the weight
     */
    public record Weighing(Mass weight, Volume volume, Weighed how) {
        /** Returns the density in kg/m³ of the mass in vacuum. */
        public double density() {
            double millilitres = volume.millilitres();
            if (!(millilitres > 0.0)) {
                throw new IllegalArgumentException("a weighed volume lies above 0 mL, not " + millilitres);
            }
            double mass = switch (how) {
                case IN_VACUUM -> weight.grams();
                case IN_AIR -> weight.grams() * (1.0 - AIR / WEIGHTS) + AIR * millilitres;
            };
            return 1000.0 * mass / millilitres;
        }

        /**
         * Returns the volume that a liquid of known density fills, the same turned round.
         *
         * @param weight of it as a scale shows it in air
         * @param kilogramsPerCubicMetre of the liquid at its temperature, in vacuum
         */
        public static Volume filled(Mass weight, double kilogramsPerCubicMetre) {
            return new Volume(weight.grams() * (1.0 - AIR / WEIGHTS) / (kilogramsPerCubicMetre / 1000.0 - AIR));
        }
    }

    private double ethanolPart(double density, Temperature temperature) {
        if (!(VolumeModel.atTwenty().millilitres(grams(0.0, 0.0)) < 1000.0)) {
            throw new IllegalArgumentException(
                    "a litre cannot hold " + QuantityWords.fixed(sucrose, 1) + " g of sugar; check the sugar.");
        }
        double heaviest = densityAt(0.0);
        double lightest = densityAt(1.0);
        if (!(density >= lightest - ROUNDING && density <= heaviest + ROUNDING)) {
            throw new IllegalArgumentException("with " + QuantityWords.fixed(sucrose, 1)
                    + " g/L of sugar a liquid weighs from " + QuantityWords.fixed(lightest, 2)
                    + " (no water) to " + QuantityWords.fixed(heaviest, 2) + " kg/m³ (no alcohol) at "
                    + QuantityWords.fixed(temperature.celsius(), 1) + " °C, not "
                    + QuantityWords.fixed(density, 2)
                    + "; check the reading, the temperature and the sugar.");
        }
        return Root.of(part -> density - densityAt(part));
    }

    /** Returns the grams in a litre at 20 °C whose ethanol and water hold this part of ethanol. */
    private double[] litre(double part) {
        double[] perGram = new double[Substance.COUNT];
        double wet = 1000.0
                * Root.of(
                        kilograms -> VolumeModel.atTwenty().millilitres(grams(part, 1000.0 * kilograms)) - 1000.0,
                        kilograms -> {
                            VolumeModel.partialVolumes(grams(part, 1000.0 * kilograms), perGram);
                            return 1000.0
                                    * (part * perGram[Substance.ETHANOL.ordinal()]
                                            + (1.0 - part) * perGram[Substance.WATER.ordinal()]);
                        });
        return grams(part, wet);
    }

    private double[] grams(double part, double wet) {
        double[] grams = new double[Substance.COUNT];
        grams[Substance.ETHANOL.ordinal()] = part * wet;
        grams[Substance.WATER.ordinal()] = (1.0 - part) * wet;
        grams[Substance.SUCROSE.ordinal()] = sucrose;
        return grams;
    }

    private double densityAt(double part) {
        double[] grams = litre(part);
        double mass = sucrose + grams[Substance.ETHANOL.ordinal()] + grams[Substance.WATER.ordinal()];
        return 1000.0 * mass / model.millilitres(grams);
    }

    private double strength(double part) {
        return Math.min(100.0, Essentials.of(litre(part)).strength());
    }

    /**
     * Doubt of the density formulas, and what the volume model adds to it where there is sugar: its doubt of the volume
     * over how much the density falls per % vol.
     */
    private double doubt(double part) {
        ModelDoubt sweet = ModelDoubt.of(litre(part), 1000.0);
        double strength = strength(part);
        double plain = ModelDoubt.relative(strength, ModelDoubt.unsweetened());
        double ofSugar = Math.sqrt(
                Math.max(0.0, sweet.relativeVolumeHalfWidth() * sweet.relativeVolumeHalfWidth() - plain * plain));
        double low = Math.max(0.0, part - 1e-4);
        double high = Math.min(1.0, part + 1e-4);
        double perPercent = (densityAt(low) - densityAt(high)) / (strength(high) - strength(low));
        return Math.hypot(ModelDoubt.unsweetened(), ofSugar * densityAt(part) / perPercent);
    }
}
