package org.stillroom.studio.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.studio.usecase.batch.Rested.typed;
import static org.stillroom.studio.usecase.make.Kitchen.request;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.label.Market;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.sheet.LabelSheet;
import org.stillroom.studio.sheet.Saying;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.usecase.make.Kitchen;
import org.stillroom.studio.usecase.shelf.Packing;

/** A batch goes into bottles: planned, filled, numbered, labelled, taken back. */
class BottlingTest {
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

    private Book book() {
        return Book.open(rested.kitchen.store);
    }

    private PlanBottling.Found planned(String... fields) {
        PlanBottling.Answer answer = new PlanBottling(rested.kitchen.store).answer(book(), batch, typed("1", fields));
        assertThat(answer.problems()).isEmpty();
        return Objects.requireNonNull(answer.found());
    }

    private static HistoryEntry kept(RecordBatch.Outcome outcome) {
        assertThat(outcome).isInstanceOf(RecordBatch.Outcome.Kept.class);
        return ((RecordBatch.Outcome.Kept) outcome).entry();
    }

    @Test
    void thePlanIsTypedAsItIsFilled() {
        PlanBottling.Found found = planned("size1", "350 ml", "count1", "6", "filter", "50 ml", "brim1", "353 ml");
        assertThat(found.plan().full())
                .singleElement()
                .satisfies(fill -> assertThat(fill.count()).isEqualTo(2));
        assertThat(found.plan().last()).isNotNull();
        assertThat(found.rooms().get(0).fullAt()).isPresent();

        kept(rested.after(30).bottled(batch, typed("1", "fills", found.typed(), "filter", "50 ml"), request()));
        assertThat(book().cellar().nextBottle(batch.id())).isEqualTo(4);
        assertThat(rested.held(batch, "1").essentials().millilitres()).isLessThan(1.0);
    }

    @Test
    void emptyBottlesComeFromTheShelfAndGoBackWhenItIsTakenBack() {
        Lot bottles = rested.kitchen.lot("flat ones", Packing.BOTTLES.label(), Map.of("holds", "500 ml"), 8, "pieces");
        PlanBottling.Found found = planned("lot1", bottles.id());
        assertThat(found.typed()).isEqualTo("2 x 500 ml");
        assertThat(found.typedLots()).isEqualTo(bottles.id() + ":2");

        HistoryEntry entry = kept(rested.after(30)
                .bottled(batch, typed("1", "fills", found.typed(), "lots", found.typedLots()), request()));
        assertThat(left(bottles)).isEqualTo(6.0);
        kept(rested.after(31).undone(batch, entry.id(), request()));
        assertThat(left(bottles)).isEqualTo(8.0);
        assertThat(book().cellar().bottlings(batch.id())).isEmpty();
    }

    /** A litre that cost 11 EUR, in bottles of 1 EUR and 0.30 EUR, each with a label of 10 cents. */
    @Test
    void oneCostsWhatIsInItAndTheBottleAndTheLabel() {
        Batch priced = rested.batch(PRICED);
        double liquid =
                Objects.requireNonNull(rested.held(priced, "1").outlay().money().get("EUR"));
        Lot large = empty("large", "350 ml", 12, "12 EUR");
        Lot small = empty("small", "100 ml", 10, "3 EUR");
        Lot labels = rested.kitchen.lot("labels", Packing.TRIM.label(), Map.of(), 1000, "pieces", "100 EUR");
        PlanBottling.Answer answer = new PlanBottling(rested.kitchen.store)
                .answer(
                        book(),
                        priced,
                        typed("1", "lot1", large.id(), "count1", "2", "lot2", small.id(), "each", labels.id()));
        PlanBottling.Found found = Objects.requireNonNull(answer.found());
        double volume = rested.held(priced, "1").essentials().millilitres();
        assertThat(found.rooms().get(0).cost().money().get("EUR"))
                .isCloseTo(liquid * 350 / volume + 1.0 + 0.1, within(1e-9));
        assertThat(found.rooms().get(1).cost().money().get("EUR"))
                .isCloseTo(liquid * 100 / volume + 0.3 + 0.1, within(1e-9));

        kept(rested.after(30)
                .bottled(priced, typed("1", "fills", found.typed(), "lots", found.typedLots()), request()));
        List<Bottling> bottlings = book().cellar().bottlings(priced.id());
        double bottles = 0.0;
        for (Bottling bottling : bottlings) {
            bottles += bottling.fill().count()
                    * Objects.requireNonNull(bottling.each().outlay().money().get("EUR"));
        }
        int count = bottlings.stream().mapToInt(each -> each.fill().count()).sum();
        assertThat(bottlings.get(0).each().outlay().money().get("EUR"))
                .as("as planned, but for what the short one lacks")
                .isCloseTo(found.rooms().get(0).cost().money().get("EUR"), within(0.02));
        assertThat(bottles)
                .as("all of it is paid")
                .isCloseTo(liquid + 2.0 + (count - 2) * 0.3 + count * 0.1, within(1e-9));
        assertThat(left(large)).isEqualTo(10.0);
        assertThat(left(labels)).isEqualTo(1000.0 - count);
    }

    private static final String PRICED = Kitchen.BAY.replace("strength: 96 %}", "strength: 96 %, price: 36 EUR/L}");

    private Lot empty(String name, String holds, int count, String paid) {
        return rested.kitchen.lot(name, Packing.BOTTLES.label(), Map.of("holds", holds), count, "pieces", paid);
    }

    @Test
    void whatDoesNotStandOnTheShelfIsNotTakenFromThere() {
        Lot bottles = empty("flat ones", "350 ml", 12, "12 EUR");
        Lot spirit = rested.kitchen.lot("neutral spirit", "spirit", Map.of("strength", "96 %"), 500, "ml");
        assertThat(refusedLots("2 x 350 ml", bottles.id() + ":40")).isEqualTo("more-than-on-shelf");
        assertThat(left(bottles)).isEqualTo(12.0);
        assertThat(refusedLots("2 x 350 ml", "somebody else’s:2")).isEqualTo("lot-not-known");
        assertThat(refusedLots("2 x 350 ml", spirit.id() + ":2")).isEqualTo("no-bottles");
        assertThat(refusedLots("2 x 500 ml", bottles.id())).isEqualTo("bottle-not-filled");
        assertThat(problem("lot1", spirit.id())).isEqualTo("lot1");
        assertThat(problem("lot1", bottles.id(), "size1", "500 ml")).isEqualTo("size1");
        assertThat(problem("lot1", bottles.id(), "count1", "13")).isEqualTo("count1");
        assertThat(problem("size1", "350 ml", "size2", "350 ml")).isEqualTo("size2");
    }

    private String refusedLots(String fills, String lots) {
        RecordBatch.Outcome outcome =
                rested.after(1).bottled(batch, typed("1", "fills", fills, "lots", lots), request());
        assertThat(outcome).isInstanceOf(RecordBatch.Outcome.NotKept.class);
        Finding problem = ((RecordBatch.Outcome.NotKept) outcome).problems().get(0);
        assertThat(problem.where()).isEqualTo("lots");
        return problem.rule();
    }

    @Test
    void oneThatBrokeIsPaidByTheOthersAndAShortOneIsOfTheSmallestThatTakesIt() {
        Lot bottles = empty("flat ones", "350 ml", 12, "12 EUR");
        kept(rested.after(1)
                .bottled(batch, typed("1", "fills", "1 x 350 ml; 1 x 200 ml", "lots", "flat ones:3"), request()));
        assertThat(left(bottles)).isEqualTo(9.0);
        assertThat(book().cellar().bottlings(batch.id()))
                .allSatisfy(bottling -> assertThat(
                                Objects.requireNonNull(bottling.fill().bottle())
                                        .money()
                                        .get("EUR"))
                        .isCloseTo(1.5, within(1e-9)));
    }

    private double left(Lot lot) {
        return rested.kitchen.store.lots().lot(lot.id()).orElseThrow().left();
    }

    @Test
    void afterABlendItIsAPartOfAllThatCameIn() {
        Batch other = rested.batch();
        kept(rested.after(1).moved(other, typed("1", "to", "1", "batch", batch.id(), "amount", "500 ml"), request()));
        assertThat(planned("size1", "500 ml").part()).isCloseTo(1.0, within(0.002));
    }

    @Test
    void numbersGoOnWhereTheLastBottlingEnded() {
        kept(rested.after(30).bottled(batch, typed("1", "fills", "2 x 200 ml"), request()));
        kept(rested.after(60).bottled(batch, typed("1", "fills", "1 x 200 ml; 1 x 100 ml"), request()));
        assertThat(book().cellar().bottlings(batch.id()))
                .extracting(Bottling::first)
                .containsExactly(1, 3, 4);
    }

    @Test
    void labelsSayWhatIsInTheBottleWithBatchNumberAndDay() {
        kept(rested.after(30).measured(batch, typed("1", "strength", "27.0 %"), request()));
        kept(rested.after(31).bottled(batch, typed("1", "fills", "2 x 350 ml"), request()));
        Bottling bottling = book().cellar().bottlings(batch.id()).get(0);

        LabelBottles.Found found = new LabelBottles(rested.kitchen.store).answer(book(), bottling, Market.EU);
        assertThat(found.label().figures().value(Figure.STRENGTH)).isCloseTo(27.0, within(1e-6));
        assertThat(found.markings()).hasSize(2);
        String svg = LabelSheet.svg(
                found.label(), LabelSheet.Look.USUAL, found.markings().get(1));
        assertThat(svg)
                .contains("Batch 1, bottle 2, lot L1-", ", filled ")
                .contains("27.0 % vol")
                .contains("350 mL");
        byte[] pdf = LabelSheet.pdf(found.label(), LabelSheet.Look.USUAL, found.markings());
        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }

    @Test
    void labelsCarryADoseThatNobodySaidIsMeant() {
        Lot clove = rested.kitchen.lot("clove oil", "essential oil", Map.of(), 20, "ml");
        kept(rested.after(30).added(batch, typed("1", "what", clove.id(), "amount", "4 ml"), request()));
        kept(rested.after(31).bottled(batch, typed("1", "fills", "1 x 350 ml"), request()));
        Bottling bottling = book().cellar().bottlings(batch.id()).get(0);

        LabelBottles.Found found = new LabelBottles(rested.kitchen.store).answer(book(), bottling, Market.EU);
        assertThat(found.label().doses()).containsExactly("clove oil");
        assertThat(found.label().against()).extracting(Finding::rule).contains("dose-implausible");
    }

    @Test
    void bottlesBelongToALotByBatchAndDayOrAsTheMakerNamesIt() {
        HistoryEntry entry = kept(rested.after(31).bottled(batch, typed("1", "fills", "1 x 200 ml"), request()));
        kept(rested.after(32).bottled(batch, typed("1", "fills", "1 x 200 ml", "code", "QB 7"), request()));
        List<Bottling> bottlings = book().cellar().bottlings(batch.id());
        String day = Book.at(entry).atZone(ZoneId.systemDefault()).toLocalDate().toString();
        assertThat(LabelBottles.lot(book(), bottlings.get(0))).isEqualTo("L1-" + day.replace("-", ""));
        assertThat(LabelBottles.lot(book(), bottlings.get(1))).isEqualTo("QB 7");
        LabelBottles.Found found = new LabelBottles(rested.kitchen.store).answer(book(), bottlings.get(1), Market.EU);
        assertThat(LabelSheet.svg(
                        found.label(), LabelSheet.Look.USUAL, found.markings().get(0)))
                .contains("lot QB 7");
        RecordBatch.Outcome outcome =
                rested.after(33).bottled(batch, typed("1", "fills", "1 x 200 ml", "code", "x".repeat(31)), request());
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        RecordBatch.Outcome.NotKept.class,
                        not -> assertThat(not.problems().get(0).where()).isEqualTo("code"));
    }

    @Test
    void whatABottleCostsStandsOnALabelOnlyWhereThatIsAskedFor() {
        Lot spirit = rested.kitchen.lot(
                "cherry brandy", "spirit", Map.of("strength", "40 %", "price", "20 EUR/L"), 500, "ml");
        kept(rested.after(30).added(batch, typed("1", "what", spirit.id(), "amount", "300 ml"), request()));
        kept(rested.after(31).bottled(batch, typed("1", "fills", "1 x 350 ml"), request()));
        Bottling bottling = book().cellar().bottlings(batch.id()).get(0);
        LabelBottles.Found found = new LabelBottles(rested.kitchen.store).answer(book(), bottling, Market.EU);
        double spent = bottling.each().outlay().money().getOrDefault("EUR", 0.0);
        assertThat(spent).isPositive();
        String without = LabelSheet.svg(
                found.label().bearing("EU minimum"),
                LabelSheet.Look.USUAL,
                found.markings().get(0));
        assertThat(without).doesNotContain("EUR", "Cost");

        LabelSheet.Look printed = new LabelSheet.Look(LabelSheet.USUAL, Saying.ENGLISH, LabelSheet.Cost.PRINTED);
        TellLabel.Found bearing = found.label().bearing("eu minimum");
        double duty = 5.50 * bearing.strength().percent() / 100.0 * 0.35;
        assertThat(bearing.together()).singleElement().satisfies(money -> {
            assertThat(money.currency()).isEqualTo("EUR");
            assertThat(money.amount()).isCloseTo(spent + duty, within(1e-9));
        });
        assertThat(LabelSheet.svg(bearing, printed, found.markings().get(0)))
                .as("not every price is known")
                .contains("Cost with duty more than "
                        + QuantityWords.fixed(bearing.together().get(0).amount(), 2) + " EUR");
        assertThatThrownBy(() -> found.label().bearing("Atlantis"))
                .isInstanceOf(Impossible.class)
                .hasMessageContaining("Atlantis");
    }

    @Test
    void labelsLeadToTheRecipeWhereTheStudioHasAnAddress() {
        kept(rested.after(31).bottled(batch, typed("1", "fills", "1 x 350 ml"), request()));
        Bottling bottling = book().cellar().bottlings(batch.id()).get(0);
        LabelBottles labels = new LabelBottles(rested.kitchen.store);
        assertThat(labels.answer(book(), bottling, Market.EU).label().link()).isNull();

        rested.kitchen.store.settings().put(LabelBottles.ADDRESS, "http://stillroom.example:7820");
        LabelBottles.Found found = labels.answer(book(), bottling, Market.EU);
        TellLabel.Found label = found.label();
        assertThat(label.link()).isEqualTo("http://stillroom.example:7820/compose/" + batch.recipe());
        assertThat(LabelSheet.svg(label, LabelSheet.Look.USUAL, found.markings().get(0)))
                .contains("<path", "/compose/" + batch.recipe());
    }

    @Test
    void whatIsNotUnderstoodIsToldAtItsField() {
        assertThat(problem("size1", "big")).isEqualTo("size1");
        assertThat(problem("size1", "500 ml", "count1", "many")).isEqualTo("count1");
        assertThat(problem("size1", "500 ml", "brim1", "400 ml")).isEqualTo("brim1");
        assertThat(problem("size1", "500 ml", "filter", "2 L")).isEqualTo("filter");
        RecordBatch.Outcome outcome = rested.after(1).bottled(batch, typed("1", "fills", "a few"), request());
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        RecordBatch.Outcome.NotKept.class,
                        not -> assertThat(not.problems().get(0).where()).isEqualTo("fills"));
    }

    private String problem(String... fields) {
        List<Finding> problems = new PlanBottling(rested.kitchen.store)
                .answer(book(), batch, typed("1", fields))
                .problems();
        assertThat(problems).isNotEmpty();
        return problems.get(0).where();
    }
}
