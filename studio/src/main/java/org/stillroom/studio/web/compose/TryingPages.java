package org.stillroom.studio.web.compose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.recipe.Making;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.explore.Explorations;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.FollowDose;
import org.stillroom.studio.usecase.compose.CompareRecipes;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
import org.stillroom.studio.usecase.compose.StartRecipe;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** Looks at what would be: with a spirit of another strength, with another ingredient in a line. */
final class TryingPages {
    private static final String USUAL_STRENGTHS = "40 50 63 75 96";

    private final Store store;
    private final ComposeRoom room;

    TryingPages(Store store, ComposeRoom room) {
        this.store = store;
        this.room = room;
    }

    void routes(Doors doors) {
        doors.get("/compose/{id}/what-if", this::whatIf).get("/compose/{id}/swap", this::swap);
    }

    private void whatIf(Visit visit) {
        WorkOnRecipe.Work work = room.work().open(visit.part("id"));
        String typed = visit.field("strengths").isBlank() ? USUAL_STRENGTHS : visit.field("strengths");
        Making making = room.composer().answer(work.form()).making();
        List<Exploration.Row> rows = making == null
                ? List.of()
                : Explorations.spirits(making, strengths(typed)).rows();
        visit.page(visit.words().say("compose.whatIf"), ComposeRoom.KEY)
                .style("compose.css")
                .show("compose/whatif.jte", Map.of("work", work, "typed", typed, "rows", rows));
    }

    private static List<AlcoholByVolume> strengths(String typed) {
        List<AlcoholByVolume> strengths = new ArrayList<>();
        for (String each : typed.replace("%", " ").strip().split("[\\s;]+", -1)) {
            if (each.matches("\\d{1,2}([.,]\\d{1,2})?|100")) {
                strengths.add(AlcoholByVolume.at20(Double.parseDouble(each.replace(',', '.'))));
            }
        }
        return strengths;
    }

    private void swap(Visit visit) {
        WorkOnRecipe.Work work = room.work().open(visit.part("id"));
        int line = RecipePages.number(visit.field("line"));
        String with = visit.field("with");
        RecipeForm swapped = ShelfChoice.of(store)
                .chosen(with)
                .map(other -> StartRecipe.swapping(work.form(), line, other))
                .orElse(work.form());
        ComposeRecipe composer = room.composer();
        Map<String, Object> model = new HashMap<>();
        model.put("work", work);
        model.put("line", line);
        model.put("with", with);
        model.put("shelf", ShelfChoice.of(store).lots(visit.words()));
        model.put("builtIn", ShelfChoice.builtIn());
        model.put("swapped", swapped);
        FollowDose.Offer offer = offer(visit, work.form(), line, with);
        RecipeForm following = offer == null ? null : swapped.with("lines." + line + ".amount", offer.after());
        model.put("offer", offer);
        model.put("following", following);
        model.put("tried", compared(visit));
        model.put(
                "compared",
                CompareRecipes.of(
                        composer.answer(work.form()), composer.answer(following == null ? swapped : following)));
        visit.page(visit.words().say("compose.swapTitle"), ComposeRoom.KEY)
                .style("compose.css")
                .show("compose/swap.jte", model);
    }

    private static FollowDose.Compared compared(Visit visit) {
        return new FollowDose.Compared(
                visit.field("recipes").strip(), visit.field("mine").strip());
    }

    /** Returns the dose that follows where the lot that was chosen is stronger or weaker than what the line uses. */
    private FollowDose.@Nullable Offer offer(Visit visit, RecipeForm form, int line, String with) {
        OunceMeaning ounce = MakersOunce.of(store.settings());
        List<LotOnShelf> shelf = new ShelfLots(ounce).of(store.lots().all());
        FollowDose.Extract chosen = shelf.stream()
                .filter(lot -> lot.lot().id().equals(with))
                .findFirst()
                .map(FollowDose.Extract::of)
                .orElse(null);
        String start = "lines." + line + ".";
        Ingredient used = used(form, form.typed(start + "use"), shelf, with);
        FollowDose.Extract ofRecipe = used == null ? null : FollowDose.Extract.of(used, shelf, with);
        return chosen == null || ofRecipe == null
                ? null
                : new FollowDose(new QuantityText(ounce))
                        .answer(ofRecipe, chosen, form.typed(start + "amount"), compared(visit));
    }

    /** Returns what a line uses: as the recipe lists it, else as another lot of its name is. */
    private @Nullable Ingredient used(RecipeForm form, String name, List<LotOnShelf> shelf, String besides) {
        Making making = room.composer().answer(form).making();
        List<Ingredient> listed = making == null ? List.of() : making.recipe().ingredients();
        return listed.stream()
                .filter(each -> Generics.same(each.name(), name))
                .findFirst()
                .orElseGet(() -> ShelfLots.named(name, shelf).stream()
                        .filter(lot -> !lot.lot().id().equals(besides))
                        .map(LotOnShelf::ingredient)
                        .filter(each -> each != null)
                        .findFirst()
                        .orElse(null));
    }
}
