package org.stillroom.studio.usecase.left;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Typed;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.usecase.shelf.Stock;

/**
 * All that the shelf holds under one name, taken for what the lot to use first is.
 *
 * @param name as recipes find it
 * @param resolved what it is
 * @param grams all of it together; empty where one of the lots does not say how much it holds
 * @param lots the one to use first at the front
 */
record Stocked(String name, Resolved resolved, OptionalDouble grams, List<LotOnShelf> lots) {
    Stocked {
        lots = List.copyOf(lots);
    }

    /** Returns what there is under a name, or null when nothing can be taken under it. */
    static @Nullable Stocked named(String name, List<LotOnShelf> shelf) {
        return of(ShelfLots.named(name, shelf));
    }

    /** Returns what there is of an ingredient, or null when nothing can be taken for it. */
    static @Nullable Stocked of(Ingredient ingredient, List<LotOnShelf> shelf) {
        return of(ShelfLots.of(ingredient, shelf));
    }

    /** Returns what lots of one thing are together, or null when none of them is understood. */
    static @Nullable Stocked of(List<LotOnShelf> all) {
        List<LotOnShelf> lots =
                all.stream().filter(lot -> lot.ingredient() != null).toList();
        if (lots.isEmpty()) {
            return null;
        }
        Ingredient first = Objects.requireNonNull(lots.get(0).ingredient());
        Resolved resolved = Resolution.of(first).resolved();
        return resolved == null ? null : new Stocked(first.name(), resolved, grams(lots, resolved), lots);
    }

    private static OptionalDouble grams(List<LotOnShelf> lots, Resolved resolved) {
        double sum = 0.0;
        for (LotOnShelf lot : lots) {
            OptionalDouble grams = grams(lot.lot(), resolved);
            if (grams.isEmpty()) {
                return grams;
            }
            sum += grams.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }

    private static OptionalDouble grams(Lot lot, Resolved resolved) {
        if (!Stock.isKnown(lot)) {
            return OptionalDouble.empty();
        }
        OptionalDouble density = resolved.gramsPerMillilitre();
        return switch (lot.sheet().unit()) {
            case Stock.GRAMS -> OptionalDouble.of(lot.left());
            case Stock.MILLILITRES ->
                density.isPresent() ? OptionalDouble.of(lot.left() * density.getAsDouble()) : OptionalDouble.empty();
            default -> OptionalDouble.empty();
        };
    }

    /** Returns it as an ingredient under the name that a line uses, with nothing said of how much there is. */
    Ingredient usedAs(String line) {
        return lots.get(0).usedAs(line);
    }

    /** Returns all of it as an amount at hand; null where that is not known. */
    @Nullable
    Typed<Amount> atHand() {
        if (grams.isEmpty()) {
            return null;
        }
        Mass mass = new Mass(grams.getAsDouble());
        return new Typed<>(QuantityWords.metric(mass), mass);
    }
}
