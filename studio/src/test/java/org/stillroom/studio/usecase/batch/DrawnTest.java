package org.stillroom.studio.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.stillroom.studio.usecase.batch.Rested.typed;
import static org.stillroom.studio.usecase.make.Kitchen.request;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.label.Market;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.usecase.make.BeginMake;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.shelf.Bottles;

/** Bottles stay judged by the lots that were drawn, as they were then, whatever becomes of these lots. */
class DrawnTest {
    private static final String SAGE = """
            stillroom: 1
            title: Sage drop
            target: {volume: 1 L, strength: 30 %, sugar: 150 g/L}
            measures:
              - {name: fine scale, kind: scale, marks: 0.001 g, holds: 50 g}
              - {name: bench scale, kind: scale, marks: 0.1 g, holds: 5 kg}
            ingredients:
              - {name: sage oil, kind: essential oil, density: 0.915 g/ml}
            lines:
              - {use: sage oil, amount: 0.04 g}
              - {use: spirit 96 %, amount: free}
              - {use: white sugar, amount: free}
              - {use: water, amount: free}
            """;

    private static final String MILD = "alpha-thujone;18 %\nbeta-thujone;3 %\n1,8-cineole;12 %";
    private static final String STRONG = "alpha-thujone;43 %\nbeta-thujone;8.5 %\n1,8-cineole;12 %";

    @TempDir
    private Path folder;

    private Rested rested;
    private String recipe = "";

    @BeforeEach
    void open() {
        rested = new Rested(folder);
        recipe = rested.kitchen.saved("Sage drop", SAGE);
    }

    @AfterEach
    void close() {
        rested.close();
    }

    private Lot lot(String... fields) {
        return rested.kitchen
                .store
                .lots()
                .add(List.of(Bottles.read(fields)), request())
                .get(0);
    }

    private Lot oil(String analysis) {
        return lot(
                "name",
                "sage oil",
                "kind",
                "essential oil",
                "left",
                "10 ml",
                "density",
                "0.915 g/ml",
                "analysis",
                analysis);
    }

    /** Makes a litre of these lots and bottles all of it. */
    private Batch bottled(Lot... lots) {
        List<String> ids = List.of(lots).stream().map(Lot::id).toList();
        Map<String, List<String>> drawn = ids.isEmpty() ? Map.of() : Map.of("sage oil", ids);
        String make = rested.kitchen.begun(recipe, new BeginMake.Wish("", false, drawn, Map.of()));
        rested.kitchen.finishAsAsked(make);
        Batch batch = new FinishMake(rested.kitchen.store).answer(rested.kitchen.state(make), request());
        return filled(batch);
    }

    private Batch filled(Batch batch) {
        assertThat(rested.after(1).bottled(batch, typed("1", "fills", "1 x 500 ml"), request()))
                .isInstanceOf(RecordBatch.Outcome.Kept.class);
        return batch;
    }

    /** Returns what stands against a label, with its figures. */
    private List<String> against(Batch batch) {
        Book book = Book.open(rested.kitchen.store);
        return new LabelBottles(rested.kitchen.store)
                .answer(book, book.cellar().bottlings(batch.id()).get(0), Market.EU).label().against().stream()
                        .map(DrawnTest::told)
                        .toList();
    }

    private static String told(Finding finding) {
        return finding.severity() + " " + finding.verdict() + ": " + finding.message();
    }

    private void changed(Lot lot, UnaryOperator<LotSheet> how) {
        Lot now = rested.kitchen.store.lots().lot(lot.id()).orElseThrow();
        rested.kitchen.store.lots().change(now.id(), now.version(), how.apply(now.sheet()), request());
    }

    private static UnaryOperator<LotSheet> to(String... fields) {
        return before -> Bottles.read(fields).sheet();
    }

    @Test
    void theStopOfAStrongLotStaysWhateverBecomesOfTheLot() {
        Lot strong = oil(STRONG);
        oil(MILD);
        Batch batch = bottled(strong);
        List<String> stops = against(batch);
        assertThat(stops).anyMatch(told -> told.startsWith("STOP above the limit: Thujone"));

        List<String> base = List.of("kind", "essential oil", "left", "5 ml", "analysis", MILD);
        changed(strong, to(with(base, "name", "sage oil")));
        assertThat(against(batch)).as("its analysis was written anew").isEqualTo(stops);
        changed(strong, to(with(base, "name", "sage oil", "set aside", "yes")));
        assertThat(against(batch)).as("set aside").isEqualTo(stops);
        changed(strong, to(with(base, "name", "oil of last year")));
        assertThat(against(batch)).as("renamed").isEqualTo(stops);
        rested.kitchen.store.lots().remove(strong.id(), request());
        assertThat(against(batch)).as("off the shelf").isEqualTo(stops);
        rested.kitchen.restart();
        assertThat(against(batch)).as("after a restart").isEqualTo(stops);
    }

    private static String[] with(List<String> base, String... more) {
        List<String> all = new ArrayList<>(base);
        all.addAll(List.of(more));
        return all.toArray(new String[0]);
    }

    @Test
    void aLotThatWasNotDrawnIsNotMixedIn() {
        Lot mild = oil(MILD);
        Batch alone = bottled(mild);
        List<String> before = against(alone);
        oil(STRONG);
        assertThat(against(alone)).isEqualTo(before);
        assertThat(against(bottled(mild))).isEqualTo(before);
        assertThat(before).noneMatch(told -> told.contains("above the limit: Thujone"));
    }

    @Test
    void ofTwoThatWereDrawnTheStrongerIsToldToo() {
        Lot mild = lot(
                "name",
                "sage oil",
                "kind",
                "essential oil",
                "left",
                "0.02 ml",
                "density",
                "0.915 g/ml",
                "analysis",
                MILD);
        Batch both = bottled(mild, oil(STRONG));
        assertThat(against(both))
                .anyMatch(told -> told.startsWith("STOP above the limit: Thujone: 8.24 to 20.2 mg/kg"));
    }

    /** What came from no lot that is known is judged by what any oil of that name may hold. */
    @Test
    void whatNoLotWasNamedForIsNotClearedByOneOnTheShelf() {
        Batch batch = bottled();
        List<String> before = against(batch);
        oil(MILD);
        assertThat(against(batch)).isEqualTo(before);
        assertThat(before).anyMatch(told -> told.startsWith("STOP above the limit: Thujone: 8.24 to 20.2 mg/kg"));
    }

    @Test
    void whatWasAddedStaysWhatItWas() {
        Batch batch = rested.batch();
        Lot tincture = lot(
                "name",
                "herb drops",
                "kind",
                "tincture",
                "strength",
                "60 %",
                "plant",
                "oleander",
                "ratio",
                "1:5",
                "left",
                "100 ml");
        assertThat(rested.after(1).added(batch, typed("1", "what", tincture.id(), "amount", "20 ml"), request()))
                .isInstanceOf(RecordBatch.Outcome.Kept.class);
        filled(batch);
        List<String> stops = against(batch);
        assertThat(stops).anyMatch(told -> told.startsWith("STOP") && told.contains("oleander"));
        changed(tincture, to("name", "herb drops", "kind", "tincture", "strength", "60 %", "plant", "lemon balm"));
        assertThat(against(batch)).isEqualTo(stops);
        rested.kitchen.store.lots().remove(tincture.id(), request());
        assertThat(against(batch)).isEqualTo(stops);
    }

    @Test
    void vesselsAndBottlesSayWhatStopsThemAndClearOnesSayNothing() {
        Batch stopped = bottled(oil(STRONG));
        Book book = Book.open(rested.kitchen.store);
        TellKeeping keeping = new TellKeeping(rested.kitchen.store, book);
        TellKeeping.Found ofVessel = keeping.of(stopped, rested.held(stopped, "1"));
        TellKeeping.Found ofBottles =
                keeping.of(stopped, book.cellar().bottlings(stopped.id()).get(0));
        for (TellKeeping.Found found : List.of(ofVessel, ofBottles)) {
            assertThat(found.stops()).anyMatch(finding -> finding.message().startsWith("Thujone"));
            assertThat(found.findings().subList(0, found.stops().size())).isEqualTo(found.stops());
            assertThat(found.besides()).isNotEmpty();
        }
        Batch clear = rested.batch();
        assertThat(new TellKeeping(rested.kitchen.store, Book.open(rested.kitchen.store))
                        .of(clear, rested.held(clear, "1"))
                        .stops())
                .isEmpty();
    }

    /** A lot that is added later under the name of a line does not take the place of what was poured. */
    @Test
    void whatIsAddedUnderTheNameOfALineHidesNothing() {
        Batch batch = bottled(oil(STRONG));
        List<String> before = against(batch);
        Lot mild = oil(MILD);
        assertThat(rested.after(2).added(batch, typed("1", "what", mild.id(), "amount", "0.01 g"), request()))
                .isInstanceOf(RecordBatch.Outcome.Kept.class);
        assertThat(rested.after(3).bottled(batch, typed("1", "fills", "1 x 100 ml"), request()))
                .isInstanceOf(RecordBatch.Outcome.Kept.class);
        Book book = Book.open(rested.kitchen.store);
        assertThat(new LabelBottles(rested.kitchen.store)
                        .answer(book, book.cellar().bottlings(batch.id()).get(1), Market.EU)
                        .label()
                        .isStopped())
                .isTrue();
        assertThat(before).isNotEmpty();
    }
}
