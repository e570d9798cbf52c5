package org.stillroom.core.plan;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Price;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

/** What ingredients cost, in the currency that their price was typed in. */
public final class Cost {
    private Cost() {}

    /** Returns the price of a gram, or empty when there is no price or it can't be told what a gram of it is. */
    public static OptionalDouble perGram(Resolved ingredient) {
        Typed<Price> price = ingredient.ingredient().price();
        if (price == null) {
            return OptionalDouble.empty();
        }
        Amount per = price.value().per();
        OptionalDouble grams = grams(ingredient, per == null ? pack(ingredient) : per);
        return grams.isPresent() && grams.getAsDouble() > 0.0
                ? OptionalDouble.of(price.value().amount() / grams.getAsDouble())
                : OptionalDouble.empty();
    }

    private static @Nullable Amount pack(Resolved ingredient) {
        Typed<Amount> pack = ingredient.ingredient().pack();
        return pack == null ? null : pack.value();
    }

    private static OptionalDouble grams(Resolved ingredient, @Nullable Amount amount) {
        if (amount instanceof Mass mass) {
            return OptionalDouble.of(mass.grams());
        }
        OptionalDouble density = ingredient.gramsPerMillilitre();
        return amount instanceof Volume volume && density.isPresent()
                ? OptionalDouble.of(volume.millilitres() * density.getAsDouble())
                : OptionalDouble.empty();
    }
}
