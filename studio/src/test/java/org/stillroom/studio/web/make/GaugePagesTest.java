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
        assertThat(page.body()).contains("Which readings serve best here");
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
