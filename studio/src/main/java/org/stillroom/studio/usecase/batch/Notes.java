package org.stillroom.studio.usecase.batch;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Batches;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.RecordBatch.Outcome;
import org.stillroom.studio.usecase.make.LogBodies;
import org.stillroom.studio.usecase.shelf.MakersOunce;

/** What a maker notes of a batch: words, a score from 0 to 10, a photo. */
public final class Notes {
    static final String NOTED = "batch.noted";

    /** The best score. */
    private static final double BEST = 10.0;

    private final Store store;
    private final Clock clock;

    public Notes(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    private record NotedBody(
            Instant at, @Nullable Double score, @Nullable String photo, Map<String, String> typed) {}

    /**
     * A note.
     *
     * @param score 0 to 10, or null
     * @param photo id of it, or null
     */
    public record Note(
            long entry,
            Instant at,
            @Nullable Double score,
            String words,
            @Nullable String photo) {}

    /** Logs a note: {@code note}, {@code score}, at least one of them or a photo. */
    public Outcome noted(Batch batch, Map<String, String> typed, @Nullable String photo, String request) {
        Typing typing = new Typing(typed, MakersOunce.of(store.settings()));
        Double score = typing.has("score")
                ? typing.parsed("score", typing.text("score"), QuantityText::number, "“7.5”")
                : null;
        if (score != null && !(score >= 0.0 && score <= BEST)) {
            typing.object("score", "score-outside", "A score lies from 0 to 10.", "Write such as 7.5.");
        }
        if (score == null
                && !typing.has("note")
                && photo == null
                && typing.problems().isEmpty()) {
            typing.object("note", "nothing-noted", "Nothing is noted.", "Write some words, a score, or add a photo.");
        }
        Instant at = typing.moment(clock.instant(), batch.made(), clock.getZone());
        if (at.isBefore(batch.made())) {
            typing.object(
                    "day",
                    "before-the-batch",
                    "This would have happened before the batch was made.",
                    "Give a moment after the make was finished.");
        }
        if (!typing.problems().isEmpty()) {
            return new Outcome.NotKept(typing.problems());
        }
        NotedBody body = new NotedBody(at, score, photo, typing.kept());
        Batches.Writing writing = new Batches.Writing(batch.id(), NOTED, LogBodies.write(body), null, List.of());
        return new Outcome.Kept(store.batches().append(writing, (batches, log) -> {}, request));
    }

    /** Returns the score of a note, or null where it has none or the entry is no note. */
    public static @Nullable Double score(HistoryEntry entry) {
        return entry.kind().equals(NOTED)
                ? LogBodies.read(entry.body(), NotedBody.class).score()
                : null;
    }

    /** Returns the notes of a batch that count, earliest first. */
    public static List<Note> of(Book book, String batch) {
        List<Note> notes = new ArrayList<>();
        for (HistoryEntry entry : book.entries(batch)) {
            if (entry.kind().equals(NOTED) && !book.isUndone(entry)) {
                NotedBody said = LogBodies.read(entry.body(), NotedBody.class);
                notes.add(new Note(entry.id(), said.at(), said.score(), Book.note(entry), said.photo()));
            }
        }
        notes.sort(Comparator.comparing(Note::at).thenComparing(Note::entry));
        return notes;
    }
}
