package org.stillroom.studio.web.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.Bottles;
import org.stillroom.studio.web.frame.Guest;

/** The notes of a recipe over real HTTP on a real store. */
class NotesPagesTest {
    private static final String HEAD = """
            stillroom: 1
            title: Bay and lemon
            target: {volume: 1 L, strength: 30 %}
            """;

    private static final String LEMON = HEAD + """
            ingredients: [{name: lemon oil, kind: essential oil}]
            lines:
              - {use: lemon oil, dose: 50 mg/L}
              - {use: spirit 96 %, amount: free}
              - {use: water, amount: make up}
            """;

    @TempDir
    private Path dir;

    private Guest guest;
    private Store store;

    @BeforeEach
    void open() {
        guest = new Guest(dir, ComposeRoom::new);
        store = guest.store();
    }

    @AfterEach
    void close() {
        guest.close();
    }

    private String notes(String text) throws IOException, InterruptedException {
        return notes("en", text);
    }

    private String notes(String language, String text) throws IOException, InterruptedException {
        String recipe = store.recipes().create("Bay and lemon", "r1");
        store.recipes().save(recipe, 0, "Bay and lemon", text, "bay.yaml", "r2");
        return guest.page("/compose/" + recipe + "/notes", language);
    }

    @Test
    void aRecipeThatIsNotThereIsMissingAndNoFault() throws Exception {
        for (String path : new String[] {"/compose/zzzz", "/compose/zzzz/notes", "/compose/zzzz/versions"}) {
            assertThat(guest.get(path).statusCode()).as(path).isEqualTo(404);
        }
    }

    @Test
    void theNotesAreDrawnAndSaidInWords() throws Exception {
        String page = notes(HEAD + """
                ingredients: [{name: lemon oil, kind: essential oil}]
                lines:
                  - {use: lemon oil, dose: 0.1 g/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: make up}
                """);
        assertThat(page).contains("<svg", "In front: ", "times its threshold", "d-limonene", "At 30.0\u00a0% vol");
    }

    @Test
    void withoutAnyOilThatIsSaid() throws Exception {
        String page = notes(HEAD + """
                lines:
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: make up}
                """);
        assertThat(page).contains("No line of this recipe brings a constituent").doesNotContain("odour activity");
    }

    @Test
    void aRecipeThatCannotBePlannedSaysSo() throws Exception {
        assertThat(notes(HEAD + "lines:\n  - {use: moon dust, amount: free}\n")).contains("there is nothing to smell");
    }

    private void putOnShelf(String lot, String linalool) {
        store.lots()
                .add(
                        List.of(Bottles.read(
                                "name",
                                "lemon oil",
                                "kind",
                                "essential oil",
                                "left",
                                "8 ml",
                                "lot",
                                lot,
                                "analysis",
                                "constituent;percent\nlinalool;" + linalool)),
                        lot);
    }

    /** 50 mg of oil in a litre, 40 % of it linalool by the certificate: 20 mg/L; what else is usual is told to be missing and not counted. */
    @Test
    void theAnalysisOfTheLotTakesThePlaceOfTheRange() throws Exception {
        putOnShelf("lot 4", "40");
        String page = notes(LEMON);
        assertThat(page).contains("By the analyses of your lots: lemon oil", "<td data-of=\"mg/L\">20.0</td>");
        assertThat(page).contains("Its analysis names 40.0 % of the oil", "Usual in it and not named: ");
        assertThat(page).doesNotContain("<th scope=\"row\" lang=\"en\">d-limonene");
    }

    /** Either bottle may be poured: from 20 to 30 mg/L, 25 in the middle. */
    @Test
    void betweenTwoLotsThereIsARange() throws Exception {
        putOnShelf("lot 4", "40");
        putOnShelf("lot 5", "60");
        assertThat(notes(LEMON)).contains("<td data-of=\"mg/L\">25.0</td>", "20.0 to 30.0");
    }

    @Test
    void aPlotIsReadWithTheDecimalMarkOfItsLanguage() throws Exception {
        String page = notes("de", LEMON);
        assertThat(page).contains(">0,1</text>").doesNotContain(">0.1</text>");
    }
}
