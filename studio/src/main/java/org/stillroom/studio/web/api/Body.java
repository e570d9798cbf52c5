package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.recipefile.Nearest;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The JSON that a call brings: one object of known keys; whatever is wrong with it is told together. */
final class Body {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final String raw;
    private final JsonNode root;
    private final List<Finding> problems = new ArrayList<>();

    private Body(String raw, JsonNode root) {
        this.raw = raw;
        this.root = root;
    }

    /** Reads a text, whose line and column a refusal names when it is no JSON. */
    static Body of(String raw) {
        if (raw.isBlank()) {
            return new Body("{}", MAPPER.createObjectNode());
        }
        try {
            JsonNode root = MAPPER.readTree(raw);
            if (!root.isObject()) {
                throw new Refused(
                        Refused.UNREADABLE,
                        "json-object",
                        "",
                        "The body is JSON, and not an object.",
                        "Put the keys in braces: {\"ethanol\": \"300 g\"}.");
            }
            return new Body(raw, root);
        } catch (JacksonException noJson) {
            TokenStreamLocation at = noJson.getLocation();
            String place = at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr();
            throw new Refused(
                    Refused.UNREADABLE,
                    "json",
                    place,
                    "The body is no JSON: " + noJson.getOriginalMessage() + ".",
                    "Keys and texts stand in double quotes, with a comma between the entries.");
        }
    }

    boolean has(String key) {
        JsonNode value = root.get(key);
        return value != null && !value.isNull();
    }

    /** Notes keys that are not among these, with the one that was most likely meant. */
    Body knows(Collection<String> known) {
        for (String key : root.propertyNames()) {
            if (!known.contains(key)) {
                String near = Nearest.of(key, known);
                wrong(
                        "unknown-key",
                        key,
                        "There is no key \"" + key + "\" here.",
                        near == null
                                ? "The keys are " + String.join(", ", known) + "."
                                : "Did you mean \"" + near + "\"?");
            }
        }
        return this;
    }

    void wrong(String rule, String where, String message, String remedy) {
        problems.add(Finding.of(rule, Severity.STOP, where, "not understood", message, remedy));
    }

    /** Refuses the call when anything was wrong with its keys. */
    void refuseIfAnyWrong() {
        if (!problems.isEmpty()) {
            throw new Refused(Refused.UNREADABLE, problems);
        }
    }

    /** Returns a text, or null when it was left out; a bare number is the text of it. */
    @Nullable
    String text(String key) {
        return has(key) ? text(key, root.get(key)) : null;
    }

    private @Nullable String text(String key, JsonNode value) {
        if (value.isString() || value.isNumber()) {
            return value.asString();
        }
        wrong("json-type", key, "\"" + key + "\" is a text here.", "Write it in double quotes, such as \"300 g\".");
        return null;
    }

    /** Returns whether something is said; false when it was left out. */
    boolean flag(String key) {
        if (has(key) && !root.get(key).isBoolean()) {
            wrong("json-type", key, "\"" + key + "\" is said or not said.", "Write true or false.");
        }
        return has(key) && root.get(key).booleanValue(false);
    }

    /** Returns a whole number, or null when it was left out. */
    @Nullable
    Long number(String key) {
        if (!has(key)) {
            return null;
        }
        if (!root.get(key).isIntegralNumber() || !root.get(key).canConvertToLong()) {
            wrong("json-type", key, "\"" + key + "\" is a whole number.", "Write it without quotes, such as 3.");
            return null;
        }
        return root.get(key).longValue();
    }

    /** Returns texts; one alone may stand without brackets. */
    List<String> texts(String key) {
        return has(key) ? texts(key, root.get(key)) : List.of();
    }

    private List<String> texts(String key, JsonNode value) {
        List<String> texts = new ArrayList<>();
        for (JsonNode each : value.isArray() ? value : List.of(value)) {
            String text = text(key, each);
            if (text != null) {
                texts.add(text);
            }
        }
        return texts;
    }

    /** Returns texts by their names; empty when it was left out. */
    Map<String, String> named(String key) {
        Map<String, String> named = new LinkedHashMap<>();
        if (!has(key)) {
            return named;
        }
        if (!root.get(key).isObject()) {
            wrong("json-type", key, "\"" + key + "\" is a group of keys.", "Put them in braces.");
            return named;
        }
        for (Map.Entry<String, JsonNode> entry : root.get(key).properties()) {
            String text = text(key + "." + entry.getKey(), entry.getValue());
            if (text != null) {
                named.put(entry.getKey(), text);
            }
        }
        return named;
    }

    /** Returns lists of texts by their names; empty when it was left out. */
    Map<String, List<String>> namedTexts(String key) {
        Map<String, List<String>> named = new LinkedHashMap<>();
        if (has(key) && root.get(key).isObject()) {
            for (Map.Entry<String, JsonNode> entry : root.get(key).properties()) {
                named.put(entry.getKey(), texts(key + "." + entry.getKey(), entry.getValue()));
            }
        } else if (has(key)) {
            wrong("json-type", key, "\"" + key + "\" is a group of keys.", "Put them in braces.");
        }
        return named;
    }

    /** Returns the objects of a list. */
    List<Body> objects(String key) {
        List<Body> objects = new ArrayList<>();
        if (has(key)) {
            for (JsonNode each : root.get(key)) {
                if (each.isObject()) {
                    objects.add(new Body(each.toString(), each));
                } else {
                    wrong("json-type", key, "\"" + key + "\" is a list of objects.", "Put each in braces.");
                }
            }
        }
        return objects;
    }

    /** Returns the parts of a question as texts by the names of the parts. */
    Map<String, List<String>> typed(List<Part> parts) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        for (Part part : parts) {
            String key = Keys.SNAKE_CASE.name(part.name());
            List<String> texts = typed(part, key);
            if (!texts.isEmpty()) {
                typed.put(part.name(), texts);
            }
        }
        return typed;
    }

    private List<String> typed(Part part, String key) {
        if (part.form() == Part.Form.FLAG) {
            return flag(key) ? List.of("yes") : List.of();
        }
        if (part.form() == Part.Form.NAMED_TEXTS && has(key) && root.get(key).isObject()) {
            List<String> texts = new ArrayList<>();
            named(key).forEach((name, amount) -> texts.add(name + "=" + amount));
            return texts;
        }
        if (part.isRepeated()) {
            return texts(key);
        }
        String text = text(key);
        return text == null ? List.of() : List.of(text);
    }

    /**
     * Returns a recipe as the text of a recipe file: the text itself, or the object, which YAML reads as it stands; its lines
     * keep their numbers.
     */
    @Nullable
    String recipe(String key) {
        return has(key) && root.get(key).isObject() ? written(key) : text(key);
    }

    /** Returns whether a recipe is given as an object. */
    boolean isObject(String key) {
        return has(key) && root.get(key).isObject();
    }

    /** Returns the body itself as the text of a recipe file. */
    String asRecipe() {
        return asYaml(raw);
    }

    private String written(String key) {
        try (JsonParser parser = new JsonFactory().createParser(tools.jackson.core.ObjectReadContext.empty(), raw)) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
                String name = parser.currentName();
                parser.nextToken();
                TokenStreamLocation start = parser.currentTokenLocation();
                parser.skipChildren();
                if (name.equals(key)) {
                    int from = (int) start.getCharOffset();
                    int to = (int) parser.currentLocation().getCharOffset();
                    return "\n".repeat(start.getLineNr() - 1) + asYaml(raw.substring(from, to));
                }
            }
        }
        throw new IllegalStateException("the key " + key + " was there");
    }

    /** Between the tokens of JSON a tab is a blank; YAML takes it for indentation. Within texts JSON has none. */
    private static String asYaml(String json) {
        return json.replace('\t', ' ');
    }
}
