package org.stillroom.studio.usecase.batch;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Births;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.batch.Held;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.FinishMake;

/** Tells batches as they are now: what is in their vessels, what was written of them, what waits. */
public final class ShowBatch {
    private final Store store;
    private final Clock clock;

    public ShowBatch(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /**
     * A vessel that something is in.
     *
     * @param held what that is
     * @param meanDays its mean age, or null where nothing of it ages
     * @param youngestDays the age of its youngest alcohol, or null
     * @param keeps how it keeps; null in a list of all batches, which does not tell it
     */
    public record Vessel(
            String name,
            Held held,
            @Nullable Double meanDays,
            @Nullable Double youngestDays,
            TellKeeping.@Nullable Found keeps) {}

    /** Bottles that were filled alike, with how they keep. */
    public record Bottles(Bottling bottling, TellKeeping.Found keeps) {}

    /**
     * An entry of the log.
     *
     * @param kind what happened, such as "batch.moved"
     * @param told that in a sentence
     * @param typed what was typed with it
     * @param undone whether it was taken back
     * @param undoes number of the entry that it takes back, or null
     */
    public record Line(
            long id,
            Instant at,
            String kind,
            String told,
            Map<String, String> typed,
            boolean undone,
            @Nullable Long undoes) {
        public Line {
            typed = Map.copyOf(typed);
        }
    }

    /**
     * A batch.
     *
     * @param sheet what went in, by lot, and what came of it
     * @param vessels what is in it now
     * @param log what was written of it, oldest first
     * @param waits what waits, what is ready first at the front
     * @param bottles that were filled; none in a list of all batches
     */
    public record Told(
            String id,
            int number,
            String title,
            String recipe,
            String make,
            Instant made,
            BatchSheet sheet,
            List<Vessel> vessels,
            List<Line> log,
            List<Waiting> waits,
            List<Bottles> bottles) {
        public Told {
            vessels = List.copyOf(vessels);
            log = List.copyOf(log);
            waits = List.copyOf(waits);
            bottles = List.copyOf(bottles);
        }
    }

    /**
     * Something that waits, with what does.
     *
     * @param number of the batch; null of what is still being made
     */
    public record Rests(Waiting waiting, @Nullable Integer number, String title, boolean due) {}

    /** Returns all batches, latest first. */
    public List<Told> all() {
        Book book = Book.open(store);
        List<Waiting> waits = Waits.of(book, store, clock.getZone());
        return book.batches().stream()
                .map(batch -> told(book, batch, waits, null))
                .toList();
    }

    /**
     * Returns a batch.
     *
     * @param name its id or its number
     * @throws MissingException when there is none
     */
    public Told one(String name) {
        Book book = Book.open(store);
        Batch batch = named(book, name);
        return told(book, batch, Waits.of(book, store, clock.getZone()), new TellKeeping(store, book));
    }

    /**
     * Returns a batch as it is kept.
     *
     * @param name its id or its number
     * @throws MissingException when there is none
     */
    public Batch kept(String name) {
        return named(Book.open(store), name);
    }

    private static Batch named(Book book, String name) {
        return Book.named(book.batches(), name).orElseThrow(() -> new MissingException("there is no batch " + name));
    }

    /** Returns what waits, by day; what was seen to is left out. */
    public List<Rests> rests() {
        Book book = Book.open(store);
        LocalDate today = LocalDate.now(clock);
        return Waits.of(book, store, clock.getZone()).stream()
                .filter(waiting -> !waiting.done())
                .map(waiting -> rests(book, waiting, today))
                .toList();
    }

    private static Rests rests(Book book, Waiting waiting, LocalDate today) {
        Waiting.Made make = waiting.make();
        boolean due = !waiting.until().isAfter(today);
        if (make != null) {
            return new Rests(waiting, null, make.title(), due);
        }
        Batch batch = book.batch(waiting.batch());
        return new Rests(waiting, batch.number(), FinishMake.sheet(batch).title(), due);
    }

    private Told told(Book book, Batch batch, List<Waiting> waits, @Nullable TellKeeping keeping) {
        List<Vessel> vessels = new ArrayList<>();
        book.cellar().vessels(batch.id()).forEach((place, held) -> {
            if (!held.isEmpty()) {
                vessels.add(vessel(place.vessel(), held, keeping == null ? null : keeping.of(batch, held)));
            }
        });
        return new Told(
                batch.id(),
                batch.number(),
                FinishMake.sheet(batch).title(),
                batch.recipe(),
                batch.make(),
                batch.made(),
                FinishMake.sheet(batch),
                vessels,
                book.entries(batch.id()).stream()
                        .map(entry -> line(book, batch, entry))
                        .toList(),
                waits.stream()
                        .filter(waiting -> waiting.batch().equals(batch.id()) && !waiting.done())
                        .toList(),
                keeping == null
                        ? List.of()
                        : book.cellar().bottlings(batch.id()).stream()
                                .map(bottling -> new Bottles(bottling, keeping.of(batch, bottling)))
                                .toList());
    }

    private Vessel vessel(String name, Held held, TellKeeping.@Nullable Found keeps) {
        Births births = held.births();
        return new Vessel(
                name,
                held,
                births == null ? null : Double.valueOf(births.meanDays(clock.instant())),
                births == null ? null : Double.valueOf(births.youngestDays(clock.instant())),
                keeps);
    }

    private static Line line(Book book, Batch batch, HistoryEntry entry) {
        return new Line(
                entry.id(),
                Book.at(entry),
                entry.kind(),
                EntryWords.of(book, batch, entry),
                EventBodies.typed(entry),
                book.isUndone(entry),
                entry.undoes());
    }
}
