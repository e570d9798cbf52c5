package org.stillroom.studio.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.stillroom.studio.usecase.make.Kitchen.request;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.usecase.make.Kitchen;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.MakeStep;
import org.stillroom.studio.usecase.make.RecordStep;
import org.stillroom.studio.usecase.make.Resting;

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

    private static final String TINCTURE = """
            stillroom: 1
            title: Bay leaf tincture
            ingredients:
              - {name: dried bay leaf, kind: dried plant}
            lines:
              - {use: dried bay leaf, amount: 20 g}
              - {use: spirit 60 %, amount: 200 ml}
            rest: 10 days
            loss: 2 ml/g
            """;

    private MakeState pouredTo(String make, MakeStep.Kind kind) {
        MakeState state = rested.kitchen.state(make);
        for (MakeStep here = state.here(); here != null && here.kind() != kind; here = state.here()) {
            new RecordStep(rested.kitchen.store).done(state, here, state.seen(), request());
            state = rested.kitchen.state(make);
        }
        return state;
    }

    @Test
    void aMakeThatStandsAtARestWaitsIsPostponedAndGoesOn() {
        String make = rested.kitchen.begun(rested.kitchen.saved("Bay leaf tincture", TINCTURE));
        MakeState state = pouredTo(make, MakeStep.Kind.REST);
        assertThat(Objects.requireNonNull(state.here()).waitSeconds()).isEqualTo(10 * 86_400L);
        Waiting waiting = ofMake(make);
        assertThat(waiting.what()).isEqualTo(Waiting.What.MACERATING);
        assertThat(waiting.until()).isEqualTo(waiting.from().plusDays(10));
        assertThat(Objects.requireNonNull(waiting.make()).title()).isEqualTo("Bay leaf tincture");

        RecordRest record = new RecordRest(rested.kitchen.store, Clock.systemUTC());
        kept(record.postponed(waiting.id(), Map.of("days", "4 days"), request()));
        assertThat(ofMake(make).until()).isEqualTo(waiting.from().plusDays(14));
        assertThat(ofMake(make).id()).as("the same in a calendar").isEqualTo(waiting.id());

        kept(record.waited(waiting.id(), request()));
        assertThat(waits()).noneMatch(each -> each.make() != null);
        assertThat(rested.kitchen.state(make).here())
                .isNotNull()
                .satisfies(here -> assertThat(here.kind()).isNotEqualTo(MakeStep.Kind.REST));
    }

    private Waiting ofMake(String make) {
        return waits().stream()
                .filter(each -> each.make() != null && each.make().id().equals(make))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void plantsInSpiritMacerateStillWhenTheirMakeWasFinishedEarly() {
        Batch tincture = rested.batch(TINCTURE);
        assertThat(waits()).anySatisfy(waiting -> {
            assertThat(waiting.batch()).isEqualTo(tincture.id());
            assertThat(waiting.what()).isEqualTo(Waiting.What.MACERATING);
        });
    }

    @Test
    void whatIsWhollyBottledOrGoneDoesNotWaitByItsRecipeAnyMore() {
        assertThat(waits()).hasSize(1);
        HistoryEntry lost = kept(rested.after(1).bottled(batch, Rested.typed("1", "fills", "2 x 500 ml"), request()));
        assertThat(waits()).isEmpty();
        kept(rested.after(2).undone(batch, lost.id(), request()));
        assertThat(waits()).hasSize(1);
    }

    private static HistoryEntry said(long id, int day, String kind, String step, double grams) {
        String body =
                "{\"step\": \"" + step + "\", \"grams\": " + grams + ", \"asked\": 0, \"seen\": 0, \"number\": 0}";
        return new HistoryEntry(
                id, Instant.parse("2026-03-01T10:00:00Z").plus(Duration.ofDays(day)), "make:a", kind, body, null);
    }

    /** Whoever lets it stand in the make has not to let it stand again. */
    @Test
    void aRestCountsFromWhenTheLastOfItWentIn() {
        List<HistoryEntry> stood = List.of(
                said(1, 0, "step.done", "1/line-1", 100),
                said(2, 9, "step.done", "1/rest", 0),
                said(3, 10, "step.done", "2/line-1", 500),
                said(4, 31, "step.done", "2/rest", 0));
        Resting.Before before = Resting.before(stood);
        assertThat(before.from()).isEqualTo(Instant.parse("2026-03-11T10:00:00Z"));
        assertThat(before.seenTo()).isEqualTo(Instant.parse("2026-04-01T10:00:00Z"));
        assertThat(Resting.before(stood.subList(0, 3)).seenTo())
                .as("that was of the stage")
                .isNull();
        assertThat(Resting.before(List.of(stood.get(2), said(5, 11, "step.skipped", "2/rest", 0)))
                        .skipped())
                .isTrue();
    }

    @Test
    void whatIsWrittenOfWaitsSaysWhatAndUntilWhen() {
        HistoryEntry entry = kept(after(0).waits(batch, Map.of("what", "clearing", "days", "10 days"), request()));
        kept(after(3).postponed(entry.id(), Map.of("days", "7 days"), request()));
        kept(after(17).waited(entry.id(), request()));
        kept(after(17).postponed(-batch.number(), Map.of("days", "7 days"), request()));
        kept(new Notes(rested.kitchen.store, Clock.systemUTC()).noted(batch, Map.of("score", "7.5"), null, request()));
        assertThat(new ShowBatch(rested.kitchen.store, Clock.systemUTC())
                        .one("1")
                        .log())
                .extracting(ShowBatch.Line::told)
                .containsExactly(
                        "waits: clearing, until " + today.plusDays(10),
                        "postponed: clearing, until " + today.plusDays(17),
                        "seen to: clearing",
                        "postponed: marrying, until " + today.plusDays(28),
                        "noted: 7.5 of 10");
    }

    @Test
    void whatIsNotUnderstoodIsToldAtItsField() {
        assertThat(after(0).waits(batch, Map.of("what", "dreaming", "days", "3 days"), request()))
                .isInstanceOfSatisfying(
                        RecordBatch.Outcome.NotKept.class,
                        not -> assertThat(not.problems().get(0).where()).isEqualTo("what"));
        Map<String, String> twice =
                Map.of("days", "14 days", "until", today.plusDays(3).toString());
        assertThat(after(0).waits(batch, twice, request()))
                .isInstanceOfSatisfying(
                        RecordBatch.Outcome.NotKept.class,
                        not -> assertThat(not.problems().get(0).rule()).isEqualTo("wait-said-twice"));
        Map<String, String> alike =
                Map.of("days", "14 days", "until", today.plusDays(14).toString());
        kept(after(0).waits(batch, alike, request()));
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
