package org.stillroom.core.liquid;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.sugar.InvertSugar;
import org.stillroom.core.sugar.SucroseWater;
import org.stillroom.core.sugar.Sugar;

/**
 * Works out every figure of a liquid from the grams in it.
 *
 * <p>Range −20 to 40 °C (0 to 40 °C with solutes; below, a finding says so). What there is no formula for at all is refused.
 * Each figure carries the half-width of its central 90 %, from {@link ModelDoubt} and from what is said of it on its page
 * under docs/how-it-works.
 */
public final class Liquid {
    private static final VolumeModel AT_15C = VolumeModel.at(VolumeBasis.AT_15C.temperature());
    private static final VolumeModel AT_60F = VolumeModel.at(VolumeBasis.AT_60F.temperature());
    private static final double WATER_20C =
            EthanolWater.at(Temperature.TWENTY_CELSIUS).water();
    private static final double WATER_60F =
            EthanolWater.at(VolumeBasis.AT_60F.temperature()).water();
    /** British degrees per % vol at 20 °C: proof spirit is 57.15 % vol at 51 °F, 4/7 in practice. */
    private static final double BRITISH_PROOF = 7.0 / 4.0;
    /** What the round 7/4 leaves out, degrees. */
    private static final double BRITISH_DOUBT = 0.1;

    private final Contents contents;
    private final double[] grams;
    private final Temperature temperature;
    private final Workings workings;
    private final Map<Figure, Estimate> estimates = new EnumMap<>(Figure.class);

    private Liquid(Contents contents, Temperature temperature, Workings workings) {
        this.contents = contents;
        this.grams = contents.toGrams();
        this.temperature = temperature;
        this.workings = workings;
    }

    /**
     * Returns every figure of the liquid.
     *
     * @throws IllegalArgumentException outside −20 to 40 °C
     */
    public static Figures figures(Contents contents, Temperature temperature) {
        return figures(contents, temperature, Workings.NONE);
    }

    /** Returns every figure of the liquid, telling the steps as they are taken. */
    public static Figures figures(Contents contents, Temperature temperature, Workings workings) {
        return new Liquid(contents, temperature, workings).worked();
    }

    private Figures worked() {
        VolumeModel model = VolumeModel.at(temperature);
        double mass = contents.total();
        put(Figure.MASS, mass, 0.0);
        if (mass == 0.0) {
            put(Figure.VOLUME, 0.0, 0.0);
            put(Figure.VOLUME_20C, 0.0, 0.0);
            return new Figures(contents, temperature, estimates, List.of());
        }
        double volume20 = VolumeModel.atTwenty().millilitres(grams, workings);
        ModelDoubt doubt = ModelDoubt.of(grams, volume20);
        double relative = doubt.relativeVolumeHalfWidth();
        put(Figure.VOLUME_20C, volume20, relative * volume20);
        double volume = model == VolumeModel.atTwenty() ? volume20 : model.millilitres(grams, workings);
        double relativeHere = Math.hypot(relative, ModelDoubt.ofTemperature(grams, temperature));
        put(Figure.VOLUME, volume, relativeHere * volume);
        put(Figure.DENSITY, 1000.0 * mass / volume, relativeHere * 1000.0 * mass / volume);
        gravities(mass, volume20, relative);
        strengths(mass, volume20, doubt);
        sugars(mass, volume20, relative);
        acids(volume20, relative);
        brixOfDensity(1000.0 * mass / volume20, relative);
        refraction(volume20, doubt);
        putIfAny(Figure.FREEZING_POINT, FreezingPoint.of(grams));
        energy(volume20, relative);
        return new Figures(contents, temperature, estimates, Cautions.of(grams, temperature, volume20, doubt));
    }

    private void put(Figure figure, double value, double doubt) {
        estimates.put(figure, new Estimate(value, doubt));
        workings.step(figure.label(), value, figure.unit(), figure.source());
    }

    private void putIfAny(Figure figure, @Nullable Estimate estimate) {
        if (estimate != null) {
            put(figure, estimate.value(), estimate.doubt());
        }
    }

    private double grams(Substance substance) {
        return grams[substance.ordinal()];
    }

    private void gravities(double mass, double volume20, double relative) {
        double at20 = 1000.0 * mass / volume20 / WATER_20C;
        put(Figure.SPECIFIC_GRAVITY_20_20, at20, relative * at20);
        double at60F = 1000.0 * mass / AT_60F.millilitres(grams) / WATER_60F;
        put(Figure.SPECIFIC_GRAVITY_60F_60F, at60F, relative * at60F);
    }

    private void strengths(double mass, double volume20, ModelDoubt doubt) {
        double halfWidth = doubt.strengthHalfWidth();
        double at20 = percentByVolume(Temperature.TWENTY_CELSIUS, volume20);
        put(Figure.STRENGTH, at20, halfWidth);
        put(Figure.STRENGTH_BY_MASS, 100.0 * grams(Substance.ETHANOL) / mass, 0.0);
        double at60F = percentByVolume(VolumeBasis.AT_60F.temperature(), AT_60F.millilitres(grams));
        put(Figure.PROOF_US, 2.0 * at60F, 2.0 * halfWidth);
        double british = BRITISH_PROOF * at20;
        put(Figure.PROOF_BRITISH, british, at20 == 0.0 ? 0.0 : Math.hypot(BRITISH_PROOF * halfWidth, BRITISH_DOUBT));
        double at15 = percentByVolume(VolumeBasis.AT_15C.temperature(), AT_15C.millilitres(grams));
        put(Figure.STRENGTH_15C, at15, halfWidth);
    }

    private double percentByVolume(Temperature basis, double millilitres) {
        double density = EthanolWater.at(basis).ethanol();
        return Math.min(100.0, 100.0 * 1000.0 * grams(Substance.ETHANOL) / density / millilitres);
    }

    private void sugars(double mass, double volume20, double relative) {
        double invert = 0.0;
        for (Substance substance : Substance.values()) {
            @Nullable Sugar sugar = substance.sugar();
            invert += sugar == null ? 0.0 : InvertSugar.per(sugar) * grams(substance);
        }
        double perLitre = 1000.0 / volume20;
        putShare(Figure.SUGAR, contents.sugars() * perLitre, relative);
        putShare(Figure.SUGAR_AS_INVERT, invert * perLitre, relative);
        putShare(Figure.SUGAR_AS_SUCROSE, invert / InvertSugar.per(Sugar.SUCROSE) * perLitre, relative);
        put(Figure.SUGAR_BY_MASS, 100.0 * contents.sugars() / mass, 0.0);
        if (SugarLimit.known(grams)) {
            putIfAny(Figure.SUGAR_LIMIT, SugarLimit.of(grams));
        }
    }

    private void acids(double volume20, double relative) {
        double acid = 0.0;
        double asCitric = 0.0;
        for (Substance substance : Substance.values()) {
            @Nullable Acid each = substance.acid();
            if (each != null) {
                acid += grams(substance);
                asCitric += grams(substance) * each.asCitric();
            }
        }
        putShare(Figure.ACIDITY, 1000.0 * asCitric / volume20, relative);
        putShare(Figure.ACID, 1000.0 * acid / volume20, relative);
    }

    private void putShare(Figure figure, double value, double relative) {
        put(figure, value, relative * value);
    }

    /** What a saccharometer would show; absent where the liquid is lighter than water, as most spirits are. */
    private void brixOfDensity(double density20, double relative) {
        SucroseWater.Isotherm syrup = SucroseWater.at(Temperature.TWENTY_CELSIUS);
        double excess = density20 - WATER_20C;
        if (excess >= -1e-9 && excess <= syrup.excess(1.0)) {
            double w = syrup.fractionOfExcess(Math.max(0.0, excess));
            put(Figure.HYDROMETER_BRIX, 100.0 * w, 100.0 * relative * density20 / syrup.slope(w));
        }
    }

    private void refraction(double volume20, ModelDoubt doubt) {
        @Nullable Estimate index = Refraction.of(grams, volume20, doubt);
        if (index != null) {
            putIfAny(Figure.REFRACTOMETER_BRIX, Refraction.brix(index));
            put(Figure.REFRACTIVE_INDEX, index.value(), index.doubt());
        }
    }

    private void energy(double volume20, double relative) {
        putShare(Figure.ENERGY_KJ, 100.0 * FoodEnergy.kilojoules(grams) / volume20, relative);
        putShare(Figure.ENERGY_KCAL, 100.0 * FoodEnergy.kilocalories(grams) / volume20, relative);
    }
}
