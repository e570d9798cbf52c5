package org.stillroom.studio.web.clarity;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.OtherHazes;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellClarity;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
import org.stillroom.studio.usecase.compose.StageShelf;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
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

    private void forecast(Visit visit) {
        OunceMeaning ounce = MakersOunce.of(store.settings());
        WorkOnRecipe.Work work = new WorkOnRecipe(store.recipes(), ounce).open(visit.part("recipe"));
        WorkedPlan worked = new ComposeRecipe(new StageShelf(store.recipes(), ounce), ounce, Grounds.SHIPPED)
                .answer(work.form())
                .worked();
        String typed = visit.field("temperature").isBlank() ? "20 °C" : visit.field("temperature");
        visit.page(visit.words().say("clarity.title"), COMPOSE)
                .style("clarity.css")
                .show(
                        "clarity/forecast.jte",
                        Map.of(
                                "recipe", visit.part("recipe"),
                                "title", work.title(),
                                "temperature", typed,
                                "told", told(worked, typed, visit.words())));
    }

    private static Forecast told(@Nullable WorkedPlan worked, String typed, Words words) {
        if (worked == null) {
            return Forecast.not(words.say("clarity.noPlan"));
        }
        Understanding<Temperature> understanding = new QuantityText(OunceMeaning.US_FLUID).temperature(typed);
        if (!(understanding instanceof Understanding.Understood<Temperature> understood)) {
            return Forecast.not(words.say("clarity.noTemperature"));
        }
        try {
            TellClarity.Found found =
                    TellClarity.answer(worked, understood.typed().value(), Workings.NONE);
            return new Forecast(new ClarityView(found, words), "");
        } catch (Impossible impossible) {
            return Forecast.not(words.say("clarity.noOils"));
        }
    }

    private void haze(Visit visit) {
        Set<String> seen = new LinkedHashSet<>(visit.context().queryParams("seen"));
        seen.retainAll(OtherHazes.asked().keySet());
        List<OtherHazes.Haze> likely = OtherHazes.likely(seen);
        visit.page(visit.words().say("clarity.hazeTitle"), "make")
                .style("clarity.css")
                .show("clarity/haze.jte", Map.of("questions", OtherHazes.asked(), "seen", seen, "likely", likely));
    }
}
