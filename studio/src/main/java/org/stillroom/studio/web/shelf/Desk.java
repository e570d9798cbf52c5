package org.stillroom.studio.web.shelf;

import java.util.List;
import java.util.Optional;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.RecipesTaking;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.usecase.shelf.TakenBy;

/** What the pages of the shelf read and write. */
record Desk(Store store, RecipesTaking recipes) {
    static Desk of(Store store) {
        return new Desk(store, new RecipesTaking(store.recipes()));
    }

    OunceMeaning ounce() {
        return MakersOunce.of(store.settings());
    }

    /** Returns what stands on the shelf, empty bottles and their like included. */
    List<LotOnShelf> everything() {
        return store.lots().all().stream().map(new ShelfLots(ounce())::of).toList();
    }

    /** Returns the lots that are ingredients. */
    List<LotOnShelf> lots() {
        return new ShelfLots(ounce()).of(store.lots().all());
    }

    Optional<LotOnShelf> lot(String id) {
        return store.lots().lot(id).map(new ShelfLots(ounce())::of);
    }

    List<TakenBy> taken() {
        return recipes.all(ounce());
    }
}
