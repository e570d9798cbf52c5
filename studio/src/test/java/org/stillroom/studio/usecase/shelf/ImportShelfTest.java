package org.stillroom.studio.usecase.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.ImportShelf.Preview;

class ImportShelfTest {
    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(new DataFolder(folder));
        store.lots()
                .add(
                        List.of(
                                Bottles.read(
                                        "name",
                                        "Pear spirit",
                                        "kind",
                                        "spirit",
                                        "strength",
                                        "42 %",
                                        "left",
                                        "430 ml",
                                        "full",
                                        "700 ml",
                                        "note",
                                        "=from\nthe fair",
                                        "label",
                                        "lot 2"),
                                Bottles.read(
                                        "name",
                                        "Lavender oil",
                                        "kind",
                                        "essential oil",
                                        "density",
                                        "0.886 g/ml",
                                        "left",
                                        "8.5 ml",
                                        "analysis",
                                        "name;%\nlinalool;32,5")),
                        "r1");
    }

    @AfterEach
    void close() {
        store.close();
    }

    private Preview preview(String table) {
        return ImportShelf.preview(table, store.lots().all(), OunceMeaning.US_FLUID);
    }

    @Test
    void whatWasHandedOutComesInAgainWithoutLossAndChangesNothing() {
        for (char separator : new char[] {',', ';', '\t'}) {
            Preview preview = preview(ExportShelf.table(store.lots().all(), separator));
            assertThat(preview.problems()).isEmpty();
            assertThat(preview.same()).hasSize(2);
            assertThat(preview.isAcceptable()).isFalse();
        }
    }

    @Test
    void anExportFillsAnEmptyShelfWithTheSameLots(@TempDir Path other) {
        String table = ExportShelf.table(store.lots().all(), ';');
        try (Store second = Store.open(new DataFolder(other))) {
            Preview preview = ImportShelf.preview(table, second.lots().all(), OunceMeaning.US_FLUID);
            assertThat(ImportShelf.accept(preview, second.lots(), "r")).isTrue();
            assertThat(second.lots().all())
                    .extracting(Lot::sheet)
                    .isEqualTo(store.lots().all().stream().map(Lot::sheet).toList());
        }
    }

    @Test
    void aPreviewTellsWhatWouldBeAddedChangedAndLeftAloneAndChangesNothing() {
        Preview preview =
                preview("name;label;kind;strength;left\nPear spirit;lot 2;spirit;43 %;400 ml\nRum;;spirit;54 %;1 L\n");
        assertThat(preview.added()).hasSize(1);
        assertThat(preview.changed())
                .singleElement()
                .satisfies(item -> assertThat(item.differences())
                        .extracting(
                                difference -> difference.key() + " " + difference.before() + " " + difference.after())
                        .containsExactly("left 430 ml 400 ml", "strength 42 % 43 %"));
        assertThat(store.lots().all()).hasSize(2);

        assertThat(ImportShelf.accept(preview, store.lots(), "r2")).isTrue();
        assertThat(store.lots().all()).hasSize(3);
        assertThat(changedLot().left()).isEqualTo(400.0);
        assertThat(changedLot().sheet().note()).as("a column that is not there").isEqualTo("=from\nthe fair");
    }

    private Lot changedLot() {
        return store.lots().all().stream()
                .filter(lot -> lot.sheet().name().equals("Pear spirit"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aShelfThatWasChangedSinceThePreviewIsLeftAlone() {
        Preview preview = preview("name;label;kind;strength\nPear spirit;lot 2;spirit;43 %\nRum;;spirit;54 %\n");
        store.lots().change(changedLot().id(), 1, changedLot().sheet(), "r3");
        assertThat(ImportShelf.accept(preview, store.lots(), "r4")).isFalse();
        assertThat(store.lots().all()).hasSize(2);
    }

    @Test
    void allLinesThatAreWrongAreToldAtOnce() {
        Preview preview = preview("""
                name;kind;strength;left
                ;spirit;40 %;1 L
                Gin;spirt;40 %;1 L
                Rum;spirit;;12 drops
                Feijoa;fresh plant;;1 kg
                """);
        assertThat(preview.problems())
                .extracting(problem -> problem.line() + " " + problem.finding().where())
                .containsExactlyInAnyOrder("2 name", "3 kind", "4 strength", "4 left", "5 water");
        assertThat(preview.isAcceptable()).isFalse();
    }

    @Test
    void aNameThatMeansTwoLotsOrStandsTwiceIsAsked() {
        store.lots()
                .add(
                        List.of(
                                Bottles.read("name", "Sugar", "kind", "sugar"),
                                Bottles.read("name", "Sugar", "kind", "sugar")),
                        "r5");
        assertThat(preview("name;kind\nSugar;sugar\n").problems())
                .extracting(problem -> problem.finding().rule())
                .containsExactly("table-which-lot");
        assertThat(preview("name;label;kind;strength\nPear spirit;lot 2;spirit;42 %\npear spirit;Lot 2;spirit;42 %\n")
                        .problems())
                .extracting(problem -> problem.finding().rule())
                .containsExactly("table-lot-twice");
    }
}
