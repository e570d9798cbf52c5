package org.stillroom.studio.usecase.batch;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Wait;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Batches;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.RecordBatch.Outcome;
import org.stillroom.studio.usecase.make.LogBodies;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.MakeStep;
import org.stillroom.studio.usecase.make.RecordStep;
import org.stillroom.studio.usecase.make.ShowMake;
import org.stillroom.studio.usecase.shelf.MakersOunce;

/** Logs what waits, that it was postponed, that it was seen to. */
public final class RecordRest {
    private final Store store;
    private final Clock clock;

    public RecordRest(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }

    /** Logs that a batch waits: {@code what}, and {@code until} a day or for so many {@code days}. */
    public Outcome waits(Batch batch, Map<String, String> typed, String request) {
        Typing typing = new Typing(typed, MakersOunce.of(store.settings()));
        LocalDate until = until(typing);
        Waiting.What what = typing.choice("what", Waiting.What.values(), Waiting.What.OTHER);
        if (until == null || !typing.problems().isEmpty()) {
            return new Outcome.NotKept(typing.problems());
        }
        Waits.WaitsBody body = new Waits.WaitsBody(clock.instant(), what, today(), until, typing.kept());
        return write(batch.id(), Waits.WAITS, body, request);
    }

    private @Nullable LocalDate until(Typing typing) {
        Wait wait = typing.quantity("days", "days", QuantityText::wait, "“14 days”");
        if (!typing.has("until")) {
            if (wait == null && typing.problems().isEmpty()) {
                typing.object(
                        "days", "wait-missing", "Until when is not said.", "Name a day, or write such as 14 days.");
            }
            return wait == null ? null : today().plusDays((long) Math.ceil(wait.days()));
        }
        try {
            LocalDate day = LocalDate.parse(typing.text("until"));
            if (day.isBefore(today())) {
                typing.object("until", "day-has-gone", "That day has gone by.", "Name a day from today on.");
                return null;
            }
            if (wait != null && !day.equals(today().plusDays((long) Math.ceil(wait.days())))) {
                typing.object(
                        "until",
                        "wait-said-twice",
                        "“" + typing.text("days") + "” from today is not that day.",
                        "Give the one or the other.");
                return null;
            }
            return day;
        } catch (DateTimeParseException noDay) {
            typing.object(
                    "until",
                    "day-not-understood",
                    "“" + typing.text("until") + "” is no day.",
                    "Write it as year-month-day: 2026-03-14.");
            return null;
        }
    }

    /** Logs that something waits on: for so many {@code days} from today, or from the day on which it was ready, if that is to come. */
    public Outcome postponed(long wait, Map<String, String> typed, String request) {
        Waiting waiting = waiting(wait);
        Typing typing = new Typing(typed, MakersOunce.of(store.settings()));
        Wait longer = typing.quantity("days", "days", QuantityText::wait, "“7 days”");
        if (longer == null) {
            if (typing.problems().isEmpty()) {
                typing.object("days", "wait-missing", "How long is not said.", "Write such as 7 days.");
            }
            return new Outcome.NotKept(typing.problems());
        }
        LocalDate from = waiting.until().isAfter(today()) ? waiting.until() : today();
        LocalDate until = from.plusDays((long) Math.ceil(longer.days()));
        Waiting.Made make = waiting.make();
        if (make != null) {
            MakeState state = new ShowMake(store).answer(make.id());
            new RecordStep(store).postponed(state, here(state), until, state.seen(), request);
            return new Outcome.Kept(last(make));
        }
        return write(
                waiting.batch(),
                Waits.POSTPONED,
                new Waits.PostponedBody(clock.instant(), wait, waiting.what(), until),
                request);
    }

    private static MakeStep here(MakeState state) {
        MakeStep here = state.here();
        if (here == null) {
            throw new MissingException("nothing of this make waits any more");
        }
        return here;
    }

    private HistoryEntry last(Waiting.Made make) {
        List<HistoryEntry> log = store.makes().entries(make.id());
        return log.get(log.size() - 1);
    }

    /** Logs that something was seen to. */
    public Outcome waited(long wait, String request) {
        Waiting waiting = waiting(wait);
        Waiting.Made make = waiting.make();
        if (make != null) {
            MakeState state = new ShowMake(store).answer(make.id());
            new RecordStep(store).done(state, here(state), state.seen(), request);
            return new Outcome.Kept(last(make));
        }
        return write(
                waiting.batch(), Waits.WAITED, new Waits.WaitedBody(clock.instant(), wait, waiting.what()), request);
    }

    private Waiting waiting(long id) {
        return Waits.of(Book.open(store), store, clock.getZone()).stream()
                .filter(waiting -> waiting.id() == id)
                .findFirst()
                .orElseThrow(() -> new MissingException("nothing waits under the number " + id));
    }

    private Outcome write(String batch, String kind, Object body, String request) {
        Batches.Writing writing = new Batches.Writing(batch, kind, LogBodies.write(body), null, List.of());
        return new Outcome.Kept(store.batches().append(writing, (batches, log) -> {}, request));
    }
}
