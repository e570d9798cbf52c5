package org.stillroom.studio.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a store promises, whichever database it is on. */
abstract class StoreContract {
    private static final String TEXT = "stillroom: 1\ntitle: Medlar and juniper # as typed\n";

    abstract Store store();

    @Test
    void aRecipeBeginsWithoutARevisionAndIsListed() {
        String id = store().recipes().create("Medlar", request());

        assertThat(store().recipes().latest(id)).isEmpty();
        assertThat(store().recipes().head(id)).get().satisfies(head -> {
            assertThat(head.revision()).isZero();
            assertThat(head.title()).isEqualTo("Medlar");
            assertThat(head.hasDraft()).isFalse();
        });
        assertThat(store().recipes().heads(false)).extracting(RecipeHead::id).contains(id);
    }

    @Test
    void aRevisionComesBackByteForByte() {
        String id = store().recipes().create("Medlar", request());

        Saving saving = store().recipes().save(id, 0, "Medlar", TEXT, "first try", request());

        assertThat(saving).isInstanceOf(Saving.Saved.class);
        assertThat(store().recipes().latest(id)).get().satisfies(revision -> {
            assertThat(revision.number()).isEqualTo(1);
            assertThat(revision.text()).isEqualTo(TEXT);
            assertThat(revision.note()).isEqualTo("first try");
        });
    }

    @Test
    void theSecondOfTwoSavesOnOneRevisionIsToldAndChangesNothing() {
        String id = saved();

        store().recipes().save(id, 1, "Mine", TEXT, null, request());
        Saving second = store().recipes().save(id, 1, "Yours", TEXT, null, request());

        assertThat(second)
                .isInstanceOfSatisfying(
                        Saving.Overtaken.class,
                        overtaken -> assertThat(overtaken.current().title()).isEqualTo("Mine"));
        assertThat(store().recipes().revisions(id)).hasSize(2);
    }

    @Test
    void ofManySavesAtOnceJustOneIsTaken() throws Exception {
        String id = saved();
        List<Callable<Saving>> saves = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            String title = "Save " + i;
            saves.add(() -> store().recipes().save(id, 1, title, TEXT, null, request()));
        }

        List<Saving> outcomes = atOnce(saves);

        assertThat(outcomes).filteredOn(Saving.Saved.class::isInstance).hasSize(1);
        assertThat(store().recipes().revisions(id)).hasSize(2);
    }

    @Test
    void theSameRequestTwiceIsDoneOnce() {
        String request = request();
        String id = store().recipes().create("Medlar", request);

        assertThat(store().recipes().create("Medlar", request)).isEqualTo(id);

        String save = request();
        store().recipes().save(id, 0, "Medlar", TEXT, null, save);
        Saving again = store().recipes().save(id, 0, "Medlar", TEXT, null, save);
        assertThat(again)
                .isInstanceOfSatisfying(
                        Saving.Saved.class,
                        saved -> assertThat(saved.revision().number()).isEqualTo(1));
        assertThat(store().recipes().revisions(id)).hasSize(1);
    }

    @Test
    void theSameRequestFromManySidesAtOnceIsDoneOnce() throws Exception {
        Lot lot = shelved("Juniper tincture", 100.0);
        String request = request();
        List<Callable<HistoryEntry>> moves = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            moves.add(() -> store().lots().move(new LotMove(lot.id(), -10.0, "batch 1"), request));
        }

        List<HistoryEntry> entries = atOnce(moves);

        assertThat(entries)
                .extracting(HistoryEntry::id)
                .containsOnly(entries.get(0).id());
        assertThat(store().lots().lot(lot.id())).get().extracting(Lot::left).isEqualTo(90.0);
    }

    @Test
    void whatIsWrittenOfABatchIsInItsLogAndTakesFromTheShelfInTheSameMoment() {
        Batch batch = batch();
        Lot lot = shelved("Quince syrup", 500.0);
        LotMove taken = new LotMove(lot.id(), -120.0, "batch 1");

        HistoryEntry entry = store().batches().append(written(batch, null, taken), StoreContract::anything, request());

        assertThat(store().batches().log()).extracting(HistoryEntry::id).contains(entry.id());
        assertThat(store().history().of("batch:" + batch.id())).containsExactly(entry);
        assertThat(store().lots().lot(lot.id())).get().extracting(Lot::left).isEqualTo(380.0);
    }

    @Test
    void whatTheJudgeRefusesLeavesNothingBehind() {
        Batch batch = batch();
        Lot lot = shelved("Quince syrup", 500.0);
        LotMove taken = new LotMove(lot.id(), -120.0, "batch 1");

        assertThatThrownBy(() -> store().batches()
                        .append(
                                written(batch, null, taken),
                                (batches, log) -> {
                                    throw new IllegalStateException("refused");
                                },
                                request()))
                .hasMessage("refused");

        assertThat(store().history().of("batch:" + batch.id())).isEmpty();
        assertThat(store().lots().lot(lot.id())).get().extracting(Lot::left).isEqualTo(500.0);
        assertThatThrownBy(() -> store().batches()
                        .append(
                                new Batches.Writing("nobody", "batch.lost", "{}", null, List.of()),
                                StoreContract::anything,
                                request()))
                .isInstanceOf(MissingException.class);
    }

    @Test
    void anEntryOfABatchIsTakenBackOnce() {
        Batch batch = batch();
        HistoryEntry entry = store().batches().append(written(batch, null), StoreContract::anything, request());

        store().batches().append(written(batch, entry.id()), StoreContract::anything, request());

        assertThatThrownBy(
                        () -> store().batches().append(written(batch, entry.id()), StoreContract::anything, request()))
                .isInstanceOf(SettledException.class);
    }

    @Test
    void ofManyWhoWriteOfOneBatchAtOnceEachIsJudgedByWhatTheOthersLeft() throws Exception {
        Batch batch = batch();
        List<Callable<Boolean>> writings = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            writings.add(() -> {
                try {
                    store().batches()
                            .append(written(batch, null), (batches, log) -> roomForThree(batch, log), request());
                    return true;
                } catch (IllegalStateException full) {
                    return false;
                }
            });
        }

        assertThat(atOnce(writings)).filteredOn(kept -> kept).hasSize(3);
        assertThat(store().history().of("batch:" + batch.id())).hasSize(3);
    }

    private static void roomForThree(Batch batch, List<HistoryEntry> log) {
        if (log.stream()
                        .filter(entry -> entry.subject().equals("batch:" + batch.id()))
                        .count()
                >= 3) {
            throw new IllegalStateException("full");
        }
    }

    private static void anything(List<Batch> batches, List<HistoryEntry> log) {}

    private static Batches.Writing written(Batch batch, @Nullable Long undoes, LotMove... lots) {
        return new Batches.Writing(batch.id(), "batch.lost", "{}", undoes, List.of(lots));
    }

    private Batch batch() {
        Make make = store().makes().begin(saved(), 1, "{}", request());
        return store().makes().finish(make.id(), "{}", List.of(), List.of(), request());
    }

    @Test
    void aDraftIsKeptAndSavingTakesItAway() {
        String id = saved();
        store().recipes().keepDraft(id, 1, "{\"title\":\"half way\"}");
        store().recipes().keepDraft(id, 1, "{\"title\":\"further\"}");

        assertThat(store().recipes().draft(id)).get().satisfies(draft -> {
            assertThat(draft.body()).isEqualTo("{\"title\":\"further\"}");
            assertThat(draft.basedOn()).isEqualTo(1);
        });
        assertThat(store().recipes().head(id))
                .get()
                .extracting(RecipeHead::hasDraft)
                .isEqualTo(true);

        store().recipes().save(id, 1, "Medlar", TEXT, null, request());
        assertThat(store().recipes().draft(id)).isEmpty();
    }

    @Test
    void aRecipePutAwayIsInTheOtherListAndARemovedOneInNeither() {
        String id = saved();

        store().recipes().archive(id, request());
        assertThat(store().recipes().heads(false)).extracting(RecipeHead::id).doesNotContain(id);
        assertThat(store().recipes().heads(true)).extracting(RecipeHead::id).contains(id);

        HistoryEntry removal = store().recipes().remove(id, request());
        assertThat(store().recipes().head(id)).isEmpty();

        store().recipes().bringBack(id, removal.id(), request());
        assertThat(store().recipes().head(id)).isPresent();
        assertThat(store().history().of("recipe:" + id))
                .extracting(HistoryEntry::kind)
                .containsExactly(
                        "recipe.begun", "recipe.saved", "recipe.archived", "recipe.removed", "recipe.brought-back");
    }

    @Test
    void aLotKeepsEverythingThatWasWrittenAboutIt() {
        LotSheet sheet = new LotSheet(
                "Neutral spirit",
                "spirit",
                Map.of("strength", "96 %", "price", "22 EUR/L"),
                "lot 7",
                LocalDate.of(2026, 10, 2),
                1000.0,
                "ml",
                "412.5 g",
                "22 EUR",
                "the corner shop",
                null,
                "half a litre in the cupboard",
                null,
                false,
                null);

        Lot lot = store().lots()
                .add(List.of(new Lots.NewLot(sheet, 430.0)), request())
                .get(0);

        assertThat(store().lots().lot(lot.id())).contains(new Lot(lot.id(), 1, sheet, 430.0));
    }

    @Test
    void aChangeOfALotThatWasOvertakenChangesNothing() {
        Lot lot = shelved("Juniper tincture", 100.0);
        LotSheet mine = named("Juniper berry tincture");

        assertThat(store().lots().change(lot.id(), 1, mine, request())).isInstanceOf(Changing.Changed.class);
        assertThat(store().lots().change(lot.id(), 1, named("Other"), request()))
                .isInstanceOf(Changing.Overtaken.class);
        assertThat(store().lots().lot(lot.id())).get().satisfies(now -> {
            assertThat(now.sheet()).isEqualTo(mine);
            assertThat(now.version()).isEqualTo(2);
        });
    }

    @Test
    void aLotIsToldAsItWasWhenAnEntryWasWritten() {
        Lot lot = shelved("Juniper tincture", 100.0);
        HistoryEntry first = store().lots().move(new LotMove(lot.id(), -10.0, "batch 1"), request());
        store().lots().change(lot.id(), 1, named("Juniper berry tincture"), request());
        HistoryEntry second = store().lots().move(new LotMove(lot.id(), -10.0, "batch 2"), request());
        store().lots().change(lot.id(), 2, named("Old tincture"), request());
        store().lots().remove(lot.id(), request());

        assertThat(nameAt(lot, first.id())).isEqualTo("Juniper tincture");
        assertThat(nameAt(lot, second.id())).isEqualTo("Juniper berry tincture");
        assertThat(nameAt(lot, Long.MAX_VALUE)).isEqualTo("Old tincture");
        assertThat(store().lots().asOf("never", first.id())).isEmpty();
    }

    private String nameAt(Lot lot, long entry) {
        return store().lots().asOf(lot.id(), entry).orElseThrow().sheet().name();
    }

    @Test
    void anUndoIsAnEntryOfItsOwn() {
        Lot lot = shelved("Juniper tincture", 100.0);
        HistoryEntry move = store().lots().move(new LotMove(lot.id(), -30.0, "spilt"), request());
        HistoryEntry removal = store().lots().remove(lot.id(), request());
        assertThat(store().lots().lot(lot.id())).isEmpty();

        store().lots().undo(removal.id(), request());
        store().lots().undo(move.id(), request());

        assertThat(store().lots().lot(lot.id())).get().extracting(Lot::left).isEqualTo(100.0);
        assertThat(store().history().of("lot:" + lot.id()))
                .extracting(HistoryEntry::kind)
                .containsExactly("lot.added", "lot.moved", "lot.removed", "lot.brought-back", "lot.move-undone");
        assertThatThrownBy(() -> store().lots().undo(move.id(), request())).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void movesFromManySidesAllCount() throws Exception {
        Lot lot = shelved("Juniper tincture", 1000.0);
        List<Callable<HistoryEntry>> moves = new ArrayList<>();
        for (int i = 0; i < 80; i++) {
            moves.add(() -> store().lots().move(new LotMove(lot.id(), -1.0, "a drop"), request()));
        }

        atOnce(moves);

        assertThat(store().lots().lot(lot.id())).get().extracting(Lot::left).isEqualTo(920.0);
    }

    @Test
    void houseRulesAreWrittenOnceForEachVersionAndStayInTheHistory() {
        String request = request();
        int before = store().rules().house().version();

        store().rules().writeHouse("no tonka", before, request);
        store().rules().writeHouse("no tonka", before, request); // the same wish again
        Changing<RuleBook.House> late = store().rules().writeHouse("no sage", before, request());

        assertThat(store().rules().house()).isEqualTo(new RuleBook.House("no tonka", before + 1));
        assertThat(late).isEqualTo(new Changing.Overtaken<>(new RuleBook.House("no tonka", before + 1)));
        store().rules().writeHouse("", before + 1, request());
        assertThat(store().rules().house().text()).isEmpty();
        assertThat(store().history().of("rules:house").stream().skip(before))
                .extracting(HistoryEntry::body)
                .hasSize(2)
                .first()
                .asString()
                .contains("no tonka");
    }

    @Test
    void aCalibrationStaysWithTheSameThingAlone() {
        InstrumentSheet flask = new InstrumentSheet("flask", "flask", Map.of("holds", "50 ml"), null);
        Instrument kept = store().instruments().add(flask, request());
        Calibration water = new Calibration("2026-11-26", 49.93, 0.08, Map.of("empty", List.of("31.2 g")));
        store().instruments().calibrate(kept.id(), 1, water, request());
        assertThat(sheet(kept).calibration()).isEqualTo(water);

        InstrumentSheet trusted =
                new InstrumentSheet("good flask", "flask", Map.of("holds", "50 ml", "tolerance", "0.1 ml"), "by hand");
        store().instruments().change(kept.id(), 2, trusted, request());
        assertThat(sheet(kept).name()).isEqualTo("good flask");
        assertThat(sheet(kept).calibration()).isEqualTo(water);
        assertThat(store().instruments().calibrate(kept.id(), 2, null, request()))
                .isInstanceOf(Changing.Overtaken.class);

        InstrumentSheet other = new InstrumentSheet("good flask", "flask", Map.of("holds", "100 ml"), null);
        store().instruments().change(kept.id(), 3, other, request());
        assertThat(sheet(kept).calibration()).isNull();
        store().instruments().calibrate(kept.id(), 4, water, request());
        store().instruments().calibrate(kept.id(), 5, null, request());
        assertThat(sheet(kept).calibration()).isNull();
    }

    private InstrumentSheet sheet(Instrument instrument) {
        return store().instruments().instrument(instrument.id()).orElseThrow().sheet();
    }

    @Test
    void instrumentsAreKeptChangedRemovedAndBroughtBack() {
        InstrumentSheet scale = new InstrumentSheet("kitchen scale", "scale", Map.of("marks", "0.1 g"), null);
        Instrument kept = store().instruments().add(scale, request());
        InstrumentSheet finer = new InstrumentSheet("kitchen scale", "scale", Map.of("marks", "0.01 g"), "new");

        store().instruments().change(kept.id(), 1, finer, request());
        assertThat(store().instruments().change(kept.id(), 1, scale, request())).isInstanceOf(Changing.Overtaken.class);
        HistoryEntry removal = store().instruments().remove(kept.id(), request());
        assertThat(store().instruments().instrument(kept.id())).isEmpty();
        store().instruments().bringBack(kept.id(), removal.id(), request());

        assertThat(store().instruments().instrument(kept.id()))
                .get()
                .extracting(Instrument::sheet)
                .isEqualTo(finer);
    }

    @Test
    void aMakeIsItsLogAndEndsInOneBatchThatDrawsTheShelfDown() {
        String recipe = saved();
        Lot lot = shelved("Neutral spirit", 700.0);
        Make make = store().makes().begin(recipe, 1, "{\"size\":\"1 L\"}", request());
        store().makes().append(make.id(), "step.poured", "{\"step\":\"a\"}", null, request());

        List<Lots.NewLot> left = List.of(new Lots.NewLot(named("Bay essence"), 80.0));
        String request = request();
        Batch batch =
                store().makes().finish(make.id(), "{}", List.of(new LotMove(lot.id(), -300.0, "batch")), left, request);
        Batch again =
                store().makes().finish(make.id(), "{}", List.of(new LotMove(lot.id(), -300.0, "batch")), left, request);

        assertThat(again).isEqualTo(batch);
        assertThat(store().lots().all())
                .filteredOn(each -> each.sheet().name().equals("Bay essence"))
                .extracting(Lot::left)
                .containsExactly(80.0);
        assertThat(store().lots().lot(lot.id())).get().extracting(Lot::left).isEqualTo(400.0);
        assertThat(store().makes().entries(make.id()))
                .extracting(HistoryEntry::kind)
                .containsExactly("make.begun", "step.poured", "make.finished");
        assertThat(store().makes().open()).extracting(Make::id).doesNotContain(make.id());
        assertThatThrownBy(() -> store().makes().append(make.id(), "step.poured", "{}", null, request()))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aBatchThatCannotDrawALotDownIsNoBatch() {
        Make make = store().makes().begin(saved(), 1, "{}", request());

        assertThatThrownBy(() -> store().makes()
                        .finish(make.id(), "{}", List.of(new LotMove("nosuchlot", -1, "x")), List.of(), request()))
                .isInstanceOf(NoSuchElementException.class);

        assertThat(store().makes().batchOf(make.id())).isEmpty();
        assertThat(store().makes().open()).extracting(Make::id).contains(make.id());
    }

    @Test
    void twoWhoLogOneMakeAtOnceBothCount() throws Exception {
        Make make = store().makes().begin(saved(), 1, "{}", request());
        List<Callable<HistoryEntry>> logs = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            logs.add(() -> store().makes().append(make.id(), "note", "{}", null, request()));
        }

        atOnce(logs);

        assertThat(store().makes().entries(make.id())).hasSize(41);
    }

    @Test
    void nothingIsLoggedAfterTheEndOfAMake() throws Exception {
        Make make = store().makes().begin(saved(), 1, "{}", request());
        List<Callable<Boolean>> hands = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            boolean last = i == 20;
            hands.add(() -> {
                try {
                    if (last) {
                        store().makes().finish(make.id(), "{}", List.of(), List.of(), request());
                    } else {
                        store().makes().append(make.id(), "note", "{}", null, request());
                    }
                    return true;
                } catch (SettledException tooLate) {
                    return false;
                }
            });
        }

        List<Boolean> taken = atOnce(hands);

        List<HistoryEntry> log = store().makes().entries(make.id());
        assertThat(log).hasSize(1 + (int) taken.stream().filter(yes -> yes).count());
        assertThat(log.get(log.size() - 1).kind()).isEqualTo("make.finished");
    }

    @Test
    void makesThatEndAtOnceBecomeBatchesWithNumbersOfTheirOwn() throws Exception {
        Lot gin = shelved("Gin", 1000.0);
        Lot syrup = shelved("Syrup", 1000.0);
        List<Callable<Batch>> ends = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Make make = store().makes().begin(saved(), 1, "{}", request());
            List<LotMove> taken = new ArrayList<>(
                    List.of(new LotMove(gin.id(), -10.0, "batch"), new LotMove(syrup.id(), -10.0, "batch")));
            if (i % 2 == 0) {
                Collections.reverse(taken); // whoever takes them in another order may have to wait for each other
            }
            ends.add(() -> store().makes().finish(make.id(), "{}", taken, List.of(), request()));
        }

        List<Batch> batches = atOnce(ends);

        assertThat(batches).extracting(Batch::number).doesNotHaveDuplicates();
        assertThat(store().lots().lot(gin.id())).get().extracting(Lot::left).isEqualTo(920.0);
        assertThat(store().lots().lot(syrup.id())).get().extracting(Lot::left).isEqualTo(920.0);
    }

    @Test
    void aMeasuredLotHoldsWhatWasMeasuredWhoeverPoursMeanwhile() throws Exception {
        Lot lot = shelved("Juniper tincture", 100.0);
        List<Callable<HistoryEntry>> hands = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            boolean measure = i % 4 == 0;
            hands.add(() -> measure
                    ? store().lots().measured(lot.id(), 500.0, "weighed", request())
                    : store().lots().move(new LotMove(lot.id(), -1.0, "poured"), request()));
        }

        List<HistoryEntry> entries = atOnce(hands);

        assertThat(entries)
                .filteredOn(entry -> entry.kind().equals("lot.measured"))
                .hasSize(10)
                .allSatisfy(entry -> assertThat(entry.body()).containsPattern("\"after\": ?500(\\.0)?\\b"));
    }

    @Test
    void whatIsGoneIsSaidToBeMissing() {
        String id = saved();
        HistoryEntry removal = store().recipes().remove(id, request());

        assertThatThrownBy(() -> store().recipes().save(id, 1, "Medlar", TEXT, null, request()))
                .isInstanceOf(MissingException.class);
        assertThatThrownBy(() -> store().recipes().keepDraft(id, 1, "{}")).isInstanceOf(MissingException.class);
        assertThatThrownBy(() -> store().recipes().keepDraft("nosuchid", 0, "{}"))
                .isInstanceOf(MissingException.class);
        assertThatThrownBy(() -> store().lots().change("nosuchid", 1, named("Other"), request()))
                .isInstanceOf(MissingException.class);
        assertThatThrownBy(() -> store().makes().append("nosuchid", "note", "{}", null, request()))
                .isInstanceOf(MissingException.class);

        store().recipes().bringBack(id, removal.id(), request());
        assertThat(store().recipes().save(id, 1, "Medlar", TEXT, null, request()))
                .isInstanceOf(Saving.Saved.class);
    }

    @Test
    void anEntryIsUndoneOnceAndOnlyWhereItHappened() {
        String id = saved();
        String other = saved();
        HistoryEntry removal = store().recipes().remove(id, request());

        assertThatThrownBy(() -> store().recipes().bringBack(other, removal.id(), request()))
                .isInstanceOf(MissingException.class);
        store().recipes().bringBack(id, removal.id(), request());
        assertThatThrownBy(() -> store().recipes().bringBack(id, removal.id(), request()))
                .isInstanceOf(SettledException.class);

        Make make = store().makes().begin(id, 2, "{}", request());
        assertThatThrownBy(() -> store().makes().append(make.id(), "undone", "{}", removal.id(), request()))
                .isInstanceOf(MissingException.class);
    }

    @Test
    void theHistoryCannotBeRewritten() {
        String id = saved();
        assertThatThrownBy(() -> meddle("UPDATE history SET kind = 'other'")).hasMessageContaining("appended");
        assertThatThrownBy(() -> meddle("DELETE FROM history")).hasMessageContaining("appended");
        assertThatThrownBy(() -> meddle("UPDATE revision SET title = 'other'")).isInstanceOf(SQLException.class);
        assertThatThrownBy(() -> meddle("DELETE FROM revision")).isInstanceOf(SQLException.class);
        assertThat(store().recipes().revisions(id)).hasSize(1);
    }

    /** Runs a statement as somebody would who goes round the store. */
    abstract void meddle(String sql) throws Exception;

    @Test
    void theHistoryIsReadInPages() {
        Lot lot = shelved("Juniper tincture", 10.0);
        for (int i = 0; i < 5; i++) {
            store().lots().move(new LotMove(lot.id(), 1.0, "more"), request());
        }

        List<HistoryEntry> first = store().history().latest(Long.MAX_VALUE, 3);
        List<HistoryEntry> second = store().history().latest(first.get(2).id(), 3);

        assertThat(first).hasSize(3);
        assertThat(second.get(0).id()).isLessThan(first.get(2).id());
    }

    @Test
    void photosAreKeptByWhatTheyAre() {
        byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 1, 2};
        String id = store().photos().keep(png, request());

        assertThat(store().photos().photo(id)).get().satisfies(photo -> {
            assertThat(photo.type()).isEqualTo("image/png");
            assertThat(photo.bytes()).isEqualTo(png);
        });
        assertThatThrownBy(() -> store().photos().keep("<svg/>".getBytes(java.nio.charset.StandardCharsets.UTF_8), "x"))
                .isInstanceOf(Photos.NoPhoto.class);
    }

    @Test
    void settingsAndSessionsComeAndGo() {
        store().settings().put("units", "us");
        store().settings().put("units", "metric");
        assertThat(store().settings().value("units")).contains("metric");
        store().settings().remove("units");
        assertThat(store().settings().value("units")).isEmpty();

        Instant now = Instant.parse("2026-11-26T10:00:00Z");
        String token = request();
        store().sessions().begin(token, Instant.parse("2999-01-01T00:00:00Z"));
        assertThat(store().sessions().isOn(token, now)).isTrue();
        store().sessions().end(token);
        assertThat(store().sessions().isOn(token, now)).isFalse();
    }

    private String saved() {
        String id = store().recipes().create("Medlar", request());
        store().recipes().save(id, 0, "Medlar", TEXT, null, request());
        return id;
    }

    private Lot shelved(String name, double left) {
        return store().lots()
                .add(List.of(new Lots.NewLot(named(name), left)), request())
                .get(0);
    }

    static LotSheet named(String name) {
        @Nullable String none = null;
        return new LotSheet(
                name,
                "tincture",
                Map.of("strength", "70 %"),
                none,
                null,
                0,
                "ml",
                none,
                none,
                none,
                none,
                none,
                none,
                false,
                null);
    }

    static String request() {
        return UUID.randomUUID().toString();
    }

    static <T> List<T> atOnce(List<Callable<T>> tasks) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(8);
        try {
            List<T> outcomes = new ArrayList<>();
            for (Future<T> future : hands.invokeAll(tasks)) {
                outcomes.add(future.get());
            }
            return outcomes;
        } finally {
            hands.shutdownNow();
        }
    }
}
