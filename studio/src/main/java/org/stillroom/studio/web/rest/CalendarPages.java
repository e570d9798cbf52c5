package org.stillroom.studio.web.rest;

import java.time.Clock;
import java.util.List;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.Waiting;
import org.stillroom.studio.usecase.batch.Waits;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Tokens;
import org.stillroom.studio.web.frame.Visit;

/**
 * The calendar as a file, and at an address of its own that calendar programs read again and again.
 *
 * <p>Such programs cannot sign in. The address holds a random token instead; whoever knows it can read what waits and nothing else.
 */
final class CalendarPages {
    private static final String TOKEN = "calendar-token";

    private final Store store;
    private final Clock clock;

    CalendarPages(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    void routes(Doors doors) {
        doors.get("/rest/calendar.ics", this::write)
                .post("/rest/calendar", this::open)
                .post("/rest/calendar/close", this::close)
                .get("/calendar/{token}", this::feed);
    }

    /** Returns the path of the address, or an empty text while there is none. */
    String path() {
        return store.settings()
                .value(TOKEN)
                .map(token -> "/calendar/" + token + ".ics")
                .orElse("");
    }

    private void open(Visit visit) {
        store.settings().put(TOKEN, Tokens.random());
        visit.goOn("/rest");
    }

    private void close(Visit visit) {
        store.settings().remove(TOKEN);
        visit.goOn("/rest");
    }

    private void feed(Visit visit) {
        String path = path();
        if (path.isEmpty() || !Tokens.same(path, "/calendar/" + visit.part("token"))) {
            visit.notFound();
            return;
        }
        write(visit);
    }

    private void write(Visit visit) {
        Book book = Book.open(store);
        List<Waiting> waits = Waits.of(book, store, clock.getZone());
        visit.context()
                .contentType("text/calendar; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"stillroom.ics\"")
                .result(CalendarFile.of(book, waits, visit.words(), clock.instant()));
    }
}
