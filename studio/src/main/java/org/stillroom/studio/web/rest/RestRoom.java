package org.stillroom.studio.web.rest;

import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.RecordBatch;
import org.stillroom.studio.usecase.batch.RecordRest;
import org.stillroom.studio.usecase.batch.Waiting;
import org.stillroom.studio.usecase.batch.Waits;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** Batches after their make: what is in their vessels, what waits, what is next. */
public final class RestRoom implements Room {
    static final String KEY = "rest";

    private final Store store;
    private final Clock clock = Clock.system(ZoneId.systemDefault());
    private final RecordRest record;
    private final CalendarPages calendar;

    public RestRoom(Store store) {
        this.store = store;
        this.record = new RecordRest(store, clock);
        this.calendar = new CalendarPages(store, clock);
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public String path() {
        return "/rest";
    }

    @Override
    public String state(Words words) {
        if (store.makes().batches().isEmpty()) {
            return "";
        }
        long due = RestView.due(Waits.of(Book.open(store), store, clock.getZone()), LocalDate.now(clock));
        return due == 0 ? "" : words.say(due == 1 ? "rest.oneDue" : "rest.someDue", "" + due);
    }

    @Override
    public void routes(Doors doors) {
        doors.get("/rest", visit -> show(visit, List.of(), 0))
                .post("/rest/wait/done", this::done)
                .post("/rest/wait/postpone", this::postpone);
        calendar.routes(doors);
        new BottlePages(store).routes(doors);
        new LabelPages(store).routes(doors);
        new BatchPages(store, clock).routes(doors);
    }

    private void show(Visit visit, List<Finding> problems, long refused) {
        Book book = Book.open(store);
        List<Waiting> waits = Waits.of(book, store, clock.getZone());
        String path = calendar.path();
        String address = path.isEmpty()
                ? ""
                : visit.context().scheme() + "://" + visit.context().host() + path;
        visit.page(visit.words().say("rest.title"), KEY)
                .style("make.css")
                .style("rest.css")
                .show(
                        "rest/list.jte",
                        Map.of(
                                "view",
                                new RestView(book, waits, visit.words(), LocalDate.now(clock), problems, refused),
                                "address",
                                address));
    }

    private static long wait(Visit visit) {
        String wait = visit.field("wait");
        return wait.matches("-?\\d{1,18}") ? Long.parseLong(wait) : 0;
    }

    private void done(Visit visit) {
        record.waited(wait(visit), visit.request());
        visit.goOn("/rest");
    }

    private void postpone(Visit visit) {
        RecordBatch.Outcome outcome =
                record.postponed(wait(visit), Map.of("days", visit.field("days")), visit.request());
        if (outcome instanceof RecordBatch.Outcome.NotKept not) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, not.problems(), wait(visit));
        } else {
            visit.goOn("/rest");
        }
    }
}
