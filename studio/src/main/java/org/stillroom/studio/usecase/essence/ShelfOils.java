package org.stillroom.studio.usecase.essence;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.studio.recipefile.EssenceForm;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.ShelfLots;

/** The oils of a shelf, with what their sheets say of drop and density. */
public record ShelfOils(List<LotOnShelf> shelf) {
    public ShelfOils {
        shelf = List.copyOf(shelf);
    }

    /** Returns the names of the oils that can be taken. */
    public List<String> names() {
        return shelf.stream()
                .filter(lot -> lot.isAvailable() && lot.kind() == Kind.ESSENTIAL_OIL)
                .map(LotOnShelf::name)
                .distinct()
                .toList();
    }

    /** Returns the form with the drops and densities that the shelf knows where nobody typed one. */
    public EssenceForm completed(EssenceForm form) {
        EssenceForm filled = form;
        for (int row : form.rows().toArray()) {
            Resolved oil = oil(form.typed(EssenceForm.ofOil(row, "oil")));
            if (oil != null) {
                filled = completed(filled, row, oil);
            }
        }
        return filled;
    }

    /** Returns the rows whose drop the shelf says and nobody typed. */
    public IntStream weighed(EssenceForm form) {
        EssenceForm filled = completed(form);
        return form.rows().filter(row -> {
            String drop = EssenceForm.ofOil(row, "drop");
            return form.typed(drop).isEmpty() && !filled.typed(drop).isEmpty();
        });
    }

    private @Nullable Resolved oil(String name) {
        List<LotOnShelf> lots = name.isEmpty() ? List.of() : ShelfLots.named(name, shelf);
        Ingredient first = lots.isEmpty() ? null : lots.get(0).ingredient();
        return first == null || first.kind() != Kind.ESSENTIAL_OIL
                ? null
                : Resolution.of(first).resolved();
    }

    private static EssenceForm completed(EssenceForm form, int row, Resolved oil) {
        String drop = EssenceForm.ofOil(row, "drop");
        String density = EssenceForm.ofOil(row, "density");
        EssenceForm filled = form;
        String ownDrop = drop(oil);
        if (form.typed(drop).isEmpty() && ownDrop != null) {
            filled = filled.with(drop, ownDrop);
        }
        Typed<Density> own = oil.ingredient().density();
        if (form.typed(density).isEmpty() && own != null) {
            filled = filled.with(density, own.text());
        }
        return filled;
    }

    /** A drop by volume weighs what the density of the oil says. */
    private static @Nullable String drop(Resolved oil) {
        Typed<Amount> typed = oil.ingredient().drop();
        if (typed == null || typed.value() instanceof Mass) {
            return typed == null ? null : typed.text();
        }
        return typed.value() instanceof Volume && oil.gramsPerMillilitre().isPresent()
                ? QuantityWords.fixed(1000.0 * oil.gramsPerDrop(), 2) + " mg"
                : null;
    }
}
