package org.stillroom.studio.web.compose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.recipe.Making;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.explore.Explorations;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.compose.CompareRecipes;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
import org.stillroom.studio.usecase.compose.StartRecipe;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
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
        model.put("compared", CompareRecipes.of(composer.answer(work.form()), composer.answer(swapped)));
        visit.page(visit.words().say("compose.swapTitle"), ComposeRoom.KEY)
                .style("compose.css")
                .show("compose/swap.jte", model);
    }
}
