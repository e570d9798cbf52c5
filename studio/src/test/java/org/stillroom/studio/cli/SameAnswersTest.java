package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;
import org.stillroom.studio.answer.desk.Manner;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.api.ApiRoom;
import org.stillroom.studio.web.frame.StudioServer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Whoever asks the same question of the command line and of the running studio reads the same answer. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SameAnswersTest {
    private static final JsonMapper JSON = new JsonMapper();

    private StudioServer server;

    @BeforeAll
    void open(@TempDir Path dir) {
        Store store = Store.open(new DataFolder(dir.resolve("data")));
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                store,
                List.of(new ApiRoom(store)),
                new FaultLog(dir.resolve("log")));
    }

    @AfterAll
    void close() {
        server.close();
    }

    static Stream<DeskQuestion> questions() {
        return DeskQuestions.all().stream();
    }

    @ParameterizedTest
    @MethodSource("questions")
    void aQuestionAtTheDesk(DeskQuestion question) throws Exception {
        ObjectNode body = JSON.createObjectNode();
        StringBuilder line = new StringBuilder(question.name());
        for (Manner.Given given : question.example()) {
            line.append(" --").append(given.part()).append(' ').append(given.value());
            boolean repeated =
                    question.parts().stream().anyMatch(part -> part.name().equals(given.part()) && part.isRepeated());
            if (repeated) {
                body.withArray(given.part()).add(given.value());
            } else {
                body.put(given.part().replace('-', '_'), given.value());
            }
        }
        body.put("explain", true);

        assertThat(asked("/" + question.name(), body))
                .isEqualTo(Desk.ask(line + " --explain").json());
    }

    @Test
    void oilsAndFlags() throws Exception {
        JsonNode liquid = JSON.readTree("{\"ethanol\": \"300g\", \"water\": \"600g\", \"solids\": \"3g\","
                + " \"oil\": {\"limonene\": \"0.4g\"}, \"temperature\": \"15C\"}");
        assertThat(asked("/liquid", liquid))
                .isEqualTo(
                        Desk.ask("liquid --ethanol 300g --water 600g --solids 3g --oil limonene=0.4g --temperature 15C")
                                .json());
        JsonNode weighed =
                JSON.readTree("{\"mass\": \"474g\", \"flask\": \"500ml\", \"in_air\": true, \"temperature\": \"20C\"}");
        assertThat(asked("/strength", weighed))
                .isEqualTo(Desk.ask("strength --mass 474g --flask 500ml --in-air --temperature 20C")
                        .json());
        assertThat(asked("/guide", null)).isEqualTo(Desk.ask("guide").json());
    }

    static Stream<Path> recipes() throws Exception {
        List<Path> alone = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("..", "examples"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".yaml")).toList()) {
                if (!Files.readString(file).contains("from:")) {
                    alone.add(file);
                }
            }
        }
        assertThat(alone).hasSizeGreaterThan(2);
        return alone.stream();
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void thePlanOfARecipe(Path file) throws Exception {
        ObjectNode body = JSON.createObjectNode()
                .put("recipe", Files.readString(file))
                .put("shopping", true)
                .put("explain", true);
        body.putArray("what_if_spirit").add("50%").add("96%");
        String line = "plan " + file + " --shopping --explain --what-if-spirit 50%,96% --json";

        assertThat(asked("/plan", body)).isEqualTo(Desk.type(line).json());
    }

    @Test
    void refusalsSayTheSameInTheirOwnManner() throws Exception {
        JsonNode body = JSON.valueToTree(Map.of("from", "40%", "to", "50%", "volume", "1L"));
        JsonNode api = asked("/reduce", body).get("findings").get(0);
        JsonNode line = Desk.type("reduce --from 40% --to 50% --volume 1L --json")
                .json()
                .get("findings")
                .get(0);

        assertThat(api.get("message")).isEqualTo(line.get("message"));
        assertThat(api.get("where").asString()).isEqualTo("to");
        assertThat(line.get("where").asString()).isEqualTo("--to");
    }

    @Test
    void everyPartOfEveryQuestionIsAnOption() {
        for (DeskQuestion question : DeskQuestions.all()) {
            String help = Desk.type(question.name() + " --help").out();
            for (Part part : question.parts()) {
                assertThat(help).contains("--" + part.name()).doesNotContain("--" + part.name() + "=");
            }
        }
    }

    private JsonNode asked(String path, @Nullable JsonNode body) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.url() + "api/v1" + path));
        if (body != null) {
            request.header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(body.toString()));
        }
        return JSON.readTree(HttpClient.newHttpClient()
                .send(request.build(), HttpResponse.BodyHandlers.ofString())
                .body());
    }
}
