package org.stillroom.studio.web.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.compose.ComposeRoom;
import org.stillroom.studio.web.frame.StudioServer;
import org.stillroom.studio.web.make.MakeRoom;

/** What is in a drink, its label, and what a stop holds back, over real HTTP on a real store. */
class SafetyPagesTest {
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    private static final String SAGE = recipe("sage oil", "essential oil", "dose: 0.03 g/L", "");
    private static final String FOXGLOVE = recipe("foxglove", "dried plant", "amount: 1 g", "");

    @TempDir
    private Path dir;

    private Store store;
    private StudioServer server;
    private final HttpClient browser =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    private static String recipe(String name, String kind, String much, String more) {
        return """
                stillroom: 1
                title: Meadow cup
                target: {volume: 1 L, strength: 30 %, sugar: 200 g/L}
                ingredients:
                  - {name: NAME, kind: KIND}
                lines:
                  - {use: NAME, MUCH}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """.replace("NAME", name).replace("KIND", kind).replace("MUCH", much) + more;
    }

    @BeforeEach
    void open() {
        store = Store.open(new DataFolder(dir.resolve("data")));
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                store,
                List.of(new ComposeRoom(store), new MakeRoom(store), new SafetyRoom(store)),
                new FaultLog(dir.resolve("log")));
    }

    @AfterEach
    void close() {
        server.close();
    }

    private String saved(String text) {
        String id = store.recipes().create("Meadow cup", request());
        store.recipes().save(id, 0, "Meadow cup", text, null, request());
        return id;
    }

    private static String request() {
        return UUID.randomUUID().toString();
    }

    private HttpResponse<String> get(String path, String language) throws Exception {
        return browser.send(
                HttpRequest.newBuilder(URI.create(server.url()).resolve(path))
                        .header("Accept-Language", language)
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private String page(String path) throws Exception {
        HttpResponse<String> answer = get(path, "en");
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body();
    }

    private HttpResponse<String> post(String path, String token, Map<String, String> fields) throws Exception {
        String body = fields.entrySet().stream()
                .map(each -> each.getKey() + "=" + URLEncoder.encode(each.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return browser.send(
                HttpRequest.newBuilder(URI.create(server.url()).resolve(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body + "&token=" + token + "&request=" + request()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static String token(String page) {
        Matcher token = TOKEN.matcher(page);
        assertThat(token.find()).isTrue();
        return token.group(1);
    }

    @Test
    void theSubstancesStandInATableWithWhoDecides() throws Exception {
        String recipe = saved(SAGE);
        assertThat(page("/safety/" + recipe))
                .contains("thujone", "mg a serving", "A serving of 30 mL, 2 a day, a body of 70 kg; law of: EU, US.")
                .contains("Law, EU", "Law, US", "Guidance, no law", "UK CMOs, 2016")
                .contains("most adverse source group");
        assertThat(get("/safety/" + recipe, "de").body())
                .contains("Thujon", "mg je Glas", "Recht, EU", "Richtwert, kein Recht", "UK CMOs, 2016")
                .doesNotContain("A serving holds");
    }

    @Test
    void whoDrinksAndWhereIsRememberedAndJudgesPlansToo() throws Exception {
        String recipe = saved(SAGE);
        String before = page("/compose/" + recipe);
        assertThat(before).contains("Law, US");
        String token = token(page("/safety/" + recipe));
        assertThat(post("/safety/" + recipe, token, Map.of("serving", "50 ml", "body", "60 kg", "place", "EU"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(page("/safety/" + recipe))
                .contains("A serving of 50 mL, 2 a day, a body of 60 kg; law of: EU.", "value=\"50 ml\"")
                .doesNotContain("Law, US");
        assertThat(page("/compose/" + recipe)).contains("2 glasses of 50 mL").doesNotContain("Law, US");
        assertThat(page("/label/" + recipe)).contains("energy of a serving, 50 mL");
        post("/safety/" + recipe, token, Map.of("serving", ""));
        assertThat(page("/safety/" + recipe)).contains("A serving of 30 mL, 2 a day, a body of 70 kg; law of: EU, US.");
    }

    @Test
    void whatIsNotUnderstoodComesBackAsItWasTyped() throws Exception {
        String recipe = saved(SAGE);
        String token = token(page("/safety/" + recipe));
        HttpResponse<String> answer = post("/safety/" + recipe, token, Map.of("serving", "a thimble", "place", "Mars"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"a thimble\"", "Mars", "Write one of: EU, US.");
        assertThat(store.settings().value("serving")).isEmpty();
        assertThat(get("/label/" + recipe + "?bottle=large", "en").statusCode()).isEqualTo(422);
    }

    /** 30 % vol and 200 g/L of sucrose: a liqueur (100 g/L as invert), no creme de (250). */
    @Test
    void theLabelStandsBeforeAnythingIsBottled() throws Exception {
        String recipe = saved(recipe("caraway oil", "essential oil", "dose: 0.02 g/L", ""));
        assertThat(page("/label/" + recipe))
                .contains("liqueur (general)", "Stated strength 30.0 % vol; the bottle may hold 29.7 to 30.3 % vol.")
                .contains(
                        "energy per 100 mL",
                        "UK, unit",
                        "sugar 210.5, wanted at least 250.0 g/L as invert: off by 39.5")
                .contains(
                        "/label/" + recipe + "/label.svg",
                        "700 mL is a lawful size for spirits in the EU and in the USA.");
        assertThat(get("/label/" + recipe, "de").body())
                .contains("Likör (allgemein)", "Angegebener Alkoholgehalt 30,0 % vol", "Zucker 210,5")
                .doesNotContain(">liqueur (general)<");
        HttpResponse<String> svg = get("/label/" + recipe + "/label.svg?bottle=500%20ml", "en");
        assertThat(svg.headers().firstValue("Content-Type"))
                .get()
                .asString()
                .isEqualToIgnoringCase("image/svg+xml; charset=utf-8");
        assertThat(svg.body()).contains("30.0 % vol · 500 mL", "Homemade – not for sale");
    }

    @Test
    void whatALabelIsRefusedIsSaidInGermanAndTheRestStays() throws Exception {
        String recipe = saved(recipe("caraway oil", "essential oil", "dose: 0.02 g/L", ""));
        HttpResponse<String> refused = get("/label/" + recipe + "?called=Kaffeesahne&bottle=350%20ml", "de");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("<b>Bezeichnung:</b>", "value=\"Kaffeesahne\"", "Likör (allgemein)")
                .contains("label.svg?bottle=350+ml")
                .doesNotContain("<b>called:</b>");
        assertThat(get("/label/" + recipe + "?duty=Vereinigtes%20K%C3%B6nigreich&called=Lik%C3%B6r", "de")
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void whatNobodyIsToDrinkIsHeldBackEverywhere() throws Exception {
        String recipe = saved(FOXGLOVE);
        assertThat(page("/compose/" + recipe))
                .containsPattern("<p class=\"halt is-over\" id=\"halt\">.*stop: ")
                .contains("cardiac glycosides");
        String safety = page("/safety/" + recipe);
        assertThat(safety.indexOf("cardiac glycosides")).isPositive().isLessThan(safety.indexOf("id=\"h-in\""));
        assertThat(page("/label/" + recipe))
                .contains("What speaks against it as a drink", "No labels are drawn")
                .doesNotContain("<img");
        for (String drawn : List.of("/label.svg", "/labels.pdf")) {
            HttpResponse<String> refused = get("/label/" + recipe + drawn, "en");
            assertThat(refused.statusCode()).as(drawn).isEqualTo(422);
            assertThat(refused.body()).as(drawn).contains("not for drinking", "cardiac glycosides");
        }
        String begin = page("/make/begin?recipe=" + recipe);
        assertThat(begin)
                .contains("Not for drinking, so it is not made here", "cardiac glycosides", "Leave it out.")
                .doesNotContain("action=\"/make/begin\"");
        HttpResponse<String> begun = post(
                "/make/begin", token(page("/safety/" + recipe)), Map.of("recipe", recipe, "revision", "1", "size", ""));
        assertThat(begun.statusCode()).isEqualTo(422);
        assertThat(store.makes().open()).isEmpty();
        assertThat(get("/make/begin?recipe=" + recipe, "de").body())
                .contains("Nicht zum Trinken", "Lassen Sie es weg.")
                .doesNotContain("cardiac glycosides");
    }

    @Test
    void aLookAlikeStandsWhereItGoesInAndAMethodWhereItIsDone() throws Exception {
        String recipe = saved(recipe(
                "elderflower",
                "fresh plant, contains: {water: 80 %}",
                "amount: 30 g",
                "steps: [\"Seal the jars and simmer them in a water bath\"]\n"));
        assertThat(page("/make/begin?recipe=" + recipe)).contains("action=\"/make/begin\"", "look-alikes", "pressure");
        assertThat(page("/compose/" + recipe)).containsPattern("<p class=\"halt is-near\" id=\"halt\">.*caution: ");
        String token = token(page("/safety/" + recipe));
        HttpResponse<String> begun = post("/make/begin", token, Map.of("recipe", recipe, "revision", "1", "size", ""));
        String make = begun.headers().firstValue("Location").orElseThrow();
        assertThat(page(make + "?step=1/line-1")).contains("white umbels on herbs without wood");
        assertThat(page(make + "?step=1/own-1")).contains("A closed jar in hot water builds pressure");
    }
}
