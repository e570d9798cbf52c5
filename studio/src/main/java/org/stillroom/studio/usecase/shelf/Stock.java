package org.stillroom.studio.usecase.shelf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.studio.store.Lot;

/**
 * How much there is of a lot.
 *
 * @param amount in the unit
 * @param unit "ml", "g" or "pieces"
 */
public record Stock(double amount, String unit) {
    public static final String MILLILITRES = "ml";
    public static final String GRAMS = "g";
    public static final String PIECES = "pieces";

    /** The least step in which an amount is written. */
    private static final int DECIMALS = 3;

    /** Returns what is left of a lot. */
    public static Stock left(Lot lot) {
        return new Stock(lot.left(), lot.sheet().unit());
    }

    /** Returns what a lot held when full; 0 where that was not said. */
    public static Stock full(Lot lot) {
        return new Stock(lot.sheet().full(), lot.sheet().unit());
    }

    /** Returns whether the shelf knows how much is left of a lot. */
    public static boolean isKnown(Lot lot) {
        return lot.sheet().full() > 0 || lot.left() > 0;
    }

    /** Returns an amount as stock, or null for drops, which nobody stores by. */
    static @Nullable Stock of(Amount amount) {
        if (amount instanceof Drops) {
            return null;
        }
        return amount instanceof Volume volume
                ? new Stock(volume.millilitres(), MILLILITRES)
                : new Stock(((Mass) amount).grams(), GRAMS);
    }

    /** Returns it as a person would type it. */
    public String text() {
        return number() + " " + unit;
    }

    /** Returns its number with a decimal point and no idle zeros. */
    public String number() {
        BigDecimal rounded = BigDecimal.valueOf(amount).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Returns it as the amount at hand of an ingredient, or null for pieces; less than nothing is nothing. */
    public @Nullable Typed<Amount> atHand() {
        Stock some = amount < 0 ? new Stock(0, unit) : this;
        return switch (unit) {
            case MILLILITRES -> new Typed<>(some.text(), new Volume(some.amount));
            case GRAMS -> new Typed<>(some.text(), new Mass(some.amount));
            default -> null;
        };
    }
}
