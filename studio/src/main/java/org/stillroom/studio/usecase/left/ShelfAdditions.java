package org.stillroom.studio.usecase.left;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.Correction.Addition;
import org.stillroom.studio.usecase.shelf.LotOnShelf;

/** What stands on a shelf as what can be added to a batch, with how much is left of it. */
public final class ShelfAdditions {
    /** Kinds that bring a batch to its figures; others bring a flavour of their own. */
    private static final Set<Kind> PLAIN = Set.of(Kind.SPIRIT, Kind.SUGAR, Kind.SYRUP, Kind.ACID, Kind.WATER);

    private final List<LotOnShelf> shelf;

    public ShelfAdditions(List<LotOnShelf> shelf) {
        this.shelf = List.copyOf(shelf);
    }

    /** Returns what can correct a batch: spirits, sugars, syrups, acids and water, lots of one name together. */
    public List<Addition> plain() {
        List<Addition> plain = new ArrayList<>();
        for (LotOnShelf lot : shelf) {
            boolean met = plain.stream().anyMatch(each -> Generics.same(each.name(), lot.name()));
            if (lot.isAvailable() && PLAIN.contains(lot.kind()) && !met) {
                named(lot.name()).ifPresent(plain::add);
            }
        }
        return plain;
    }

    /** Returns what stands there under a name, taken for what the lot to use first is. */
    public Optional<Addition> named(String name) {
        return Optional.ofNullable(Stocked.named(name, shelf))
                .map(stocked -> new Addition(
                        stocked.name(),
                        stocked.resolved().perGram(),
                        stocked.grams().orElse(Double.POSITIVE_INFINITY)));
    }
}
