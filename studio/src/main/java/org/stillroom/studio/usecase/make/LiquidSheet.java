package org.stillroom.studio.usecase.make;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;

/**
 * A liquid as it is kept.
 *
 * @param grams of each substance that is in it
 * @param oil part of the oil's mass by constituent, where it is known
 */
public record LiquidSheet(Map<Substance, Double> grams, Map<String, Double> oil) {
    public LiquidSheet {
        grams = Map.copyOf(grams);
        oil = Map.copyOf(oil);
    }

    /** Returns a liquid to be kept. */
    public static LiquidSheet of(Contents contents) {
        Map<Substance, Double> grams = new EnumMap<>(Substance.class);
        for (Substance substance : Substance.values()) {
            if (contents.grams(substance) > 0.0) {
                grams.put(substance, contents.grams(substance));
            }
        }
        Map<String, Double> oil = new TreeMap<>();
        double all = contents.grams(Substance.OIL);
        contents.aroma().forEach((constituent, some) -> {
            if (all > 0.0) {
                oil.put(constituent, some / all);
            }
        });
        return new LiquidSheet(grams, oil);
    }

    /** Returns the liquid that was kept. */
    public Contents contents() {
        Contents contents = Contents.NONE;
        for (Map.Entry<Substance, Double> each : grams.entrySet()) {
            contents = contents.with(each.getKey(), each.getValue());
        }
        return oil.isEmpty() ? contents : contents.knowingOil(oil);
    }
}
