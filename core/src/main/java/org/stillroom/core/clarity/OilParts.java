package org.stillroom.core.clarity;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.ConstituentGroup;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** The constituents that the forecast knows from the shipped tables, and what it takes the others for. */
public final class OilParts {
    /** Density of an oil of which nothing is known, g/mL: most lie from 0.84 to 0.98. Own estimate. */
    private static final double USUAL_DENSITY = 0.9;

    private static final Map<String, Double> LIQUID_EQUIVALENTS = liquidEquivalents();

    private OilParts() {}

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
}
