package org.stillroom.studio.usecase.essence;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.shelf.MadeHere;
import org.stillroom.studio.usecase.shelf.Stock;

/** Puts a finished essence on the shelf: what it holds, the recipe that it was made by, and when. */
public final class ShelveEssence {
    private final Store store;

    public ShelveEssence(Store store) {
        this.store = store;
    }

    /**
     * Puts it there; its recipe is kept too, unless it is among the recipes as it is.
     *
     * @param label what tells it from other lots of the name, or null
     * @param made day on which it was made
     * @throws Impossible when nobody is to drink of it
     */
    public Lot answer(
            EssenceSheet sheet,
            PlanEssence.Found found,
            PlanEssence.Made choice,
            @Nullable String label,
            LocalDate made,
            String request) {
        if (found.isStopped()) {
            throw new Impossible(
                    "oils", "nobody is to drink of it, so it gets no place on the shelf.", "Leave it out.");
        }
        Revision recipe = recipe(sheet.title(), EssenceRecipe.text(sheet, found, choice), request);
        double millilitres = Math.rint(100.0 * choice.essence()) / 100.0;
        LotSheet lot = new LotSheet(
                sheet.title(),
                Kind.ESSENCE.label(),
                MadeHere.fields(choice.contents(), EssenceRecipe.oils(found, choice), Map.of()),
                label,
                null,
                millilitres,
                Stock.MILLILITRES,
                null,
                null,
                null,
                null,
                null,
                null,
                false,
                new LotSheet.Origin(recipe.recipe(), recipe.number(), recipe.title(), made));
        return store.lots()
                .add(List.of(new Lots.NewLot(lot, millilitres)), request)
                .get(0);
    }

    private Revision recipe(String title, String text, String request) {
        Recipes recipes = store.recipes();
        for (RecipeHead head : recipes.heads(false)) {
            Revision latest = recipes.latest(head.id()).orElse(null);
            if (latest != null && latest.text().equals(text)) {
                return latest;
            }
        }
        String id = recipes.create(title, request + ".recipe");
        recipes.save(id, 0, title, text, null, request + ".revision");
        return recipes.latest(id).orElseThrow();
    }
}
