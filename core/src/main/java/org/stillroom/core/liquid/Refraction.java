package org.stillroom.core.liquid;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.alcohol.EthanolRefraction;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.RefractiveIndex;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.sugar.SucroseRefraction;
import org.stillroom.core.sugar.SucroseWater;

/**
 * Refractive index of any liquid at 20 °C, 589.3 nm, by adding refractions.
 *
 * <p>With L(n) = (n² − 1)/(n² + 2) of Lorentz and Lorenz, L(n)·V = Σ mᵢ·rᵢ over the parts: ethanol with its water by the
 * measured curve, sucrose by the curve that it has in its own water (so that both binaries are exact), every other solute at
 * a specific refraction of its own. Fat scatters in droplets and does not bend the line that a refractometer shows: it is
 * left out with its volume. The mixture of all three is a model and was not measured. Formula, residuals and limits:
 * docs/how-it-works/refraction.md.
 */
public final class Refraction {
    private static final EthanolWater.Isotherm SPIRIT = EthanolWater.at(Temperature.TWENTY_CELSIUS);
    private static final SucroseWater.Isotherm SYRUP = SucroseWater.at(Temperature.TWENTY_CELSIUS);
    private static final double WATER = lorentzLorenz(SucroseRefraction.WATER) / SPIRIT.water() * 1000.0;

    private static final Substance[] SUBSTANCES = Substance.values();

    /** Doubt of the two curves. */
    private static final double CURVES = 0.0001;
    /** Doubt of the sum for everything else: our own judgement, no table of such mixtures was read. */
    private static final double MIXTURE = 0.0005;
    /** Doubt of a specific refraction that no table supports, part of it. */
    private static final double THUMB = 0.03;

    private Refraction() {}

    /**
     * Returns the index with its doubt, or null where the liquid has neither ethanol nor water.
     *
     * @param millilitresAt20 volume of the liquid at 20 °C
     * @param ofVolume doubt of that volume by the model
     */
    public static @Nullable Estimate of(double[] grams, double millilitresAt20, ModelDoubt ofVolume) {
        double ethanol = grams[Substance.ETHANOL.ordinal()];
        double water = grams[Substance.WATER.ordinal()];
        double wet = ethanol + water;
        if (!(wet > 0.0)) {
            return null;
        }
        double p = ethanol / wet;
        double refraction = wet * lorentzLorenz(EthanolRefraction.index(p)) / SPIRIT.density(p) * 1000.0;
        double thumb = 0.0;
        for (int i = Substance.SUCROSE.ordinal(); i < grams.length; i++) {
            if (grams[i] > 0.0) {
                double each = grams[i] * specific(SUBSTANCES[i], grams[i], water);
                refraction += each;
                thumb += measured(SUBSTANCES[i]) ? 0.0 : THUMB * each;
            }
        }
        double clear = millilitresAt20 - fatVolume(grams);
        double sum = refraction / clear;
        double n = Math.sqrt((1.0 + 2.0 * sum) / (1.0 - sum));
        double perRefraction = (n * n + 2.0) * (n * n + 2.0) / (6.0 * n);
        if (onOneCurve(grams)) {
            return new Estimate(n, CURVES);
        }
        double swollen = sum * ofVolume.relativeVolumeHalfWidth();
        return new Estimate(n, Math.hypot(MIXTURE, perRefraction * Math.hypot(swollen, thumb / clear)));
    }

    /** Returns whether the liquid is ethanol with water or sucrose with water and nothing else that refracts. */
    private static boolean onOneCurve(double[] grams) {
        boolean others = false;
        for (int i = Substance.SUCROSE.ordinal() + 1; i < grams.length; i++) {
            others |= grams[i] > 0.0 && i != Substance.FAT.ordinal();
        }
        return !others && (grams[Substance.ETHANOL.ordinal()] == 0.0 || grams[Substance.SUCROSE.ordinal()] == 0.0);
    }

    private static double fatVolume(double[] grams) {
        double fat = grams[Substance.FAT.ordinal()];
        return fat * ApparentVolume.of(Substance.FAT).at(1.0);
    }

    /** Returns L(n). */
    private static double lorentzLorenz(double n) {
        return (n * n - 1.0) / (n * n + 2.0);
    }

    /** Refraction of one gram of sucrose in its own water, mL/g. */
    private static double sucrose(double grams, double water) {
        double w = Math.min(grams / (grams + water), SucroseRefraction.CHECKED_TO / 100.0);
        double index = SucroseRefraction.index(new Brix(100.0 * w)).value();
        double ofSolution = lorentzLorenz(index) / (SPIRIT.water() + SYRUP.excess(w)) * 1000.0;
        return (ofSolution - (1.0 - w) * WATER) / w;
    }

    /**
     * Returns the refraction of one gram, mL/g: our own fits of CRC Handbook tables of n and density (largest misfit of n
     * 0.0008 to 60 % mass), those of the others by likeness. Ethanol and water are counted together.
     */
    private static double specific(Substance substance, double grams, double water) {
        return switch (substance) {
            case ETHANOL, WATER, FAT -> 0.0;
            case SUCROSE -> sucrose(grams, water);
            case GLUCOSE -> 0.2061;
            case FRUCTOSE -> 0.2043;
            case MALTOSE -> 0.2073;
            case LACTOSE -> 0.2077;
            case GLYCEROL -> 0.2228;
            case CITRIC -> 0.1912;
            case LACTIC -> 0.2141;
            case ACETIC -> 0.2172;
            case PHOSPHORIC -> 0.1464;
            case SALT -> 0.1573;
            // Like citric acid.
            case MALIC, TARTARIC, ASCORBIC -> 0.1912;
            // Like sugar.
            case OTHER_SOLIDS -> 0.206;
            // From 0.185 per g/mL, what protein adds to n of water (from memory), and its volume.
            case PROTEIN -> 0.254;
            // Limonene, from n 1.4730 and 0.8411 g/mL at 20 °C.
            case OIL -> 0.3335;
        };
    }

    private static boolean measured(Substance substance) {
        return switch (substance) {
            case ETHANOL,
                    WATER,
                    SUCROSE,
                    GLUCOSE,
                    FRUCTOSE,
                    MALTOSE,
                    LACTOSE,
                    GLYCEROL,
                    CITRIC,
                    LACTIC,
                    ACETIC,
                    PHOSPHORIC,
                    SALT,
                    FAT -> true;
            case MALIC, TARTARIC, ASCORBIC, OTHER_SOLIDS, PROTEIN, OIL -> false;
        };
    }

    /** Returns what a refractometer would show, or null off its scale. */
    static @Nullable Estimate brix(Estimate index) {
        if (index.value() < SucroseRefraction.WATER - 1e-12) {
            return null;
        }
        RefractiveIndex n = new RefractiveIndex(Math.max(index.value(), SucroseRefraction.WATER));
        return new Estimate(SucroseRefraction.brix(n).degrees(), index.doubt() / SucroseRefraction.slope(n));
    }
}
