package org.stillroom.studio.web.compose;

import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.extraction.ExtractStrength;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.explore.Explorations;
import org.stillroom.studio.answer.desk.ExtractAsked;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.FollowDose;
import org.stillroom.studio.usecase.compose.CompareRecipes;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
import org.stillroom.studio.usecase.compose.StartRecipe;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.FieldNames;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** Looks at what would be: with a spirit of another strength, with another ingredient in a line. */
final class TryingPages {
    private static final String USUAL_STRENGTHS = "40 50 63 75 96";
    /** More constituents than this are not named beside a field. */
    private static final int MOST_NAMED = 3;

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
        Map<String, List<String>> typed = typed(visit);
        List<Finding> problems = new ArrayList<>();
        List<FollowDose.Offer> offers =
                with.isEmpty() ? List.of() : offers(work.form(), line, with, said(typed, problems));
        if (!problems.isEmpty()) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        FollowDose.Offer chosen = offers.stream()
                .filter(offer -> offer.basis().name().equals(visit.field("by")))
                .findFirst()
                .orElse(offers.isEmpty() ? null : offers.get(0));
        RecipeForm following =
                chosen == null || chosen.isSame() ? null : swapped.with("lines." + line + ".amount", chosen.after());
        ComposeRecipe composer = room.composer();
        SwapView view = new SwapView(
                work,
                line,
                with,
                visit.field("then"),
                ShelfChoice.of(store).lots(visit.words()),
                ShelfChoice.builtIn(),
                typed,
                problems,
                listedByBoth(work.form().typed("lines." + line + ".use"), with, visit.words()),
                swapped,
                offers,
                chosen,
                following,
                CompareRecipes.of(
                        composer.answer(work.form()), composer.answer(following == null ? swapped : following)),
                visit.words());
        visit.page(visit.words().say("compose.swapTitle"), ComposeRoom.KEY)
                .style("compose.css")
                .show("compose/swap.jte", Map.of("view", view));
    }

    /** Returns what was typed of how strong both are; semicolons stand between several comparisons. */
    private static Map<String, List<String>> typed(Visit visit) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        for (Part part : ExtractAsked.PARTS) {
            List<String> texts = Arrays.stream(visit.field(part.name()).split(";", -1))
                    .map(String::strip)
                    .filter(text -> !text.isEmpty())
                    .toList();
            if (!texts.isEmpty()) {
                typed.put(part.name(), texts);
            }
        }
        return typed;
    }

    private static Map<FollowDose.Basis, ExtractStrength> said(
            Map<String, List<String>> typed, List<Finding> problems) {
        try {
            return ExtractAsked.of(typed, FieldNames.PLAIN);
        } catch (WrongInput wrong) {
            problems.addAll(wrong.findings());
            return Map.of();
        }
    }

    /** Returns the doses that follow where what was chosen is stronger or weaker than what the line uses. */
    private List<FollowDose.Offer> offers(
            RecipeForm form, int line, String with, Map<FollowDose.Basis, ExtractStrength> said) {
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
        return new FollowDose(new QuantityText(ounce)).answer(ofRecipe, chosen, form.typed(start + "amount"), said);
    }

    /** Returns the largest constituents that the analyses of both lots list, from the one that is used to the one that was chosen. */
    private String listedByBoth(String name, String with, Words words) {
        List<LotOnShelf> shelf =
                new ShelfLots(MakersOunce.of(store.settings())).of(store.lots().all());
        Map<String, Double> chosen = shelf.stream()
                .filter(lot -> lot.lot().id().equals(with))
                .findFirst()
                .map(lot -> MakersGrounds.oil(lot.lot()))
                .orElse(Map.of());
        Map<String, Double> used = ShelfLots.named(name, shelf).stream()
                .filter(lot -> !lot.lot().id().equals(with))
                .map(lot -> MakersGrounds.oil(lot.lot()))
                .filter(parts -> !parts.isEmpty())
                .findFirst()
                .orElse(Map.of());
        return chosen.entrySet().stream()
                .filter(part -> part.getValue() > 0.0 && used.getOrDefault(part.getKey(), 0.0) > 0.0)
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(MOST_NAMED)
                .map(part -> words.say(
                        "compose.both",
                        name(part.getKey()),
                        words.number(100.0 * used.getOrDefault(part.getKey(), 0.0), 1),
                        words.number(100.0 * part.getValue(), 1)))
                .collect(Collectors.joining("; "));
    }

    private static String name(String key) {
        Constituent constituent = Constituents.find(key);
        return constituent == null ? key : constituent.name();
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
