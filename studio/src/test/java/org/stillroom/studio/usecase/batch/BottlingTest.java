package org.stillroom.studio.usecase.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.studio.usecase.batch.Rested.typed;
import static org.stillroom.studio.usecase.make.Kitchen.request;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.sheet.LabelSheet;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.TellLabel;

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
        Lot bottles = rested.kitchen.lot("bottles 500 ml", "other", Map.of(), 8, "pieces");
        PlanBottling.Found found = planned("size1", "500 ml", "lot1", bottles.id());
        assertThat(found.lots()).containsExactly(bottles.id() + ":" + 2);

        HistoryEntry entry = kept(rested.after(30)
                .bottled(batch, typed("1", "fills", found.typed(), "lots", String.join(";", found.lots())), request()));
        assertThat(left(bottles)).isEqualTo(6.0);
        kept(rested.after(31).undone(batch, entry.id(), request()));
        assertThat(left(bottles)).isEqualTo(8.0);
        assertThat(book().cellar().bottlings(batch.id())).isEmpty();
    }

    private double left(Lot lot) {
        return rested.kitchen.store.lots().lot(lot.id()).orElseThrow().left();
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

        LabelBottles.Found found = new LabelBottles(rested.kitchen.store).answer(book(), bottling);
        assertThat(found.label().figures().value(Figure.STRENGTH)).isCloseTo(27.0, within(1e-6));
        assertThat(found.markings()).hasSize(2);
        String svg =
                LabelSheet.svg(found.label(), LabelSheet.USUAL, found.markings().get(1));
        assertThat(svg)
                .contains("Batch 1, bottle 2, filled ")
                .contains("27.0 % vol")
                .contains("350 mL");
        byte[] pdf = LabelSheet.pdf(found.label(), LabelSheet.USUAL, found.markings());
        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }

    @Test
    void labelsLeadToTheRecipeWhereTheStudioHasAnAddress() {
        kept(rested.after(31).bottled(batch, typed("1", "fills", "1 x 350 ml"), request()));
        Bottling bottling = book().cellar().bottlings(batch.id()).get(0);
        LabelBottles labels = new LabelBottles(rested.kitchen.store);
        assertThat(labels.answer(book(), bottling).label().link()).isNull();

        rested.kitchen.store.settings().put(LabelBottles.ADDRESS, "http://stillroom.example:7820");
        TellLabel.Found label = labels.answer(book(), bottling).label();
        assertThat(label.link()).isEqualTo("http://stillroom.example:7820/compose/" + batch.recipe());
        assertThat(LabelSheet.svg(label, LabelSheet.USUAL, "Batch 1")).contains("<path", "/compose/" + batch.recipe());
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
