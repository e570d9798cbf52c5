package org.stillroom.studio.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.studio.usecase.batch.Rested.typed;
import static org.stillroom.studio.usecase.make.Kitchen.request;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.batch.Offset;
import org.stillroom.core.plan.Asked;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.Kitchen;

/** Notes and scores, and what several batches of a recipe tell together. */
class NotesTest {
    @TempDir
    private Path folder;

    private Rested rested;
    private Notes notes;

    @BeforeEach
    void open() {
        rested = new Rested(folder);
        notes = new Notes(rested.kitchen.store, Clock.system(ZoneId.systemDefault()));
    }

    @AfterEach
    void close() {
        rested.close();
    }

    private Book book() {
        return Book.open(rested.kitchen.store);
    }

    @Test
    void scoresOverTimeAreKeptWithTheirWordsAndTakenBackLikeAllElse() {
        Batch batch = rested.batch();
        RecordBatch.Outcome first =
                notes.noted(batch, Map.of("score", "6,5", "note", "Bay first, sharp."), null, request());
        notes.noted(batch, Map.of("score", "8"), null, request());
        assertThat(Notes.of(book(), batch.id())).extracting(Notes.Note::score).containsExactly(6.5, 8.0);

        rested.after(1).undone(batch, ((RecordBatch.Outcome.Kept) first).entry().id(), request());
        assertThat(Notes.of(book(), batch.id())).extracting(Notes.Note::score).containsExactly(8.0);
    }

    @Test
    void noScoreLiesAboveTenAndAnEmptyNoteIsNone() {
        Batch batch = rested.batch();
        assertThat(notes.noted(batch, Map.of("score", "11"), null, request()))
                .isInstanceOf(RecordBatch.Outcome.NotKept.class);
        assertThat(notes.noted(batch, Map.of("note", " "), null, request()))
                .isInstanceOf(RecordBatch.Outcome.NotKept.class);
    }

    @Test
    void whatIsMeasuredAgainAndAgainIsOfferedWithItsDoubt() {
        String recipe = rested.kitchen.saved("Bay leaf and juniper", Kitchen.BAY);
        for (String strength : new String[] {"27.4 %", "27.5 %", "27.6 %"}) {
            String make = rested.kitchen.begun(recipe);
            rested.kitchen.finishAsAsked(make);
            Batch batch = new FinishMake(rested.kitchen.store).answer(rested.kitchen.state(make), request());
            rested.after(1).measured(batch, typed("1", "strength", strength), request());
        }

        CompareBatches.Found found = new CompareBatches(rested.kitchen.store).answer(book(), recipe);
        assertThat(found.rows()).hasSize(3);
        assertThat(found.rows().get(0).planned()).isNotNull();
        Offset offset = Objects.requireNonNull(found.offsets().get(Asked.STRENGTH));
        assertThat(offset.mean()).isCloseTo(-0.5, within(0.1));
        assertThat(offset.isClear()).isTrue();
        assertThat(found.offsets()).doesNotContainKey(Asked.SUGAR);
    }

    /** Racked with 100 mL lost: strength is held against what was poured, the volume against what was left by the log. */
    @Test
    void whatIsMeasuredAfterRackingCountsAndWhatIsMeasuredAfterATopUpDoesNot() {
        Batch racked = rested.batch();
        rested.after(1).moved(racked, typed("1", "to", "demijohn", "sediment", "100 ml"), request());
        rested.after(2).measured(racked, typed("demijohn", "strength", "27.5 %", "volume", "0.89 L"), request());
        notes.noted(racked, Map.of("score", "6.5"), null, request());
        notes.noted(racked, Map.of("score", "8"), null, request());
        rested.after(3).added(racked, typed("demijohn", "what", "water", "amount", "100 ml"), request());
        rested.after(4).measured(racked, typed("demijohn", "sugar", "162 g/L"), request());

        CompareBatches.Row row = new CompareBatches(rested.kitchen.store)
                .answer(book(), racked.recipe())
                .rows()
                .get(0);
        assertThat(row.measured()).containsOnlyKeys(Asked.STRENGTH, Asked.VOLUME);
        assertThat(row.measured().get(Asked.STRENGTH)).isCloseTo(27.5, within(1e-9));
        assertThat(row.reckoned().get(Asked.VOLUME)).isCloseTo(900.0, within(1.0));
        assertThat(row.reckoned().get(Asked.STRENGTH)).isCloseTo(28.0, within(0.1));
        assertThat(row.scores()).extracting(Notes.Note::score).containsExactly(6.5, 8.0);
    }

    @Test
    void nothingIsNotedOfADayBeforeTheBatchWasMade() {
        RecordBatch.Outcome outcome =
                notes.noted(rested.batch(), Map.of("note", "dry", "day", "2001-01-01"), null, request());
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        RecordBatch.Outcome.NotKept.class,
                        not -> assertThat(not.problems().get(0).where()).isEqualTo("day"));
    }
}
