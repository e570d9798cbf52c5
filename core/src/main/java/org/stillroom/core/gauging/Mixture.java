package org.stillroom.core.gauging;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.ModelDoubt;
import org.stillroom.core.liquid.Refraction;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Temperature;

/**
 * A liquid that may be in the vessel, together with how wrong the formulas and the thermometer may be for it.
 *
 * <p>What is wrong with a formula is common to all readings of one liquid: the volume is {@code volumeError} and the refractive
 * index {@code refractionError} standard deviations off, and the thermometer shows {@code tooWarm} °C too much.
 */
final class Mixture {
    /** Half-widths of the central 90 % in standard deviations. */
    static final double CENTRAL_90 = 1.6448536269514722;

    private static final double ETHANOL =
            EthanolWater.at(Temperature.TWENTY_CELSIUS).ethanol() / 1000.0;

    private final double[] grams;
    private final double mass;
    private final double volumeError;
    private final double refractionError;
    private final double tooWarm;
    private final double millilitres;
    private final ModelDoubt doubt;

    /** A liquid for which everything is as the formulas have it. */
    Mixture(double[] grams) {
        this(grams, 0.0, 0.0, 0.0);
    }

    Mixture(double[] grams, double volumeError, double refractionError, double tooWarm) {
        this.grams = grams;
        this.volumeError = volumeError;
        this.refractionError = refractionError;
        this.tooWarm = tooWarm;
        double sum = 0.0;
        for (double each : grams) {
            sum += each;
        }
        this.mass = sum;
        this.millilitres = VolumeModel.atTwenty().millilitres(grams);
        this.doubt = ModelDoubt.of(grams, millilitres);
    }

    double mass() {
        return mass;
    }

    /** Returns what was the temperature when the thermometer showed this; never beyond those at which densities are known. */
    Temperature real(Temperature shown) {
        return tooWarm == 0.0
                ? shown
                : new Temperature(Math.min(
                        EthanolWater.HIGHEST_CELSIUS,
                        Math.max(EthanolWater.LOWEST_CELSIUS, shown.celsius() - tooWarm)));
    }

    double millilitres(Temperature at) {
        double plain = at.celsius() == 20.0 ? millilitres : VolumeModel.at(at).millilitres(grams);
        return plain * larger();
    }

    private double larger() {
        return 1.0 + volumeError / CENTRAL_90 * doubt.relativeVolumeHalfWidth();
    }

    double density(Temperature at) {
        return 1000.0 * mass / millilitres(at);
    }

    /** Returns the strength, % vol at 20 °C. */
    double strength() {
        return 100.0 * grams[Substance.ETHANOL.ordinal()] / ETHANOL / (millilitres * larger());
    }

    /** Returns the sugars as dissolved, g/L at 20 °C. */
    double sugar() {
        double sum = 0.0;
        for (Substance substance : SUBSTANCES) {
            sum += substance.sugar() == null ? 0.0 : grams[substance.ordinal()];
        }
        return perLitre(sum);
    }

    /** Returns the acids, g/L at 20 °C as anhydrous citric acid. */
    double acidity() {
        double sum = 0.0;
        for (Substance substance : SUBSTANCES) {
            var acid = substance.acid();
            sum += acid == null ? 0.0 : grams[substance.ordinal()] * acid.asCitric();
        }
        return perLitre(sum);
    }

    /** Returns what does not fly off on drying, g/L at 20 °C. */
    double dryResidue() {
        double volatile_ = grams[Substance.ETHANOL.ordinal()]
                + grams[Substance.WATER.ordinal()]
                + grams[Substance.OIL.ordinal()]
                + grams[Substance.ACETIC.ordinal()];
        return perLitre(mass - volatile_);
    }

    private double perLitre(double sum) {
        return 1000.0 * sum / (millilitres * larger());
    }

    /** Returns the density of what stays when the alcohol is boiled off, made up with water to the volume before. */
    double residueDensity(Temperature at) {
        double[] left = grams.clone();
        left[Substance.ETHANOL.ordinal()] = 0.0;
        left[Substance.OIL.ordinal()] = 0.0;
        double wanted = millilitres * larger();
        double density = EthanolWater.at(Temperature.TWENTY_CELSIUS).water() / 1000.0;
        for (int i = 0; i < 20; i++) {
            double missing = wanted - VolumeModel.atTwenty().millilitres(left);
            left[Substance.WATER.ordinal()] = Math.max(0.0, left[Substance.WATER.ordinal()] + missing * density);
        }
        double sum = 0.0;
        for (double each : left) {
            sum += each;
        }
        return 1000.0 * sum / VolumeModel.at(at).millilitres(left);
    }

    /** Returns the refractive index at 589.3 nm; NaN of what is no liquid, having neither ethanol nor water. */
    double refractiveIndex(Temperature at) {
        @Nullable Estimate index = Refraction.of(grams, millilitres, doubt);
        if (index == null) {
            return Double.NaN;
        }
        double real = index.value() + refractionError / CENTRAL_90 * index.doubt();
        if (at.celsius() == 20.0) {
            return real;
        }
        double denser = millilitres / VolumeModel.at(at).millilitres(grams);
        return RefractometerScale.moved(real, denser);
    }

    private static final Substance[] SUBSTANCES = Substance.values();
}
