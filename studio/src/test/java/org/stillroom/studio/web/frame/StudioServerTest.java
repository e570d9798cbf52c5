package org.stillroom.studio.web.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.store.StoreTrouble;
import org.stillroom.studio.web.settings.SettingsRoom;
import org.stillroom.studio.wording.Words;

/** The door of the studio, over real HTTP. */
class StudioServerTest {
    @TempDir
    private Path dir;

    private Store store;
    private StudioServer server;
    private final HttpClient browser =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    @BeforeEach
    void open() {
        DataFolder folder = new DataFolder(dir.resolve("data"));
        store = Store.open(folder);
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                store,
                List.of(new SettingsRoom(store, folder), new Broken()),
                new FaultLog(dir.resolve("log")));
    }

    @AfterEach
    void close() {
        server.close();
    }

    /** A room whose page fails. */
    private final class Broken implements Room {
        @Override
        public String key() {
            return "make";
        }

        @Override
        public String path() {
            return "/broken";
        }

        @Override
        public String state(Words words) {
            return "";
        }

        @Override
        public void routes(Doors doors) {
            doors.get("/broken", visit -> {
                        throw new IOException("a secret of the inside");
                    })
                    .get("/broken/state", visit -> {
                        throw new IllegalStateException("a secret of a library");
                    })
                    .get("/broken/missing", visit -> store.lots().undo(4711, "once"));
        }
    }

    @Test
    void everyAnswerCarriesAStrictPolicy() throws Exception {
        HttpResponse<String> page = get("/settings");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.headers().firstValue("Content-Security-Policy"))
                .get()
                .asString()
                .startsWith("default-src 'self'")
                .doesNotContain("unsafe");
        assertThat(page.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    }

    @Test
    void pagesAndFaultsAreSentAsTheyAreWritten() throws Exception {
        for (String path : List.of("settings", "nowhere", "broken")) {
            HttpResponse<byte[]> page = browser.send(
                    HttpRequest.newBuilder(URI.create(server.url() + path))
                            .header("Accept-Language", "de")
                            .build(),
                    HttpResponse.BodyHandlers.ofByteArray());
            assertThat(page.headers().firstValue("Content-Type"))
                    .as(path)
                    .get()
                    .asString()
                    .isEqualToIgnoringWhitespace("text/html;charset=utf-8");
            assertThat(new String(page.body(), StandardCharsets.UTF_8))
                    .as(path)
                    .containsPattern("[äöü]")
                    .doesNotContain("\uFFFD");
        }
    }

    @Test
    void aChangeWithItsTokenIsTakenAndOneWithoutIsNot() throws Exception {
        String token = token();

        assertThat(post("/settings", "units=us&token=" + token).statusCode()).isEqualTo(303);
        assertThat(store.settings().value("units")).contains("us");

        assertThat(post("/settings", "units=metric").statusCode()).isEqualTo(403);
        assertThat(post("/settings", "units=metric&token=somethingelse").statusCode())
                .isEqualTo(403);
        assertThat(store.settings().value("units")).contains("us");
    }

    @Test
    void aChangeFromAnotherSiteIsRefusedEvenWithTheToken() throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.url() + "settings"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("units=us&token=" + token()));

        assertThat(send(request.copy().header("Origin", "http://elsewhere.example"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(send(request.copy().header("Sec-Fetch-Site", "cross-site")).statusCode())
                .isEqualTo(403);
        assertThat(store.settings().value("units")).isEmpty();
    }

    @Test
    void aFaultShowsAnIdAndNothingOfTheInside() throws Exception {
        HttpResponse<String> page = get("/broken");

        assertThat(page.statusCode()).isEqualTo(500);
        assertThat(page.body()).contains("id ").doesNotContain("secret").doesNotContain("Exception");
        assertThat(dir.resolve("log")).content().contains("a secret of the inside");
    }

    @Test
    void aFaultOfALibraryIsNotTakenForSomethingThePersonDid() throws Exception {
        assertThat(get("/broken/state").statusCode()).isEqualTo(500);
        assertThat(get("/broken/state").body()).doesNotContain("secret");
        assertThat(get("/broken/missing").statusCode()).isEqualTo(404);
        assertThat(get("/broken/missing").body()).doesNotContain("4711");
    }

    @Test
    void everyRefusalSaysWhatToDo() throws Exception {
        HttpResponse<String> noSuchChange = post("/history", "token=" + token());
        assertThat(noSuchChange.statusCode()).isEqualTo(405);
        assertThat(noSuchChange.body()).contains("This address does not take that.");

        HttpResponse<String> tooMuch = post("/settings", "token=" + token() + "&units=" + "x".repeat(10_000_000));
        assertThat(tooMuch.statusCode()).isEqualTo(413);
        assertThat(tooMuch.body()).contains("larger than the studio takes");
    }

    @Test
    void aRequestToANameThatSomebodyPointedHereIsRefused() throws Exception {
        // the client of the JDK sets Host by itself, so the request is written by hand
        URI base = URI.create(server.url());
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), base.getPort())) {
            socket.getOutputStream()
                    .write("GET /settings HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 403").doesNotContain("name=\"units\"");
        }
    }

    @Test
    void whatIsNotThereSaysSo() throws Exception {
        assertThat(get("/nowhere").statusCode()).isEqualTo(404);
        assertThat(get("/nowhere").body()).contains("There is nothing at this address.");
        assertThat(get("/assets/../secret.css").statusCode()).isIn(400, 404);
        assertThat(get("/assets/nothing.css").statusCode()).isEqualTo(404);
    }

    @Test
    void anAssetIsSentOnceAndThenOnlyConfirmed() throws Exception {
        HttpResponse<String> first = get("/assets/tokens.css");
        String tag = first.headers().firstValue("ETag").orElseThrow();

        HttpResponse<String> again = send(HttpRequest.newBuilder(URI.create(server.url() + "assets/tokens.css"))
                .header("If-None-Match", tag));

        assertThat(first.statusCode()).isEqualTo(200);
        assertThat(again.statusCode()).isEqualTo(304);
    }

    @Test
    void aNetworkIsLetInOnlyWithAPassphrase() throws Exception {
        Store other = Store.open(new DataFolder(dir.resolve("other")));
        assertThatThrownBy(() -> listening(other))
                .isInstanceOf(StoreTrouble.class)
                .hasMessageContaining("passphrase");

        Passphrase.set(other, "nine medlars in a jar");
        try (StudioServer open = listening(other)) {
            URI base = URI.create(open.url());
            HttpResponse<String> sentAway = send(HttpRequest.newBuilder(base.resolve("/settings")));
            assertThat(sentAway.statusCode()).isEqualTo(303);

            String token =
                    token(send(HttpRequest.newBuilder(base.resolve("/sign-in"))).body());
            assertThat(signIn(base, "wrong wrong wrong", token).statusCode()).isEqualTo(401);
            assertThat(signIn(base, "nine+medlars+in+a+jar", token).statusCode())
                    .isEqualTo(303);
            assertThat(send(HttpRequest.newBuilder(base.resolve("/settings"))).statusCode())
                    .isEqualTo(200);
        }
    }

    @Test
    void whoGuessesWaitsLongerEachTime() {
        Moment moment = new Moment();
        Patience patience = new Patience(moment);
        for (int i = 0; i < 4; i++) {
            patience.missed("10.0.0.9");
        }
        assertThat(patience.wait("10.0.0.9")).isZero();
        patience.missed("10.0.0.9");
        assertThat(patience.wait("10.0.0.9")).isEqualTo(Duration.ofSeconds(2));
        patience.missed("10.0.0.9");
        assertThat(patience.wait("10.0.0.9")).isEqualTo(Duration.ofSeconds(4));
        assertThat(patience.wait("10.0.0.8")).isZero();
        moment.now = moment.now.plusSeconds(5);
        assertThat(patience.wait("10.0.0.9")).isZero();
    }

    /** A clock that stands until it is moved. */
    private static final class Moment extends Clock {
        private Instant now = Instant.parse("2026-11-26T10:00:00Z");

        @Override
        public java.time.ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private StudioServer listening(Store other) {
        return StudioServer.start(
                new StudioServer.Settings(0, "0.0.0.0"),
                other,
                List.of(new SettingsRoom(other, new DataFolder(dir))),
                new FaultLog(dir.resolve("log")));
    }

    private HttpResponse<String> signIn(URI base, String passphrase, String token) throws Exception {
        return send(HttpRequest.newBuilder(base.resolve("/sign-in"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("passphrase=" + passphrase + "&token=" + token)));
    }

    private String token() throws Exception {
        return token(get("/settings").body());
    }

    private static String token(String page) {
        String before = "name=\"form-token\" content=\"";
        int start = page.indexOf(before) + before.length();
        return page.substring(start, page.indexOf('"', start));
    }

    private HttpResponse<String> get(String path) throws Exception {
        return send(HttpRequest.newBuilder(URI.create(server.url() + path.substring(1))));
    }

    private HttpResponse<String> post(String path, String body) throws Exception {
        return send(HttpRequest.newBuilder(URI.create(server.url() + path.substring(1)))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return browser.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }
}
