package org.stillroom.studio.usecase.shelf;

import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.plan.Cost;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.Price;
import org.stillroom.core.quantity.Typed;
import org.stillroom.studio.store.Lot;

/** What so much of a lot has cost. */
public final class LotPrices {
    private final ShelfLots shelf;

    public LotPrices(OunceMeaning ounce) {
        this.shelf = new ShelfLots(ounce);
    }

    /**
     * Returns what so much of a lot has cost; not known where nobody wrote what was paid.
     *
     * @param amount in the unit of the lot
     */
    public Outlay of(Lot lot, double amount) {
        if (lot.sheet().unit().equals(Stock.PIECES)) {
            return ofPieces(lot, amount);
        }
        Ingredient ingredient = shelf.of(lot).ingredient();
        Resolved resolved =
                ingredient == null ? null : Resolution.of(ingredient).resolved();
        if (resolved == null) {
            return Outlay.UNKNOWN;
        }
        OptionalDouble density = resolved.gramsPerMillilitre();
        return switch (lot.sheet().unit()) {
            case Stock.GRAMS -> of(resolved, amount);
            case Stock.MILLILITRES ->
                density.isPresent() ? of(resolved, amount * density.getAsDouble()) : Outlay.UNKNOWN;
            default -> Outlay.UNKNOWN;
        };
    }

    private Outlay ofPieces(Lot lot, double count) {
        Typed<Price> paid = shelf.price(lot.sheet());
        return paid == null || paid.value().per() != null
                ? Outlay.UNKNOWN
                : Outlay.of(
                        count / lot.sheet().full() * paid.value().amount(),
                        paid.value().currency());
    }

    /** Returns what so many grams of an ingredient cost by its own price; water costs nothing. */
    public static Outlay of(Resolved ingredient, double grams) {
        OptionalDouble perGram = Cost.perGram(ingredient);
        @Nullable Typed<Price> price = ingredient.ingredient().price();
        if (price != null && perGram.isPresent()) {
            return new Outlay(Map.of(price.value().currency(), grams * perGram.getAsDouble()), true);
        }
        return ingredient.kind() == Kind.WATER ? Outlay.NONE : Outlay.UNKNOWN;
    }
}
