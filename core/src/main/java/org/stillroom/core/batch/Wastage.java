package org.stillroom.core.batch;

import org.stillroom.core.quantity.Amount;

/**
 * Liquid that is gone, as it was in the vessel.
 *
 * @param cause why
 * @param amount by weight, or by volume at 20 °C
 */
public record Wastage(Cause cause, Amount amount) {
    /** Why liquid is lost. */
    public enum Cause {
        /** The filter and its medium hold it. */
        FILTER,
        /** It stays above what has settled. */
        SEDIMENT,
        /** It was tasted or measured and did not go back. */
        SAMPLE,
        /** Spilt, drunk, given away before bottling. */
        OTHER
    }
}
