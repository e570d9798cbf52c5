package org.stillroom.studio.usecase.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Cellar;
import org.stillroom.core.batch.Entry;
import org.stillroom.core.batch.Event;
import org.stillroom.core.batch.Flow;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.batch.Place;
import org.stillroom.core.batch.Slips;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.liquid.Contents;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.ShowMake;
import org.stillroom.studio.usecase.make.SlipSheet;

/**
 * All that is written of batches, read: worked out from the log, never kept apart from it.
 *
 * @param batches all of them, latest first
 * @param log of all of them, oldest first
 * @param cellar what follows for their vessels
 */
public record Book(List<Batch> batches, List<HistoryEntry> log, Cellar cellar) {
    /** Name of the vessel in which a make leaves its liquid, until it is moved. */
    public static final String FIRST_VESSEL = "1";

    public Book {
        batches = List.copyOf(batches);
        log = List.copyOf(log);
    }

    /** Returns the book as it is now. */
    public static Book open(Store store) {
        List<Batch> batches = store.makes().batches();
        return of(batches, store.batches().log(), begun(batches, store));
    }

    /** What a make left, and how far it may be off. */
    record Left(Contents liquid, Slips slips) {}

    static Book of(List<Batch> batches, List<HistoryEntry> log, Map<String, Left> begun) {
        List<Entry> entries = new ArrayList<>();
        for (Batch batch : batches) {
            BatchSheet sheet = FinishMake.sheet(batch);
            Map<String, Double> cost = sheet.cost();
            Outlay outlay = cost == null ? Outlay.UNKNOWN : new Outlay(cost, sheet.costKnown());
            Left left = begun.getOrDefault(batch.id(), new Left(Contents.NONE, Slips.UNKNOWN));
            Contents liquid =
                    sheet.liquid() == null ? left.liquid() : sheet.liquid().contents();
            Slips slips = sheet.slips() == null
                    ? left.slips()
                    : Slips.of("batch " + batch.number(), SlipSheet.slips(sheet.slips()));
            Event begins = new Event.Begun(new Place(batch.id(), FIRST_VESSEL), liquid, outlay, slips);
            entries.add(new Entry(-batch.number(), batch.made(), begins)); // before whatever was written since
        }
        Set<Long> ofVessels = new HashSet<>();
        for (HistoryEntry each : log) {
            Event event = EventBodies.event(each);
            boolean undoesOther = event instanceof Event.Undone undo && !ofVessels.contains(undo.entry());
            if (event != null && !undoesOther) {
                ofVessels.add(each.id());
                entries.add(new Entry(each.id(), EventBodies.at(each), event));
            }
        }
        return new Book(batches, log, Cellar.of(entries));
    }

    /** Returns what makes left, for batches whose sheet does not keep it. */
    static Map<String, Left> begun(List<Batch> batches, Store store) {
        Map<String, Left> begun = new HashMap<>();
        ShowMake show = new ShowMake(store);
        for (Batch batch : batches) {
            BatchSheet sheet = FinishMake.sheet(batch);
            if (sheet.liquid() == null || sheet.slips() == null) {
                List<Poured.Slip> poured = FinishMake.slips(show.answer(batch.make()));
                Slips slips = poured == null ? Slips.UNKNOWN : Slips.of("batch " + batch.number(), poured);
                begun.put(batch.id(), new Left(FinishMake.liquid(batch, show), slips));
            }
        }
        return begun;
    }

    /**
     * Returns a batch.
     *
     * @throws MissingException when there is none of that id
     */
    public Batch batch(String id) {
        return batches.stream()
                .filter(batch -> batch.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new MissingException("there is no batch " + id));
    }

    /** Returns the batch of an id or of a number. */
    static Optional<Batch> named(List<Batch> batches, String name) {
        String said = name.strip();
        return batches.stream()
                .filter(batch -> batch.id().equals(said) || ("" + batch.number()).equals(said))
                .findFirst();
    }

    /**
     * Returns a batch of a studio.
     *
     * @throws MissingException when there is none of that id
     */
    public static Batch batch(Store store, String id) {
        return store.makes().batch(id).orElseThrow(() -> new MissingException("there is no batch " + id));
    }

    /** Returns what was written about a batch, or moved into it from another, oldest first. */
    public List<HistoryEntry> entries(String batch) {
        return log.stream().filter(entry -> isAbout(entry, batch)).toList();
    }

    private static boolean isAbout(HistoryEntry entry, String batch) {
        if (entry.subject().equals("batch:" + batch)) {
            return true;
        }
        Event event = EventBodies.event(entry);
        return event != null
                && event.places().stream().anyMatch(place -> place.batch().equals(batch));
    }

    /** Returns the entry of a number. */
    public HistoryEntry entry(long id) {
        return log.stream()
                .filter(entry -> entry.id() == id)
                .findFirst()
                .orElseThrow(() -> new MissingException("there is no entry " + id));
    }

    /** Returns what an entry says happened to vessels, or null when it is about none. */
    public static @Nullable Event event(HistoryEntry entry) {
        return EventBodies.event(entry);
    }

    /** Returns the readings that were logged with what was measured, or empty where only figures were. */
    public static Optional<ReadingsText.Read> readings(HistoryEntry entry) {
        return Optional.ofNullable(EventBodies.typed(entry).get(RecordBatch.READINGS))
                .flatMap(ReadingsText::read);
    }

    /** Returns what was measured of a batch while it was still as it was made, in whatever vessel: nothing came to it, nothing evaporated. */
    public List<Flow> asMade(String batch) {
        List<Flow> measured = new ArrayList<>();
        for (Flow flow : cellar.flows(batch)) {
            switch (flow.kind()) {
                case MEASURED -> measured.add(flow);
                case ADDED, RECEIVED, EVAPORATED -> {
                    return measured;
                }
                case BEGUN, GIVEN, LOST, BOTTLED -> {
                    // the rest stays what it is
                }
            }
        }
        return measured;
    }

    /** Returns the entries of that, oldest first: only they can be held against what was poured. */
    public List<HistoryEntry> firstMeasured(String batch) {
        return asMade(batch).stream().map(flow -> entry(flow.entry())).toList();
    }

    /** Returns when it happened. */
    public static Instant at(HistoryEntry entry) {
        return EventBodies.at(entry);
    }

    /** Returns the remark that was typed with an entry; mostly empty. */
    public static String note(HistoryEntry entry) {
        return EventBodies.typed(entry).getOrDefault("note", "");
    }

    /** Returns whether an entry says what happened to vessels, or takes back one that does. */
    boolean isOfVessels(long entry) {
        return cellar.log().stream().anyMatch(each -> each.id() == entry);
    }

    /** Returns whether an entry was taken back by one that counts. */
    public boolean isUndone(HistoryEntry entry) {
        return log.stream()
                .anyMatch(later -> later.undoes() != null && later.undoes() == entry.id() && !isUndone(later));
    }
}
