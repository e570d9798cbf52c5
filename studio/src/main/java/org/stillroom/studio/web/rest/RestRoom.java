package org.stillroom.studio.web.rest;

import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** Batches after their make: what is in their vessels, what waits, what is next. */
public final class RestRoom implements Room {
    static final String KEY = "rest";

    private final Store store;
    private final Clock clock = Clock.system(ZoneId.systemDefault());

    public RestRoom(Store store) {
        this.store = store;
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
        return "";
    }

    @Override
    public void routes(Doors doors) {
        doors.get("/rest", this::list);
        new BatchPages(store, clock).routes(doors);
    }

    private void list(Visit visit) {
        Book book = Book.open(store);
        visit.page(visit.words().say("rest.title"), KEY)
                .style("make.css")
                .style("rest.css")
                .show("rest/list.jte", Map.of("book", book));
    }
}
