package org.stillroom.studio.shelffile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShelfTableTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "name,kind,strength\nPear spirit,spirit,\"42,5 %\"\n",
                "name;kind;strength\r\nPear spirit;spirit;42,5 %\r\n",
                "name\tkind\tstrength\nPear spirit\tspirit\t42,5 %",
                "\uFEFFName;Art;Stärke\rPear spirit;Spirituose;42,5 %\r",
                "\"Bezeichnung\" ; \"Art\" ; \"Alkohol\"\n\n\"Pear spirit\" ; \"spirituose\" ; \"42,5 %\"\n\n",
            })
    void anySeparatorAnyLineEndAndBothLanguagesMeanTheSame(String text) {
        ShelfTable table = ShelfTable.read(text);
        assertThat(table.problems()).isEmpty();
        assertThat(table.lines())
                .singleElement()
                .satisfies(line -> assertThat(line.typed())
                        .containsEntry("name", "Pear spirit")
                        .hasEntrySatisfying("kind", kind -> assertThat(kind).isEqualTo("spirit"))
                        .containsEntry("strength", "42,5 %"));
    }

    @Test
    void aLineKnowsWhereItBeginsThoughTextsRunOverSeveral() {
        ShelfTable table = ShelfTable.read("name,kind,note\nA,sugar,\"one\ntwo\nthree\"\nB,sugar,\n");
        assertThat(table.lines()).extracting(ShelfTable.Line::number).containsExactly(2, 5);
        assertThat(table.lines().get(0).typed()).containsEntry("note", "one\ntwo\nthree");
    }

    @Test
    void aDecimalCommaThatSplitsAValueIsToldWithItsLine() {
        ShelfTable table = ShelfTable.read("name,kind,left\nA,sugar,500 g\nB,sugar,1,5 kg\n");
        assertThat(table.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.line()).isEqualTo(3);
            assertThat(problem.finding().message()).isEqualTo("There are 4 values for 3 columns.");
        });
    }

    @Test
    void aColumnThatIsNotKnownIsToldAndPassedOver() {
        ShelfTable table = ShelfTable.read("name;kind;colour\nA;sugar;white\n");
        assertThat(table.problems()).isEmpty();
        assertThat(table.notes())
                .singleElement()
                .satisfies(note -> assertThat(note.finding().message()).contains("colour"));
        assertThat(table.lines().get(0).typed()).doesNotContainKey("colour");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n\n",
                "Pear spirit;spirit;40 %\n",
                "name;name;kind\nA;B;sugar\n",
                "name;kind\n\"A\"x;sugar\n"
            })
    void whatIsNoTableIsRefused(String text) {
        assertThat(ShelfTable.read(text).problems()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+49 30", "-5", "@cmd", "'=1+1", "''-x", "\tx", "it's", "'quoted'", "plain"})
    void noTextIsAFormulaToASpreadsheetAndEachComesBackAsItWas(String text) {
        String table = ShelfTable.write(List.of(Map.of("name", "A", "kind", "sugar", "note", text)), ';');
        assertThat(ShelfTable.read(table).lines().get(0).typed()).containsEntry("note", text);
        assertThat(table).doesNotContainPattern("(?m)[;\"][=+\\-@\\t]");
    }

    @Test
    void everyColumnIsInTheDocumentationWithItsOtherNames() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "shelf-csv.md"));
        for (String key : LotKeys.ALL) {
            assertThat(page).as(key).contains("`" + key + "`");
            Headings.names(key)
                    .forEach(name -> assertThat(page).as(key + ", " + name).contains(name));
        }
    }
}
