package org.stillroom.studio.recipefile;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.recipe.MeasureKind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RecipeSchemaTest {
    private static final String HEAD = "stillroom: 1\ntitle: Pear\n";
    private static final String LINES = "lines:\n  - {use: water, amount: 1 L}\n";

    private final JsonNode json = JsonMapper.builder().build().readTree(RecipeSchema.json());
    private final Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(RecipeSchema.json(), InputFormat.JSON);

    @Test
    void theSchemaIsItselfInOrder() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of(
                        json.get("$schema").stringValue()));
        assertThat(meta.validate(RecipeSchema.json(), InputFormat.JSON)).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everyExampleIsAccepted() {
        return Examples.files().stream()
                .map(file -> DynamicTest.dynamicTest(
                        file.toString(),
                        () -> assertThat(schema.validate(Examples.text(file), InputFormat.YAML))
                                .isEmpty()));
    }

    @Test
    void everythingThatCanBeWrittenIsAccepted() {
        assertThat(schema.validate(RecipeWriterTest.EVERYTHING, InputFormat.YAML))
                .isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> whatTheReaderRefusesInFormTheSchemaRefusesToo() {
        Map<String, String> wrong = Map.ofEntries(
                Map.entry("unknown field", HEAD + "colour: red\n" + LINES),
                Map.entry(
                        "unknown field of an ingredient",
                        HEAD + "ingredients: [{name: x, kind: water, hue: red}]\n" + LINES),
                Map.entry("unknown field of the target", HEAD + "target: {weight: 1 kg}\n" + LINES),
                Map.entry("no format", "title: Pear\n" + LINES),
                Map.entry("other format", "stillroom: 2\ntitle: Pear\n" + LINES),
                Map.entry("no lines", HEAD + "lines: []\n"),
                Map.entry("number without a unit", HEAD + "target: {strength: 28}\n" + LINES),
                Map.entry("volume and bottles", HEAD + "target: {volume: 1 L, bottles: 3 x 350 ml}\n" + LINES),
                Map.entry("amount and dose", HEAD + "lines: [{use: water, amount: 1 L, dose: 1 g/L}]\n"),
                Map.entry("neither amount nor dose", HEAD + "lines: [{use: water}]\n"),
                Map.entry("unknown kind", HEAD + "ingredients: [{name: x, kind: potion}]\n" + LINES),
                Map.entry(
                        "unknown substance",
                        HEAD + "ingredients: [{name: x, kind: juice, contains: {gold: 1 %}}]\n" + LINES),
                Map.entry("unknown aim", HEAD + LINES + "aim: cheapest\n"),
                Map.entry("unknown ounce", HEAD + LINES + "ounce: UK\n"));
        return wrong.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
                    assertThat(schema.validate(entry.getValue(), InputFormat.YAML))
                            .isNotEmpty();
                    assertThat(Examples.problems(entry.getValue())).isNotEmpty();
                }));
    }

    @Test
    void schemaAndReaderKnowTheSameKeysInTheSameOrder() {
        assertThat(keys(json)).isEqualTo(Keys.RECIPE);
        assertThat(keys(group("target"))).isEqualTo(Keys.TARGET);
        assertThat(keys(group("measure"))).isEqualTo(Keys.MEASURE);
        assertThat(keys(group("ingredient"))).isEqualTo(Keys.INGREDIENT);
        assertThat(keys(group("line"))).isEqualTo(Keys.LINE);
        assertThat(keys(group("ingredient").get("properties").get("contains"))).isEqualTo(Keys.CONTAINS);
    }

    @Test
    void schemaAndReaderKnowTheSameKinds() {
        assertThat(choices(group("ingredient"))).isEqualTo(labels(Kind.values(), Kind::label));
        assertThat(choices(group("measure"))).isEqualTo(labels(MeasureKind.values(), MeasureKind::label));
    }

    @Test
    void everyKeyIsDescribedForEditors() {
        for (JsonNode group : List.of(json, group("target"), group("measure"), group("ingredient"), group("line"))) {
            group.get("properties")
                    .properties()
                    .forEach(key -> assertThat(key.getValue().has("description"))
                            .as(key.getKey())
                            .isTrue());
        }
    }

    private JsonNode group(String name) {
        return json.get("$defs").get(name);
    }

    private static List<String> keys(JsonNode group) {
        return List.copyOf(group.get("properties").propertyNames());
    }

    private static List<String> choices(JsonNode group) {
        return group.get("properties")
                .get("kind")
                .get("enum")
                .valueStream()
                .map(JsonNode::stringValue)
                .toList();
    }

    private static <T> List<String> labels(T[] values, Function<T, String> label) {
        return Arrays.stream(values).map(label).toList();
    }
}
