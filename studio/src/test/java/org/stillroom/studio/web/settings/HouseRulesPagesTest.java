package org.stillroom.studio.web.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.safety.HouseRule;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.web.frame.StudioServer;

/** The page of the house rules over real HTTP, without a script. */
class HouseRulesPagesTest {
    private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" content=\"([^\"]+)\"");

    @TempDir
    private Path dir;

    private Store store;
    private StudioServer server;
    private String token = "";
    private final HttpClient browser = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();

    @BeforeEach
    void open() throws Exception {
        DataFolder folder = new DataFolder(dir.resolve("data"));
        store = Store.open(folder);
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                store,
                List.of(new SettingsRoom(store, folder)),
                new FaultLog(dir.resolve("log")));
        Matcher found = TOKEN.matcher(get("/settings/house-rules").body());
        assertThat(found.find()).isTrue();
        token = found.group(1);
    }

    @AfterEach
    void close() {
        server.close();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return browser.send(HttpRequest.newBuilder(address(path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> write(String rules, int version) throws IOException, InterruptedException {
        String form = "token=" + token + "&request=" + UUID.randomUUID() + "&version=" + version + "&rules="
                + URLEncoder.encode(rules, StandardCharsets.UTF_8);
        return browser.send(
                HttpRequest.newBuilder(address("/settings/house-rules"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private URI address(String path) {
        return URI.create(server.url() + path.substring(1));
    }

    @Test
    void whatIsWrittenHoldsTheDrinksOfTheStudio() throws Exception {
        HttpResponse<String> kept = write("# ours\r\nno tonka\r\nat most 0,6 g/L oil", 0);

        assertThat(kept.statusCode()).isEqualTo(200);
        assertThat(kept.body()).contains("The house rules are in force.", "at most 0,6 g/L oil");
        assertThat(MakersGrounds.of(store).house().rules())
                .extracting(HouseRule::written)
                .containsExactly("no tonka", "at most 0,6 g/L oil");
        assertThat(get("/history").body()).contains("House rules written");
    }

    @Test
    void aSlipComesBackWithItsLineAndWhatWasTypedAndChangesNothing() throws Exception {
        write("no tonka", 0);
        HttpResponse<String> refused = write("no tonka\nat most 3 <b>lots</b>", 1);

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("line 2:", "at most 3 &lt;b&gt;lots");
        assertThat(store.rules().house().text()).isEqualTo("no tonka");
    }

    @Test
    void whoWritesSecondSeesBoth() throws Exception {
        write("no tonka", 0);
        HttpResponse<String> late = write("no sage", 0);

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("no tonka", "no sage");
        assertThat(store.rules().house().text()).isEqualTo("no tonka");
    }
}
