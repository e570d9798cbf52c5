package org.stillroom.core.quantity;

/** How long a stage rests, in days. */
public record Wait(double days) {
    public Wait {
        if (!(days >= 0 && days <= 36_525)) {
            throw new IllegalArgumentException(
                    "a wait lies from 0 days to 100 years, not " + QuantityWords.plain(days) + " days");
        }
    }
}
