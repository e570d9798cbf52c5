package org.stillroom.studio.web.compose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.wording.Words;

/** What can be put into a recipe: lots of the shelf, by their ids, and built-in ingredients, by their names. */
final class ShelfChoice {
    private final List<LotOnShelf> lots;

    private ShelfChoice(List<LotOnShelf> lots) {
        this.lots = lots;
    }

    static ShelfChoice of(Store store) {
        List<LotOnShelf> all =
                new ShelfLots(MakersOunce.of(store.settings())).of(store.lots().all());
        return new ShelfChoice(all.stream()
                .filter(lot -> lot.isAvailable() && lot.ingredient() != null)
                .toList());
    }

    static List<String> builtIn() {
        return Generics.list().stream()
                .map(generic -> generic.ingredient().name())
                .toList();
    }

    /** Returns the lots in words, by id. */
    Map<String, String> lots(Words words) {
        Map<String, String> shown = new LinkedHashMap<>();
        lots.forEach(lot -> shown.put(lot.lot().id(), inWords(lot, words)));
        return shown;
    }

    private static String inWords(LotOnShelf lot, Words words) {
        String label = lot.lot().sheet().label();
        String strength = lot.lot().sheet().fields().getOrDefault("strength", "");
        String left = words.say(
                "compose.left", words.plain(lot.lot().left()), lot.lot().sheet().unit());
        return lot.name() + (strength.isEmpty() ? "" : ", " + strength) + (label == null ? "" : ", " + label) + ", "
                + left;
    }

    /** Returns what was chosen: the id of a lot or the name of a built-in ingredient. */
    Optional<Ingredient> chosen(String idOrName) {
        for (LotOnShelf lot : lots) {
            if (lot.lot().id().equals(idOrName)) {
                return Optional.ofNullable(lot.ingredient());
            }
        }
        return Optional.ofNullable(Generics.find(idOrName)).map(Generic::ingredient);
    }
}
