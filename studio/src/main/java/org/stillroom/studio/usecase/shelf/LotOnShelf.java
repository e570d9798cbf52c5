package org.stillroom.studio.usecase.shelf;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.store.Lot;

/**
 * A lot together with the ingredient that it is.
 *
 * @param lot as it stands on the shelf
 * @param ingredient ready to be put in a recipe, with what is left as the amount at hand; null as long as problems stand
 * @param problems what must be known or put right before it can be counted
 * @param notes what was taken for granted in reading it
 */
public record LotOnShelf(Lot lot, @Nullable Ingredient ingredient, List<SheetProblem> problems, List<Finding> notes) {
    public LotOnShelf {
        problems = List.copyOf(problems);
        notes = List.copyOf(notes);
    }

    public String name() {
        return lot.sheet().name();
    }

    public Kind kind() {
        return ShelfLots.kind(lot.sheet().kind());
    }

    /** Returns what it is for what is finished, or null where it is an ingredient. */
    public @Nullable Packing packing() {
        return Packing.of(lot.sheet().kind());
    }

    /** Returns whether anything can be taken from it: it is not set aside and not known to be empty. */
    public boolean isAvailable() {
        return !lot.sheet().setAside() && (!Stock.isKnown(lot) || lot.left() > 0);
    }
}
