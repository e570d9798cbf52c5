package org.stillroom.studio.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.stillroom.studio.usecase.make.Kitchen.request;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.usecase.make.Kitchen;

/** What waits follows from the recipe and the log. */
class WaitsTest {
    private static final ZoneId ZONE = ZoneId.systemDefault();

    @TempDir
    private Path folder;

    private Rested rested;
    private Batch batch;
    private LocalDate today;

    @BeforeEach
    void open() {
        rested = new Rested(folder);
        batch = rested.batch(Kitchen.BAY + "rest: 21 days\n");
        today = batch.made().atZone(ZONE).toLocalDate();
    }

    @AfterEach
    void close() {
        rested.close();
    }

    private RecordRest after(int days) {
        Clock clock = Clock.offset(Clock.fixed(batch.made(), ZONE), Duration.ofDays(days));
        return new RecordRest(rested.kitchen.store, clock);
    }

    private List<Waiting> waits() {
        return Waits.of(Book.open(rested.kitchen.store), rested.kitchen.store, ZONE);
    }

    private static HistoryEntry kept(RecordBatch.Outcome outcome) {
        assertThat(outcome).isInstanceOf(RecordBatch.Outcome.Kept.class);
        return ((RecordBatch.Outcome.Kept) outcome).entry();
    }

    @Test
    void theRestOfTheRecipeWaitsUntilItIsOver() {
        assertThat(waits()).singleElement().satisfies(waiting -> {
            assertThat(waiting.what()).isEqualTo(Waiting.What.MARRYING);
            assertThat(waiting.until()).isEqualTo(today.plusDays(21));
        });
    }

    @Test
    void whatTheMakerWritesIsPostponedAndSeenToAndComesBackWhenThatIsTakenBack() {
        HistoryEntry entry = kept(after(0).waits(batch, Map.of("what", "CLEARING", "days", "10"), request()));
        kept(after(3).postponed(entry.id(), Map.of("days", "1 week"), request()));
        assertThat(wait(entry).until()).isEqualTo(today.plusDays(17));

        kept(after(20).postponed(entry.id(), Map.of("days", "2 days"), request()));
        assertThat(wait(entry).until()).as("from that day, as it was over").isEqualTo(today.plusDays(22));

        HistoryEntry done = kept(after(22).waited(entry.id(), request()));
        assertThat(wait(entry).done()).isTrue();
        kept(rested.after(23).undone(batch, done.id(), request()));
        assertThat(wait(entry).done()).isFalse();
        kept(rested.after(23).undone(batch, entry.id(), request()));
        assertThat(waits()).hasSize(1);
    }

    private Waiting wait(HistoryEntry entry) {
        return waits().stream()
                .filter(waiting -> waiting.id() == entry.id())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsNotUnderstoodIsToldAtItsField() {
        assertThat(after(0).waits(batch, Map.of("what", "AGEING"), request()))
                .isInstanceOfSatisfying(
                        RecordBatch.Outcome.NotKept.class,
                        not -> assertThat(not.problems().get(0).where()).isEqualTo("days"));
        assertThat(after(5).waits(batch, Map.of("until", today.toString()), request()))
                .isInstanceOfSatisfying(
                        RecordBatch.Outcome.NotKept.class,
                        not -> assertThat(not.problems().get(0).rule()).isEqualTo("day-has-gone"));
    }
}
