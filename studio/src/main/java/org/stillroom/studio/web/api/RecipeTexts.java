package org.stillroom.studio.web.api;

import java.util.List;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.compose.StageShelf;
import org.stillroom.studio.usecase.shelf.MakersOunce;

/** Reads recipes that other programs send, as the studio understands them. */
final class RecipeTexts {
    private final Store store;

    RecipeTexts(Store store) {
        this.store = store;
    }

    /**
     * A recipe that can be worked out.
     *
     * @param making with its stages
     * @param notes what was taken for granted in reading it
     */
    record Found(Making making, List<Finding> notes) {}

    /** Returns the recipe of a text; refuses a text that is none. */
    Recipe recipe(String text) {
        return understood(text).recipe();
    }

    private RecipeReading.Understood understood(String text) {
        RecipeReading reading = new RecipeReader(ounce()).read(text);
        if (reading instanceof RecipeReading.Refused refused) {
            throw new Refused(Refused.IMPOSSIBLE, refused.problems());
        }
        return (RecipeReading.Understood) reading;
    }

    /** Returns the recipe of a text with the recipes of the studio that it comes from. */
    Found read(String text) {
        RecipeReading.Understood understood = understood(text);
        StageShelf.Found found = new StageShelf(store.recipes(), ounce()).making(understood.recipe());
        if (found.making() == null) {
            throw new Refused(Refused.IMPOSSIBLE, found.problems());
        }
        return new Found(found.making(), understood.notes());
    }

    OunceMeaning ounce() {
        return MakersOunce.of(store.settings());
    }
}
