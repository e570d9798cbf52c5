package org.stillroom.studio.web.rest;

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
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.usecase.learn.MislabelledKitchen;
import org.stillroom.studio.web.api.ApiRoom;
import org.stillroom.studio.web.compose.ComposeRoom;
import org.stillroom.studio.web.frame.StudioServer;
import org.stillroom.studio.web.make.MakeRoom;
import org.stillroom.studio.web.shelf.ShelfRoom;

/** What batches tell is offered on the bottle, in Compose, before a make and to programs, over real HTTP. */
class LearntPagesTest {
    private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" content=\"([^\"]+)\"");
    private static final Pattern TAKE = Pattern.compile("value=\"(take:ingredients\\.0[^\"]*)\"");

    @TempDir
    private Path dir;

    private MislabelledKitchen kitchen;
    private StudioServer server;
    private String token = "";
    private final HttpClient browser =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    @BeforeEach
    void open() throws Exception {
        kitchen = new MislabelledKitchen(dir.resolve("data"));
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                kitchen.store(),
                List.of(
                        new ShelfRoom(kitchen.store()),
                        new ComposeRoom(kitchen.store()),
                        new MakeRoom(kitchen.store()),
                        new RestRoom(kitchen.store()),
                        new ApiRoom(kitchen.store())),
                new FaultLog(dir.resolve("log")));
        Matcher found = TOKEN.matcher(get("/shelf", "en"));
        assertThat(found.find()).isTrue();
        token = found.group(1);
    }

    @AfterEach
    void close() {
        server.close();
    }

    private URI address(String path) {
        return URI.create(server.url() + path.substring(1));
    }

    private String get(String path, String language) throws IOException, InterruptedException {
        HttpResponse<String> answer = browser.send(
                HttpRequest.newBuilder(address(path))
                        .header("Accept-Language", language)
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body();
    }

    private HttpResponse<String> post(String path, String... pairs) throws IOException, InterruptedException {
        List<String> fields = new ArrayList<>(List.of("token=" + token, "request=" + UUID.randomUUID()));
        for (int i = 0; i < pairs.length; i += 2) {
            fields.add(URLEncoder.encode(pairs[i], StandardCharsets.UTF_8) + "="
                    + URLEncoder.encode(pairs[i + 1], StandardCharsets.UTF_8));
        }
        return browser.send(
                HttpRequest.newBuilder(address(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(String.join("&", fields)))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private @Nullable String strength() {
        return kitchen.store()
                .lots()
                .lot(kitchen.spirit.id())
                .orElseThrow()
                .sheet()
                .fields()
                .get("strength");
    }

    private Revision recipe() {
        String id = kitchen.store().recipes().heads(false).get(0).id();
        return kitchen.store().recipes().latest(id).orElseThrow();
    }

    @Test
    void whereNothingIsKnownItSaysWhatToDo() throws Exception {
        assertThat(get("/rest/learned", "en")).contains("gauge batches before you add anything");
        assertThat(get("/rest/learned", "de")).contains("Messen Sie Chargen");
    }

    @Test
    void aBottleOffersItAndAPressChangesItAlone() throws Exception {
        kitchen.fourBatches(90.0);
        String lot = "/shelf/lots/" + kitchen.spirit.id();
        assertThat(get(lot, "en"))
                .contains("What your batches tell of it", "by 4 batches; its label says 96.0", "Take 9");
        assertThat(get(lot, "de")).contains("aus 4 Chargen; das Etikett sagt 96,0");
        assertThat(get("/rest/learned", "en")).contains("grain spirit comes out at", "more than its label may be off");
        assertThat(strength()).isEqualTo("96 %");

        String before = recipe().text();
        HttpResponse<String> answer = post(lot + "/take", "field", "strength", "back", "/rest/learned");
        assertThat(answer.headers().firstValue("Location").orElseThrow()).endsWith("/rest/learned");
        assertThat(strength()).startsWith("9").isNotEqualTo("96 %");
        assertThat(recipe().text()).isEqualTo(before);
        assertThat(get(lot, "en")).doesNotContain("Take 9");
        HttpResponse<String> elsewhere = post(lot + "/take", "field", "strength", "back", "https://elsewhere.example");
        assertThat(elsewhere.headers().firstValue("Location").orElseThrow()).contains(lot);
    }

    @Test
    void composeOffersItAtTheLineAndAPressChangesTheIngredient() throws Exception {
        kitchen.fourBatches(90.0);
        String compose = "/compose/" + recipe().recipe();
        Matcher take = TAKE.matcher(get(compose, "en"));
        assertThat(take.find()).isTrue();
        post(
                compose,
                "do",
                take.group(1),
                "based-on",
                "1",
                "title",
                "Juniper",
                "ingredients.0.name",
                "grain spirit",
                "ingredients.0.kind",
                "spirit",
                "ingredients.0.strength",
                "96 %",
                "lines.0.use",
                "grain spirit",
                "lines.0.amount",
                "400 ml");
        String typed = take.group(1).replaceAll(".*strength=([^|]+)\\|.*", "$1");
        assertThat(get(compose, "en")).contains("value=\"" + typed + "\"");
        assertThat(strength()).isEqualTo("96 %");
    }

    @Test
    void beforeAMakeItIsOfferedForTheBottleAndLeadsToTheRecipe() throws Exception {
        kitchen.fourBatches(90.0);
        String begin = get("/make/begin?recipe=" + recipe().recipe(), "en");
        assertThat(begin)
                .contains("form=\"take-" + kitchen.spirit.id() + "-strength\"", "Take it in the recipe")
                .contains("back\" value=\"/make/begin?recipe=");
    }

    @Test
    void programsAreToldAndTakeIt() throws Exception {
        kitchen.fourBatches(90.0);
        assertThat(get("/api/v1/learned", "en")).contains("\"standing\" : \"clear\"", "\"take\" : \"9");
        HttpClient program = HttpClient.newHttpClient();
        HttpRequest.Builder take = HttpRequest.newBuilder(address("/api/v1/lots/" + kitchen.spirit.id() + "/take"))
                .header("Content-Type", "application/json");
        HttpResponse<String> wrong = program.send(
                take.POST(HttpRequest.BodyPublishers.ofString("{\"field\": \"colour\"}"))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        assertThat(wrong.statusCode()).isEqualTo(400);
        HttpResponse<String> taken = program.send(
                take.POST(HttpRequest.BodyPublishers.ofString("{}")).build(), HttpResponse.BodyHandlers.ofString());
        assertThat(taken.statusCode()).isEqualTo(200);
        assertThat(taken.body()).contains("\"strength\", \"tolerance\"");
        assertThat(strength()).isNotEqualTo("96 %");
        HttpResponse<String> again = program.send(
                take.POST(HttpRequest.BodyPublishers.ofString("{}")).build(), HttpResponse.BodyHandlers.ofString());
        assertThat(again.body()).contains("\"taken\" : [ ]");
    }
}
