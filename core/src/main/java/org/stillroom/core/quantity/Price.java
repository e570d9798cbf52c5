package org.stillroom.core.quantity;

import org.jspecify.annotations.Nullable;

/**
 * What an ingredient costs.
 *
 * @param amount money, zero or more
 * @param currency ISO 4217 code, or the sign as typed where none is known
 * @param per the amount that this buys; null means one pack
 */
public record Price(
        double amount, String currency, @Nullable Amount per) {
    public Price {
        if (!(amount >= 0 && amount < 1e12)) {
            throw new IllegalArgumentException("a price lies from 0 to below 1e12, not " + QuantityWords.plain(amount));
        }
    }
}
