package org.stillroom.studio.web.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.frame.StudioServer;

/** The notes of a recipe over real HTTP on a real store. */
class NotesPagesTest {
    private static final String HEAD = """
            stillroom: 1
            title: Bay and lemon
            target: {volume: 1 L, strength: 30 %}
            """;

    @TempDir
    private Path dir;

    private Store store;
    private StudioServer server;

    @BeforeEach
    void open() {
        store = Store.open(new DataFolder(dir.resolve("data")));
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                store,
                List.of(new ComposeRoom(store)),
                new FaultLog(dir.resolve("log")));
    }

    @AfterEach
    void close() {
        server.close();
    }

    private String notes(String text) throws IOException, InterruptedException {
        return notes("en", text);
    }

    private String notes(String language, String text) throws IOException, InterruptedException {
        String recipe = store.recipes().create("Bay and lemon", "r1");
        store.recipes().save(recipe, 0, "Bay and lemon", text, "bay.yaml", "r2");
        URI address = URI.create(server.url()).resolve("/compose/" + recipe + "/notes");
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(address)
                                .header("Accept-Language", language)
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
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
        assertThat(page).contains("Nothing in this recipe brings a constituent").doesNotContain("odour activity");
    }

    @Test
    void aRecipeThatCannotBePlannedSaysSo() throws Exception {
        assertThat(notes(HEAD + "lines:\n  - {use: moon dust, amount: free}\n")).contains("there is nothing to smell");
    }

    /** 50 mg of oil in a litre, 40 % of it linalool by the certificate: 20 mg/L, and nothing else. */
    @Test
    void theAnalysisOfTheLotTakesThePlaceOfTheRange() throws Exception {
        store.lots()
                .add(
                        List.of(new Lots.NewLot(
                                new LotSheet(
                                        "lemon oil",
                                        "essential oil",
                                        Map.of(),
                                        "lot 4",
                                        null,
                                        10,
                                        "ml",
                                        null,
                                        null,
                                        null,
                                        "constituent;percent\nlinalool;40",
                                        null,
                                        null,
                                        false,
                                        null),
                                8)),
                        "r3");
        String page = notes(HEAD + """
                ingredients: [{name: lemon oil, kind: essential oil}]
                lines:
                  - {use: lemon oil, dose: 50 mg/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: make up}
                """);
        assertThat(page).contains("analysis of the lot to use first: lemon oil", "<td>20.0</td>");
        assertThat(page).doesNotContain("d-limonene");
    }

    @Test
    void aPlotIsReadWithTheDecimalMarkOfItsLanguage() throws Exception {
        String page = notes("de", HEAD + """
                ingredients: [{name: lemon oil, kind: essential oil}]
                lines:
                  - {use: lemon oil, dose: 50 mg/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: make up}
                """);
        assertThat(page).contains(">0,1</text>").doesNotContain(">0.1</text>");
    }
}
