package org.stillroom.studio.usecase.make;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.liquid.Substance;

/**
 * One thing that may be off in a liquid, as it is kept.
 *
 * @param what the maker would call it
 * @param grams of each substance more at the end of its range
 */
public record SlipSheet(String what, Map<Substance, Double> grams) {
    public SlipSheet {
        grams = Map.copyOf(grams);
    }

    /** Returns slips to be kept. */
    public static List<SlipSheet> of(List<Poured.Slip> slips) {
        return slips.stream().map(SlipSheet::of).toList();
    }

    private static SlipSheet of(Poured.Slip slip) {
        Map<Substance, Double> grams = new EnumMap<>(Substance.class);
        double[] atItsEnd = slip.atItsEnd();
        for (Substance substance : Substance.values()) {
            if (atItsEnd[substance.ordinal()] != 0.0) {
                grams.put(substance, atItsEnd[substance.ordinal()]);
            }
        }
        return new SlipSheet(slip.what(), grams);
    }

    /** Returns the slips that were kept. */
    public static List<Poured.Slip> slips(List<SlipSheet> kept) {
        return kept.stream()
                .map(sheet -> new Poured.Slip(sheet.what, sheet.atItsEnd()))
                .toList();
    }

    private double[] atItsEnd() {
        double[] atItsEnd = new double[Substance.COUNT];
        grams.forEach((substance, some) -> atItsEnd[substance.ordinal()] = some);
        return atItsEnd;
    }
}
