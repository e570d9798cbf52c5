package org.stillroom.core.batch;

import org.stillroom.core.gauging.Shown;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;

/** How much of what is in a vessel. */
public sealed interface Portion {
    /** All of it. */
    record Whole() implements Portion {}

    /**
     * So much of it.
     *
     * @param amount by weight, or by volume at 20 °C
     */
    record Some(Amount amount) implements Portion {}

    /** A measure may show this part more than there is, or less, and the vessel is empty then. Our own choice. */
    double MEASURING_SLIP = 1e-3;

    /** Returns the part of itself by which an amount may be off that was measured with what a kitchen has. */
    static double off(Amount amount) {
        return (amount instanceof Mass ? Shown.MASS : Shown.VOLUME).usualHalfWidth(1.0);
    }

    /** Returns the grams that it is of what a vessel holds. */
    default double grams(Held held) {
        return this instanceof Some some ? grams(some.amount(), held) : held.grams();
    }

    /** Returns what an amount of a liquid weighs, g. */
    static double grams(Amount amount, Held of) {
        if (amount instanceof Mass mass) {
            return mass.grams();
        }
        if (amount instanceof Volume volume) {
            return of.isEmpty() ? 0.0 : volume.millilitres() * of.essentials().density() / 1000.0;
        }
        throw new IllegalArgumentException("a batch is measured by weight or by volume, not in "
                + QuantityWords.plain(((Drops) amount).count()) + " drops");
    }
}
