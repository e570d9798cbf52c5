package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.QuantityWords;

/** What a lot that was made here is known by: the figures of its liquid, as they would be typed. */
public final class MadeHere {
    /** A substance below this is not written, g/L: no label says it. */
    private static final double WRITTEN = 0.05;

    private MadeHere() {}

    /**
     * Returns the fields of a sheet.
     *
     * @param liquid any amount of it
     * @param oils g/L of each oil that it carries, by name
     * @param plants g/L of each plant that stood in it, by name
     */
    public static Map<String, String> fields(Contents liquid, Map<String, Double> oils, Map<String, Double> plants) {
        Essentials essentials = Essentials.of(liquid.toGrams());
        Map<String, String> fields = new LinkedHashMap<>();
        if (liquid.grams(Substance.ETHANOL) > 0.0) {
            fields.put("strength", QuantityWords.fixed(essentials.strength(), 1) + " %");
        }
        for (Substance substance : Substance.values()) {
            double perLitre = 1000.0 * liquid.grams(substance) / essentials.millilitres();
            boolean told = substance == Substance.ETHANOL || substance == Substance.WATER || substance == Substance.OIL;
            if (!told && perLitre >= WRITTEN) {
                fields.put(substance.label(), QuantityWords.fixed(perLitre, 2) + " g/L");
            }
        }
        if (!oils.isEmpty()) {
            fields.put("aroma", aroma(oils));
        }
        if (!plants.isEmpty()) {
            double together =
                    plants.values().stream().mapToDouble(Double::doubleValue).sum();
            fields.put("plant", String.join(", ", plants.keySet()));
            fields.put("ratio", QuantityWords.figures(together) + " g/L");
        }
        return fields;
    }

    /** Returns what is carried, as one text; commas and semicolons part the oils, so that no name keeps one. */
    private static String aroma(Map<String, Double> oils) {
        List<String> carried = new ArrayList<>();
        oils.forEach((name, perLitre) -> carried.add(name.replaceAll("\\s*[,;]\\s*", " ") + " "
                + (perLitre < 1.0
                        ? QuantityWords.figures(1000.0 * perLitre) + " mg/L"
                        : QuantityWords.fixed(perLitre, 2) + " g/L")));
        return String.join("; ", carried);
    }
}
