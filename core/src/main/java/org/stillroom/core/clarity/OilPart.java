package org.stillroom.core.clarity;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.ConstituentGroup;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * A constituent of an oil as the forecast sees it.
 *
 * @param key CAS number, or whatever it was called where it has none in the table
 * @param name the name that we show
 * @param formula empirical formula, empty where it is not known
 * @param gramsPerMole molar mass
 * @param gramsPerLitreInWater solubility in water at 25 °C, of the liquid also where the pure substance is a solid
 * @param logP decimal logarithm of the octanol–water partition coefficient
 * @param gramsPerMillilitre density near 20 °C
 * @param doubtFactor factor by which an estimated solubility may be off besides the doubt common to all, one standard deviation; 1
 *     where the constituent is in the table
 */
public record OilPart(
        String key,
        String name,
        String formula,
        double gramsPerMole,
        double gramsPerLitreInWater,
        double logP,
        double gramsPerMillilitre,
        double doubtFactor) {
    /** Density of an oil of which nothing is known, g/mL: most lie from 0.84 to 0.98. Own estimate. */
    private static final double USUAL_DENSITY = 0.9;

    private static final Map<String, Double> LIQUID_EQUIVALENTS = liquidEquivalents();

    /** Returns the constituent of a CAS number, a name or a group's name; one that is in no table is estimated. */
    public static OilPart of(String key) {
        @Nullable Constituent known = Constituents.find(key);
        if (known != null) {
            return known(known);
        }
        @Nullable ConstituentGroup named = ConstituentGroup.named(key);
        return named != null ? estimated(named.label(), named) : estimated(key, ConstituentGroup.guessed(key));
    }

    private static OilPart known(Constituent constituent) {
        double milligrams = LIQUID_EQUIVALENTS.getOrDefault(
                constituent.cas(), constituent.waterSolubility().value());
        Constituent.@Nullable Property density = constituent.density();
        return new OilPart(
                constituent.cas(),
                constituent.name(),
                constituent.formula(),
                constituent.gramsPerMole(),
                milligrams / 1000.0,
                constituent.logP().value(),
                density == null ? USUAL_DENSITY : density.value(),
                1.0);
    }

    private static OilPart estimated(String name, ConstituentGroup group) {
        return new OilPart(
                name,
                name,
                "",
                group.gramsPerMole(),
                group.gramsPerLitreInWater(),
                group.logP(),
                USUAL_DENSITY,
                group.doubtFactor());
    }

    private static Map<String, Double> liquidEquivalents() {
        Map<String, Double> equivalents = new HashMap<>();
        for (Table.Row row : Tables.open("clarity/liquid_equivalents.csv").rows()) {
            equivalents.put(row.text("cas"), row.number("mg_per_l"));
        }
        return equivalents;
    }

    /** Returns whether its solubility is estimated from its family alone. */
    public boolean estimated() {
        return doubtFactor > 1.0;
    }

    /** Returns whether it is a terpene or sesquiterpene hydrocarbon, the part that terpeneless oils leave out. */
    public boolean isTerpeneHydrocarbon() {
        return formula.equals("C10H16")
                || formula.equals("C10H14")
                || formula.equals("C15H24")
                || name.equals(ConstituentGroup.MONOTERPENES.label())
                || name.equals(ConstituentGroup.SESQUITERPENES.label());
    }
}
