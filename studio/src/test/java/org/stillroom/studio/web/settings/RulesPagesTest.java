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
import org.stillroom.core.label.Duty;
import org.stillroom.core.safety.HouseRule;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.web.frame.StudioServer;

/** The pages of rules over real HTTP, without a script. */
class RulesPagesTest {
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
        return post("/settings/house-rules", "version", String.valueOf(version), "rules", rules);
    }

    private HttpResponse<String> post(String path, String... pairs) throws IOException, InterruptedException {
        StringBuilder form = new StringBuilder("token=" + token + "&request=" + UUID.randomUUID());
        for (int i = 0; i < pairs.length; i += 2) {
            form.append('&').append(pairs[i]).append('=');
            form.append(URLEncoder.encode(pairs[i + 1], StandardCharsets.UTF_8));
        }
        return browser.send(
                HttpRequest.newBuilder(address(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form.toString()))
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

    private static String duty(String rate) {
        return """
                # Table: duty
                # Signed off by: T. Ester
                # As of: 2026-10-31
                # Source: made up
                country,above_pct_vol,up_to_pct_vol,per_litre_of_pure_alcohol,currency,as_of,note,status
                EU minimum,1.2,100,RATE,EUR,2026,made up,read
                """.replace("RATE", rate);
    }

    private double dutyOf(String country) {
        return Duty.of(MakersGrounds.of(store).knowledge().tables(), 40.0, 1000.0).stream()
                .filter(duty -> duty.country().equals(country))
                .mapToDouble(Duty::perLitreOfAlcohol)
                .findFirst()
                .orElse(-1.0);
    }

    @Test
    void aTableIsLookedAtThenTakenThenTakenBack() throws Exception {
        HttpResponse<String> look = post("/settings/rules", "file", duty("6.60"));
        assertThat(look.statusCode()).isEqualTo(200);
        assertThat(look.body()).contains("<del>5.50</del>", "<ins>6.60</ins>", "removed", "signed off by T. Ester");
        assertThat(dutyOf("EU minimum")).isEqualTo(5.5);

        HttpResponse<String> taken = post("/settings/rules/take", "file", duty("6.60"), "version", "0");
        assertThat(taken.body()).contains("duty as of 2026-10-31, signed off by T. Ester", "Take back");
        assertThat(dutyOf("EU minimum")).isEqualTo(6.6);
        assertThat(dutyOf("Canada")).isEqualTo(-1.0);

        long entry = store.rules().tables().files().get(0).entry();
        post("/settings/rules/take-back", "entry", String.valueOf(entry));
        assertThat(dutyOf("EU minimum")).isEqualTo(5.5);
        assertThat(get("/history").body()).contains("Table of rules taken", "Table of rules taken back");
    }

    @Test
    void whatChangedSinceThePreviewIsShownAgainAndNothingIsTaken() throws Exception {
        post("/settings/rules/take", "file", duty("6.60"), "version", "0");
        HttpResponse<String> late = post("/settings/rules/take", "file", duty("7.70"), "version", "0");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("<del>6.60</del>", "<ins>7.70</ins>");
        assertThat(dutyOf("EU minimum")).isEqualTo(6.6);
    }

    @Test
    void aFileWithSlipsIsToldByLineAndComesBackAsTyped() throws Exception {
        HttpResponse<String> refused = post("/settings/rules", "file", duty("much"));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("line 6:", "holds no number: much", "EU minimum,1.2,100,much");
    }

    @Test
    void aStopThatAFileLeavesOutIsSaidLoudAndStays() throws Exception {
        String none = """
                # Table: not_for_ingestion
                # Signed off by: T. Ester
                # As of: 2026-10-31
                # Source: made up
                material,reason,program_action,status,names,stops
                wintergreen oil,made up,block,read,wintergreen,no
                """;
        assertThat(post("/settings/rules", "file", none).body())
                .contains("Stays in force: wintergreen oil", "Stays in force: sassafras oil");
        post("/settings/rules/take", "file", none, "version", "0");
        assertThat(MakersGrounds.of(store).knowledge().blocked())
                .anyMatch(row -> row.material().equals("wintergreen oil") && row.stops());
    }
}
