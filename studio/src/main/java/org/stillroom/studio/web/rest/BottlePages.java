package org.stillroom.studio.web.rest;

import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.batch.Held;
import org.stillroom.core.batch.Place;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.PlanBottling;
import org.stillroom.studio.usecase.batch.TellKeeping;
import org.stillroom.studio.usecase.shelf.Packing;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.web.rest.BatchForm.Choice;
import org.stillroom.studio.wording.Words;

/** Bottling: how many of which, how full, what one costs. */
final class BottlePages {
    private final Store store;
    private final PlanBottling plan;

    BottlePages(Store store) {
        this.store = store;
        this.plan = new PlanBottling(store);
    }

    void routes(Doors doors) {
        doors.get("/rest/batch/{batch}/bottle", this::show);
    }

    private static Map<String, String> typed(Visit visit) {
        Map<String, String> typed = new LinkedHashMap<>();
        visit.context().queryParamMap().forEach((name, values) -> {
            if (!values.isEmpty()) {
                typed.put(name, name.equals("each") ? String.join(";", values) : values.get(0));
            }
        });
        return typed;
    }

    private void show(Visit visit) {
        Book book = Book.open(store);
        Batch batch = book.batch(visit.part("batch"));
        Words words = visit.words();
        List<Choice> vessels = new ArrayList<>();
        book.cellar().vessels(batch.id()).forEach((place, held) -> {
            if (!held.isEmpty()) {
                vessels.add(new Choice(place.vessel(), BatchView.vessel(words, place.vessel())));
            }
        });
        Map<String, String> typed = typed(visit);
        if (!vessels.isEmpty()) {
            typed.putIfAbsent("vessel", vessels.get(0).value());
        }
        boolean asked = !visit.field("size1").isBlank() || !visit.field("lot1").isBlank();
        PlanBottling.Answer answer =
                asked ? plan.answer(book, batch, typed) : new PlanBottling.Answer(null, List.<Finding>of());
        if (!answer.problems().isEmpty()) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        Held held = book.cellar().held(new Place(batch.id(), typed.getOrDefault("vessel", "")));
        TellKeeping.Found keeps = new TellKeeping(store, book).of(batch, held);
        BottleView view = new BottleView(
                batch, words, vessels, plan.onShelf(Packing.BOTTLES), plan.onShelf(Packing.TRIM), typed, answer, keeps);
        visit.page(words.say("rest.bottleTitle", RestView.title(words, batch)), RestRoom.KEY)
                .style("make.css")
                .style("rest.css")
                .show("rest/bottle.jte", Map.of("view", view));
    }
}
