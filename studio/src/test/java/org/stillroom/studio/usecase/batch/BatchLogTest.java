package org.stillroom.studio.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.studio.usecase.batch.Rested.typed;
import static org.stillroom.studio.usecase.make.Kitchen.request;

import java.nio.file.Path;
import java.time.Clock;
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
                .moved(batch, typed("1", "to", "demijohn", "sediment", "60 ml", "filter", "40 ml"), request()));
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
                .isEqualTo("batch-not-known");
        assertThat(refused(record.lost(batch, typed("1", "amount", "5"), request())))
                .satisfies(finding -> assertThat(finding.rule()).isEqualTo("amount-without-unit"))
                .satisfies(finding -> assertThat(finding.remedy()).contains("5 ml or 5 g"));
        assertThat(refused(record.lost(batch, typed("1", "amount", "5 ml", "cause", "foo"), request()))
                        .where())
                .isEqualTo("cause");
        assertThat(rested.held(batch, "1").essentials().millilitres()).isCloseTo(1000.0, within(1.0));
        kept(record.lost(batch, typed("1", "amount", "5 ml", "cause", "sample"), request()));
    }

    @Test
    void anotherBatchGoesByItsNumberToo() {
        Batch other = rested.batch();
        kept(rested.after(30)
                .moved(batch, typed("1", "to", "1", "batch", "" + other.number(), "amount", "250 ml"), request()));
        assertThat(rested.held(other, "1").essentials().millilitres()).isCloseTo(1250.0, within(2.0));
    }

    private Outcome added(String what, String amount) {
        return new LogBatch(rested.kitchen.store, Clock.systemUTC())
                .written(batch, LogBatch.Act.ADDED, Map.of("what", what, "amount", amount), request());
    }

    @Test
    void whatStandsOnTheShelfIsTakenFromThereAndSeveralOfANameAreAskedFor() {
        kept(added("white sugar", "10 g"));
        Lot sugar = rested.kitchen.lot("white sugar", "sugar", Map.of(), 100, "g");
        kept(added("white sugar", "20 g"));
        assertThat(left(sugar)).isCloseTo(80.0, within(1e-9));

        Lot more = rested.kitchen.lot("White sugar", "sugar", Map.of(), 500, "g");
        Finding which = refused(added("white sugar", "20 g"));
        assertThat(which.rule()).isEqualTo("which-lot");
        assertThat(which.message()).contains(sugar.id(), more.id(), "80 g left", "500 g left");
        kept(added(more.id(), "20 g"));
        assertThat(left(more)).isCloseTo(480.0, within(1e-9));
    }

    @Test
    void noMoreIsTakenFromTheShelfThanIsThere() {
        Lot spirit = rested.kitchen.lot("neutral spirit", "spirit", Map.of("strength", "96 %"), 128, "ml");
        Finding much = refused(added("neutral spirit", "500 ml"));
        assertThat(much.rule()).isEqualTo("more-than-on-shelf");
        assertThat(much.message()).contains("128 ml", "500 ml");
        assertThat(left(spirit)).isEqualTo(128.0);
        kept(added("neutral spirit", "129 ml"));
        assertThat(left(spirit)).as("a measure is right to 1 %").isZero();
    }

    @Test
    void anEntryIsToldInASentenceOfItsOwn() {
        Batch other = rested.batch();
        Lot spirit = rested.kitchen.lot("neutral spirit", "spirit", Map.of("strength", "96 %"), 300, "ml");
        racked();
        kept(rested.after(15).added(batch, typed("demijohn", "what", spirit.id(), "amount", "50 ml"), request()));
        kept(rested.after(16)
                .moved(batch, typed("demijohn", "to", "1", "batch", other.id(), "amount", "100 ml"), request()));
        kept(rested.after(17).measured(batch, typed("demijohn", "strength", "27.2..27.8 %"), request()));
        Lot bottles = rested.kitchen.lot("flat ones", "empty bottles", Map.of("holds", "350 ml"), 4, "pieces");
        HistoryEntry bottled = kept(rested.after(18)
                .bottled(batch, typed("demijohn", "fills", "1 x 350 ml", "lots", bottles.id() + ":1"), request()));
        kept(rested.after(18).undone(batch, bottled.id(), request()));
        List<String> told = new ShowBatch(rested.kitchen.store, Clock.systemUTC())
                .one("1").log().stream().map(ShowBatch.Line::told).toList();
        assertThat(told)
                .containsExactly(
                        "moved from 1 to demijohn: all of it; 40.0 mL held by the filter; 60.0 mL left above the sediment",
                        "added to demijohn: 40.4 g of neutral spirit",
                        "blended: from demijohn to 1 of batch 2: 100.0 mL",
                        "measured in demijohn: strength 27.50 ± 0.30 % vol",
                        "bottled from demijohn: 1 x 350.0 mL",
                        "taken back: bottled from demijohn: 1 x 350.0 mL");
        assertThat(String.join(" ", told)).doesNotContain(spirit.id(), other.id(), bottles.id());
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
