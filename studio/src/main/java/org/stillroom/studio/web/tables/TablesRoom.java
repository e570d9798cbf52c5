package org.stillroom.studio.web.tables;

import io.javalin.http.NotFoundResponse;
import java.util.Map;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** The questions at the desk. Each is a form that is asked by its address, so that an answer can be kept and handed on as a link. */
public final class TablesRoom implements Room {
    private final Store store;

    public TablesRoom(Store store) {
        this.store = store;
    }

    @Override
    public String key() {
        return "tables";
    }

    @Override
    public String path() {
        return "/tables";
    }

    @Override
    public String state(Words words) {
        return "";
    }

    @Override
    public void routes(Doors doors) {
        doors.get("/tables", this::list).get("/tables/{question}", this::ask);
    }

    private void list(Visit visit) {
        visit.page(visit.words().say("tables.title"), key())
                .style("tables.css")
                .show("tables/list.jte", Map.of("questions", DeskQuestions.all()));
    }

    private void ask(Visit visit) {
        DeskQuestion question = DeskQuestions.named(visit.part("question"), MakersGrounds.of(store))
                .orElseThrow(NotFoundResponse::new);
        AskingPage.show(
                visit,
                question,
                new AskingPage.Place(
                        key(),
                        "/tables/" + question.name(),
                        "/tables",
                        visit.words().say("tables.all"),
                        ""));
    }
}
