package org.stillroom.studio.web.clarity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.GlassAddition;
import org.stillroom.core.clarity.OtherHazes;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.ClarityAsked;
import org.stillroom.studio.answer.desk.HazeAsked;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.TellHaze;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
import org.stillroom.studio.usecase.compose.StageShelf;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.web.tables.Labels;
import org.stillroom.studio.wording.Words;

/** Whether a recipe stays clear, and what another haze may be. Recipes and batches lead here, not the navigation. */
public final class ClarityRoom implements Room {
    private static final String COMPOSE = "compose";

    private final Store store;

    public ClarityRoom(Store store) {
        this.store = store;
    }

    @Override
    public String key() {
        return "clarity";
    }

    @Override
    public String path() {
        return "/haze";
    }

    @Override
    public String state(Words words) {
        return "";
    }

    @Override
    public boolean isInNavigation() {
        return false;
    }

    @Override
    public void routes(Doors doors) {
        doors.get("/clarity/{recipe}", this::forecast).get("/haze", this::haze);
    }

    /**
     * What was typed about the forecast.
     *
     * @param with name of what comes to it in the glass
     * @param other a drink by its figures in place of that, or blank
     * @param glass temperature in the glass, or blank
     */
    public record Typed(String temperature, String with, String other, String glass) {}

    private void forecast(Visit visit) {
        OunceMeaning ounce = MakersOunce.of(store.settings());
        WorkOnRecipe.Work work = new WorkOnRecipe(store.recipes(), ounce).open(visit.part("recipe"));
        WorkedPlan worked = new ComposeRecipe(new StageShelf(store.recipes(), ounce), ounce, MakersGrounds.of(store))
                .answer(work.form())
                .worked();
        Typed typed = new Typed(
                visit.field("temperature").isBlank() ? "20 °C" : visit.field("temperature"),
                visit.field("with").isBlank() ? GlassAddition.WATER.name() : visit.field("with"),
                visit.field("other"),
                visit.field("glass"));
        visit.page(visit.words().say("clarity.title"), COMPOSE)
                .style("clarity.css")
                .show(
                        "clarity/forecast.jte",
                        Map.of(
                                "recipe", visit.part("recipe"),
                                "title", work.title(),
                                "typed", typed,
                                "told", told(worked, typed, visit.words())));
    }

    private static Forecast told(@Nullable WorkedPlan worked, Typed typed, Words words) {
        if (worked == null) {
            return new Forecast(null, words.say("clarity.noPlan"), List.of());
        }
        Map<String, List<String>> parts = new HashMap<>();
        parts.put("temperature", List.of(typed.temperature()));
        parts.put("with", List.of(typed.other().isBlank() ? typed.with() : typed.other()));
        if (!typed.glass().isBlank()) {
            parts.put("glass", List.of(typed.glass()));
        }
        try {
            ClarityAsked asked = ClarityAsked.of(parts, Labels.PLAIN, new Objections());
            return new Forecast(new ClarityView(asked.answer(worked, Workings.NONE), words), "", List.of());
        } catch (WrongInput wrong) {
            return new Forecast(null, words.say("clarity.not"), wrong.findings());
        }
    }

    private void haze(Visit visit) {
        Map<String, List<String>> typed = new HashMap<>();
        for (String part : List.of("fat", "strength", "acid", "clarify", "volume")) {
            if (!visit.field(part).isBlank()) {
                typed.put(part, List.of(visit.field(part)));
            }
        }
        List<String> signs = new ArrayList<>(visit.context().queryParams("seen"));
        signs.retainAll(OtherHazes.asked().keySet());
        if (!signs.isEmpty()) {
            typed.put("seen", signs);
        }
        visit.page(visit.words().say("clarity.hazeTitle"), "make")
                .style("clarity.css")
                .show("clarity/haze.jte", Map.of("view", haze(typed, visit.words())));
    }

    private static HazeView haze(Map<String, List<String>> typed, Words words) {
        try {
            HazeAsked asked = HazeAsked.of(typed, Labels.PLAIN, new Objections());
            return new HazeView(asked.answer(null), typed, List.of(), words);
        } catch (WrongInput wrong) {
            return new HazeView(TellHaze.answer(Set.of(), null, null), typed, wrong.findings(), words);
        }
    }
}
