package org.stillroom.studio.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.frame.StudioServer;

/** Gauging in the browser over real HTTP, without a script. */
class GaugePagesTest {
    @TempDir
    private Path dir;

    private StudioServer server;
    private Store store;
    private final HttpClient browser = HttpClient.newHttpClient();

    @BeforeEach
    void open() {
        store = Store.open(new DataFolder(dir.resolve("data")));
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                store,
                List.of(new MakeRoom(store)),
                new FaultLog(dir.resolve("log")));
    }

    @AfterEach
    void close() {
        server.close();
    }

    private HttpResponse<String> get(String path, String language) throws IOException, InterruptedException {
        return browser.send(
                HttpRequest.newBuilder(URI.create(server.url() + path.substring(1)))
                        .header("Accept-Language", language)
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static String field(String name, String text) {
        return name + "=" + URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Test
    void makeLeadsToIt() throws Exception {
        assertThat(get("/make", "en").body()).contains("/make/gauge");
    }

    @Test
    void readingsAreAnsweredWithAnEstimateAndACorrection() throws Exception {
        HttpResponse<String> page = get(
                "/make/gauge?" + field("density", "1.0295 g/ml") + "&" + field("refractometer", "25.9 Bx") + "&"
                        + field("volume", "1.9 L") + "&" + field("to-strength", "40 %") + "&" + field("with", "96%"),
                "en");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("What is in it", "Hidden from a spirit hydrometer", "Least added", "spirit of 96%");
    }

    @Test
    void anInstrumentOfTheShelfIsChosenAndPutsItsReadingRight() throws Exception {
        assertThat(get("/make/gauge", "en").body())
                .contains("Calibrate your hydrometer")
                .doesNotContain("own-hydrometer");
        Instrument own = store.instruments()
                .add(new InstrumentSheet("Spindle", "hydrometer", Map.of("scale", "SG", "marks", "0.002"), null), "a");
        store.instruments().calibrate(own.id(), 1, new Calibration("2026-11-26", 0.002, 0.001, Map.of()), "b");

        HttpResponse<String> page = get(
                "/make/gauge?" + field("hydrometer", "SG 1.0316") + "&" + field("refractometer", "25.9 Bx") + "&"
                        + field("own-hydrometer", own.id()),
                "en");
        assertThat(page.body()).contains("1.0296 SG 20/20", "shows 0.002", "Spindle, calibrated");
        assertThat(page.body()).contains("value=\"" + own.id() + "\" selected");
    }

    @Test
    void beforeAnythingIsMeasuredItSaysWhatServes() throws Exception {
        String before = get("/make/gauge", "en").body();
        assertThat(before)
                .contains("Before you measure", "Only hydrometer and refractometer", "which wants 100 to 250");
        assertThat(before.indexOf("h-before")).isLessThan(before.indexOf("name=\"hydrometer\""));

        HttpResponse<String> kit = get(
                "/make/gauge?kit=HYDROMETER_AND_REFRACTOMETER&" + field("about-strength", "27 %") + "&"
                        + field("about-sugar", "165 g/L") + "&" + field("about-volume", "700 ml"),
                "en");
        assertThat(kit.body())
                .contains("<b>hydrometer + refractometer</b>", "± 1.8 % vol, ± 6 g/L", "much of so small a batch")
                .contains("Sugar hides some 27.0 % vol")
                .doesNotContain("drying a weighed sample");
        HttpResponse<String> ticked = get("/make/gauge?can-HYDROMETER=yes&" + field("about-strength", "27 %"), "de");
        assertThat(ticked.body()).contains("Nichts davon unterscheidet");
        HttpResponse<String> wrong = get("/make/gauge?" + field("about-strength", "strong"), "en");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("value=\"strong\"", "aria-invalid=\"true\"");
    }

    @Test
    void theShelfAloneIsAWayOnceSomethingStandsThere() throws Exception {
        String asked = "/make/gauge?" + field("density", "1.0295 g/ml") + "&" + field("refractometer", "25.9 Bx") + "&"
                + field("volume", "1.9 L") + "&" + field("to-sugar", "200 g/L") + "&"
                + field("restore", "bay tincture=40 ml@60 %");
        assertThat(get(asked, "en").body())
                .contains("bay tincture", "flavour of what was named stays")
                .doesNotContain("Only what is on the shelf");
        LotSheet sheet = new LotSheet(
                "white sugar",
                "sugar",
                Map.of(),
                null,
                null,
                1000,
                "g",
                null,
                null,
                null,
                null,
                null,
                null,
                false,
                null);
        store.lots().add(List.of(new Lots.NewLot(sheet, 820)), "lot");
        assertThat(get(asked, "de").body()).contains("Nur was im Regal steht", "white sugar");
    }

    @Test
    void itIsSaidInGermanToo() throws Exception {
        HttpResponse<String> page =
                get("/make/gauge?" + field("density", "1.0295 g/ml") + "&" + field("refractometer", "25.9 Bx"), "de");
        assertThat(page.body()).contains("Was darin ist", "Vor der Alkoholspindel verborgen");
    }

    @Test
    void whatIsNotUnderstoodStaysInItsFieldWithTheReason() throws Exception {
        HttpResponse<String> page =
                get("/make/gauge?" + field("density", "heavy") + "&" + field("refractometer", "25.9 Bx"), "en");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("value=\"heavy\"", "value=\"25.9 Bx\"", "aria-invalid=\"true\"");
    }

    @Test
    void anUnknownBatchIsNotThere() throws Exception {
        assertThat(get("/make/gauge?batch=nowhere", "en").statusCode()).isEqualTo(404);
    }
}
