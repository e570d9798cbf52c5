package org.stillroom.core.gauging;

import java.util.List;
import org.stillroom.core.liquid.Contents;

/**
 * What was poured into the vessel, and how far each label and each measure may have been off.
 *
 * @param contents grams of everything together
 * @param slips what each label, measure or loss changes at the end of its range; each independent of the others, every value
 *     within its range as likely
 */
public record Poured(Contents contents, List<Slip> slips) {
    public Poured {
        slips = List.copyOf(slips);
    }

    /**
     * One thing that may have been off.
     *
     * @param what the maker would call it: "the label of neutral spirit"
     * @param atItsEnd grams of each substance more (or less) in the vessel at the end of its range, in the order of Substance
     */
    @SuppressWarnings("ArrayRecordComponent") // grams, never compared
    public record Slip(String what, double[] atItsEnd) {}
}
