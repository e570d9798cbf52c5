package org.stillroom.studio.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.studio.usecase.batch.Rested.typed;
import static org.stillroom.studio.usecase.make.Kitchen.request;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.batch.RecordBatch.Outcome;

/** What happens to a finished batch, as it is typed, kept and read again. */
class BatchLogTest {
    @TempDir
    private Path folder;

    private Rested rested;
    private Batch batch;

    @BeforeEach
    void open() {
        rested = new Rested(folder);
        batch = rested.batch();
    }

    @AfterEach
    void close() {
        rested.close();
    }

    private static HistoryEntry kept(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Kept.class);
        return ((Outcome.Kept) outcome).entry();
    }

    private static Finding refused(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.NotKept.class);
        return ((Outcome.NotKept) outcome).problems().get(0);
    }

    private HistoryEntry racked() {
        return kept(rested.after(14)
                .moved(batch, typed("1", "to", "demijohn", "sediment", "60", "filter", "40 ml"), request()));
    }

    @Test
    void aFinishedMakeStandsInItsVesselAsItWasPoured() {
        assertThat(rested.held(batch, "1").essentials().millilitres()).isCloseTo(1000.0, within(1.0));
        assertThat(rested.held(batch, "1").essentials().strength()).isCloseTo(28.0, within(0.1));
    }

    @Test
    void whatWasMovedIsThereAfterARestart() {
        racked();
        rested.kitchen.restart();

        assertThat(rested.held(batch, "1").isEmpty()).isTrue();
        assertThat(rested.held(batch, "demijohn").essentials().millilitres()).isCloseTo(900.0, within(1.0));
    }

    @Test
    void anEntryTakenBackAndThatTakenBackToo() {
        HistoryEntry moved = racked();

        HistoryEntry undo = kept(rested.after(15).undone(batch, moved.id(), request()));
        assertThat(rested.held(batch, "1").essentials().millilitres()).isCloseTo(1000.0, within(1.0));

        kept(rested.after(15).undone(batch, undo.id(), request()));
        assertThat(rested.held(batch, "1").isEmpty()).isTrue();
    }

    @Test
    void twoWhoTasteAtOnceBothCountAndMoreThanThereIsIsTakenByNobody() throws Exception {
        List<Outcome> samples =
                atOnce(() -> rested.after(1).lost(batch, typed("1", "amount", "100 ml", "cause", "SAMPLE"), request()));
        assertThat(samples).allMatch(Outcome.Kept.class::isInstance);
        assertThat(rested.held(batch, "1").essentials().millilitres()).isCloseTo(800.0, within(1.0));

        List<Outcome> moves =
                atOnce(() -> rested.after(2).moved(batch, typed("1", "to", "demijohn", "amount", "500 ml"), request()));
        assertThat(moves).filteredOn(Outcome.Kept.class::isInstance).hasSize(1);
        assertThat(rested.held(batch, "1").essentials().millilitres()).isCloseTo(300.0, within(1.0));
    }

    private static List<Outcome> atOnce(Callable<Outcome> one) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(2);
        try {
            Future<Outcome> first = hands.submit(one);
            Future<Outcome> second = hands.submit(one);
            return List.of(first.get(), second.get());
        } finally {
            hands.shutdown();
        }
    }

    @Test
    void theSameWishSentTwiceIsOneEntry() {
        String request = request();
        HistoryEntry first = kept(rested.after(1).lost(batch, typed("1", "amount", "100 ml"), request));
        HistoryEntry again = kept(rested.after(1).lost(batch, typed("1", "amount", "100 ml"), request));
        assertThat(again.id()).isEqualTo(first.id());
    }

    @Test
    void whatIsAddedComesFromTheShelfAndGoesBackWhenItIsTakenBack() {
        Lot lot = rested.kitchen.lot(
                "neutral spirit", "spirit", Map.of("strength", "96 %", "price", "22 EUR/L"), 500, "ml");

        HistoryEntry added =
                kept(rested.after(1).added(batch, typed("1", "what", lot.id(), "amount", "50 ml"), request()));
        assertThat(left(lot)).isCloseTo(450.0, within(1e-6));
        assertThat(rested.held(batch, "1").essentials().strength()).isGreaterThan(30.0);
        assertThat(rested.held(batch, "1").outlay().money().get("EUR")).isCloseTo(1.10, within(1e-6));
        assertThat(rested.held(batch, "1").outlay().complete())
                .as("no lot of the make had a price")
                .isFalse();

        HistoryEntry undo = kept(rested.after(1).undone(batch, added.id(), request()));
        assertThat(left(lot)).isCloseTo(500.0, within(1e-6));
        kept(rested.after(1).undone(batch, undo.id(), request()));
        assertThat(left(lot)).isCloseTo(450.0, within(1e-6));
    }

    private double left(Lot lot) {
        return rested.kitchen.store.lots().lot(lot.id()).orElseThrow().left();
    }

    @Test
    void batchesAreBlendedAndBothTellOfIt() {
        Batch other = rested.batch();
        kept(rested.after(400).moved(batch, typed("1", "to", "1", "batch", other.id(), "amount", "250 ml"), request()));

        assertThat(rested.held(other, "1").essentials().millilitres()).isCloseTo(1250.0, within(2.0));
        assertThat(Book.open(rested.kitchen.store).entries(other.id())).hasSize(1);
        assertThat(Book.open(rested.kitchen.store).entries(batch.id())).hasSize(1);
    }

    @Test
    void aRangeThatWasMeasuredIsItsMiddleWithADoubt() {
        kept(rested.after(3).measured(batch, typed("1", "strength", "27.2..27.8 %", "volume", "0.98 L"), request()));
        assertThat(rested.held(batch, "1").essentials().strength()).isCloseTo(27.5, within(1e-6));
        assertThat(rested.held(batch, "1").essentials().millilitres()).isCloseTo(980.0, within(1e-6));
    }

    @Test
    void whatIsNotUnderstoodOrCannotBeIsToldAtItsField() {
        RecordBatch record = rested.after(1);
        assertThat(refused(record.lost(batch, typed("1", "amount", "a lot"), request()))
                        .where())
                .isEqualTo("amount");
        assertThat(refused(record.lost(batch, typed("1", "amount", "2 L"), request()))
                        .rule())
                .isEqualTo("more-than-there-is");
        assertThat(refused(record.moved(batch, typed("1"), request())).where()).isEqualTo("to");
        assertThat(refused(record.measured(batch, typed("1"), request())).rule())
                .isEqualTo("nothing-measured");
        assertThat(refused(record.added(batch, typed("1", "what", "moonlight", "amount", "5 ml"), request()))
                        .where())
                .isEqualTo("what");
        assertThat(refused(record.evaporated(batch, typed("1", "amount", "20 ml"), request()))
                        .where())
                .isEqualTo("amount");
        assertThat(refused(record.lost(batch, typed("1", "amount", "5 ml", "day", "2001-01-01"), request()))
                        .rule())
                .isEqualTo("before-the-batch");
        assertThat(refused(record.lost(batch, typed("1", "amount", "5 ml", "day", "2999-01-01"), request()))
                        .rule())
                .isEqualTo("in-the-future");
        assertThat(refused(record.moved(batch, typed("1", "to", "1", "batch", "nobody"), request()))
                        .rule())
                .isEqualTo("before-the-batch");
    }

    @Test
    void anEntryThatALaterOneRestsOnIsNotTakenBack() {
        HistoryEntry moved = racked();
        kept(rested.after(20).lost(batch, typed("demijohn", "amount", "10 ml"), request()));
        assertThat(refused(rested.after(21).undone(batch, moved.id(), request()))
                        .rule())
                .isEqualTo("later-entry-rests-on-it");
    }
}
