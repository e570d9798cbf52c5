package org.stillroom.core.liquid;

import org.stillroom.core.reference.Source;

/**
 * Every figure that is told of a liquid, in the order in which answers list them.
 *
 * <p>Strength, sugar, acidity, refraction and Brix are at 20 °C; density and volume at the temperature asked where the name
 * does not say otherwise. Specific gravities are of masses in vacuum.
 */
public enum Figure {
    MASS("mass_g", "mass", "g", 1, Source.BALANCE),
    VOLUME("volume_ml", "volume", "mL at the temperature asked", 1, Source.VOLUME_MODEL),
    VOLUME_20C("volume_20c_ml", "volume at 20 °C", "mL at 20 °C", 1, Source.VOLUME_MODEL),
    DENSITY("density_kg_m3", "density", "kg/m³ at the temperature asked", 2, Source.VOLUME_MODEL),
    SPECIFIC_GRAVITY_20_20(
            "specific_gravity_20_20", "specific gravity 20/20 °C", "of water at 20 °C", 5, Source.VOLUME_MODEL),
    SPECIFIC_GRAVITY_60F_60F(
            "specific_gravity_60f_60f", "specific gravity 60/60 °F", "of water at 60 °F", 5, Source.VOLUME_MODEL),
    STRENGTH("strength_vol_percent", "strength", "% vol at 20 °C", 2, Source.VOLUME_MODEL),
    STRENGTH_BY_MASS("strength_mass_percent", "strength by mass", "% mass of the whole", 2, Source.BALANCE),
    PROOF_US("proof_us", "US proof", "°proof at 60 °F", 2, Source.CFR_27_30),
    PROOF_BRITISH("proof_british", "British proof", "° (7/4 of the % vol)", 1, Source.TRADE),
    STRENGTH_15C("strength_15c_vol_percent", "strength at 15 °C", "% vol at 15 °C", 2, Source.VOLUME_MODEL),
    SUGAR("sugar_g_per_l", "sugar", "g/L at 20 °C, as dissolved", 1, Source.VOLUME_MODEL),
    SUGAR_AS_INVERT("sugar_as_invert_g_per_l", "sugar as invert", "g/L at 20 °C", 1, Source.ATOMIC_WEIGHTS),
    SUGAR_AS_SUCROSE("sugar_as_sucrose_g_per_l", "sugar as sucrose", "g/L at 20 °C", 1, Source.ATOMIC_WEIGHTS),
    SUGAR_BY_MASS("sugar_mass_percent", "sugar by mass", "% mass of the whole", 2, Source.BALANCE),
    SUGAR_LIMIT(
            "sucrose_limit_g_per_l",
            "sucrose that can stay dissolved",
            "g/L at 14 °C",
            0,
            Source.SOLUBILITY_IN_ALCOHOL),
    HYDROMETER_BRIX("hydrometer_brix", "Brix by hydrometer", "°Bx at 20 °C", 2, Source.ICUMSA_SPS4),
    REFRACTOMETER_BRIX("refractometer_brix", "Brix by refractometer", "°Bx at 20 °C", 1, Source.ICUMSA_REFRACTION),
    ACIDITY("acidity_as_citric_g_per_l", "acidity as citric", "g/L at 20 °C", 2, Source.ATOMIC_WEIGHTS),
    ACID("acid_g_per_l", "acid", "g/L at 20 °C, as dissolved", 2, Source.VOLUME_MODEL),
    REFRACTIVE_INDEX("refractive_index", "refractive index", "at 20 °C, 589.3 nm", 4, Source.REFRACTION_SUM),
    FREEZING_POINT("freezing_point_c", "freezing point", "°C, first ice", 1, Source.FREEZING_SUM),
    ENERGY_KJ("energy_kj_per_100ml", "energy", "kJ per 100 mL at 20 °C", 0, Source.EU_1169_2011),
    ENERGY_KCAL("energy_kcal_per_100ml", "energy", "kcal per 100 mL at 20 °C", 0, Source.EU_1169_2011);

    private final String key;
    private final String label;
    private final String unit;
    private final int decimals;
    private final Source source;

    Figure(String key, String label, String unit, int decimals, Source source) {
        this.key = key;
        this.label = label;
        this.unit = unit;
        this.decimals = decimals;
        this.source = source;
    }

    /** Returns the key under which answers give it. */
    public String key() {
        return key;
    }

    /** Returns what people call it. */
    public String label() {
        return label;
    }

    /** Returns its unit and basis. */
    public String unit() {
        return unit;
    }

    /** Returns how many decimals are worth showing. */
    public int decimals() {
        return decimals;
    }

    /** Returns where the formula behind it comes from. */
    public Source source() {
        return source;
    }
}
