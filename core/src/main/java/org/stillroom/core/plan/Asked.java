package org.stillroom.core.plan;

import org.stillroom.core.acid.Acid;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.sugar.InvertSugar;
import org.stillroom.core.sugar.Sugar;

/** What a target can ask of the finished liquid. */
public enum Asked {
    VOLUME("volume", "mL", 1),
    STRENGTH("strength", "% vol", 2),
    SUGAR("sugar", "g/L", 1),
    ACIDITY("acidity", "g/L as citric", 2);

    private final String label;
    private final String unit;
    private final int decimals;

    Asked(String label, String unit, int decimals) {
        this.label = label;
        this.unit = unit;
        this.decimals = decimals;
    }

    public String label() {
        return label;
    }

    /** Returns the unit in which it is asked, at 20 °C. */
    public String unit() {
        return unit;
    }

    /** Returns the decimals to which it is shown where a plan must show that something is missed. */
    public int decimals() {
        return decimals;
    }

    /**
     * Returns the weights that make grams of each substance into this figure times the millilitres of the liquid, so that the
     * balance is linear in grams and volume; the volume has none.
     */
    double[] weights(SugarBasis basis) {
        double[] weights = new double[Substance.COUNT];
        for (Substance substance : Substance.values()) {
            weights[substance.ordinal()] = switch (this) {
                case VOLUME -> 0.0;
                case STRENGTH -> ethanol(substance);
                case SUGAR -> sugar(substance, basis);
                case ACIDITY -> acid(substance);
            };
        }
        return weights;
    }

    private static double ethanol(Substance substance) {
        return substance == Substance.ETHANOL
                ? 100.0 * 1000.0 / EthanolWater.at(Temperature.TWENTY_CELSIUS).ethanol()
                : 0.0;
    }

    private static double sugar(Substance substance, SugarBasis basis) {
        Sugar sugar = substance.sugar();
        if (sugar == null) {
            return 0.0;
        }
        return 1000.0
                * switch (basis) {
                    case AS_DISSOLVED -> 1.0;
                    case AS_INVERT -> InvertSugar.per(sugar);
                    case AS_SUCROSE -> InvertSugar.per(sugar) / InvertSugar.per(Sugar.SUCROSE);
                };
    }

    private static double acid(Substance substance) {
        Acid acid = substance.acid();
        return acid == null ? 0.0 : 1000.0 * acid.asCitric();
    }
}
