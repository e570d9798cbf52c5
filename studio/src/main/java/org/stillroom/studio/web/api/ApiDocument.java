package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The OpenAPI 3.1 document of the operations: written from the same list that answers them. */
final class ApiDocument {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private static final String INTRODUCTION = """
            Everything that Stillroom's pages do, for other programs: the same use cases, the same keys as the command line's \
            --json. Quantities are sent as people type them ("300 g", "28 %", "24 °Bx") and answered as numbers whose key ends \
            in their unit. A refusal is always {"findings": [...]}: what, where, and what to do. A change may carry the header \
            Idempotency-Key; the same key again does it once. On this machine no sign-in is asked; over a network the session \
            cookie of the sign-in page goes along.""";

    private final List<Operation> operations;

    ApiDocument(List<Operation> operations) {
        this.operations = List.copyOf(operations);
    }

    String json() {
        return MAPPER.writeValueAsString(tree()) + "\n";
    }

    private Map<String, Object> tree() {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("openapi", "3.1.0");
        Map<String, Object> info = new LinkedHashMap<>();
        info.put("title", "Stillroom");
        info.put("version", "1");
        info.put("description", INTRODUCTION);
        info.put("license", Map.of("name", "Apache License 2.0", "identifier", "Apache-2.0"));
        document.put("info", info);
        document.put("servers", List.of(Map.of("url", ApiRoom.ROOT)));
        document.put("paths", paths());
        document.put("components", Map.of("schemas", Components.all(), "securitySchemes", securitySchemes()));
        document.put("security", List.of(Map.of(), Map.of("session", List.of())));
        return document;
    }

    private static Map<String, Object> securitySchemes() {
        return Map.of(
                "session",
                Map.of(
                        "type", "apiKey",
                        "in", "cookie",
                        "name", "stillroom-session",
                        "description", "set by the sign-in page; asked only where the studio is open to a network"));
    }

    private Map<String, Object> paths() {
        Map<String, Object> paths = new LinkedHashMap<>();
        for (Operation operation : operations) {
            Map<String, Object> described = described(operation);
            Map<String, Object> path = new LinkedHashMap<>();
            if (paths.get(operation.path()) instanceof Map<?, ?> earlier) {
                earlier.forEach((method, value) -> path.put(String.valueOf(method), value));
            }
            path.put(operation.method().name().toLowerCase(Locale.ROOT), described);
            paths.put(operation.path(), path);
        }
        return paths;
    }

    private static Map<String, Object> described(Operation operation) {
        Map<String, Object> described = new LinkedHashMap<>();
        described.put("operationId", operation.id());
        described.put("tags", List.of(operation.tag()));
        described.put("summary", operation.summary());
        List<Map<String, Object>> parameters = parameters(operation);
        if (!parameters.isEmpty()) {
            described.put("parameters", parameters);
        }
        if (!operation.takes().isEmpty()) {
            described.put("requestBody", requestBody(operation));
        }
        described.put("responses", responses(operation));
        return described;
    }

    private static List<Map<String, Object>> parameters(Operation operation) {
        List<Map<String, Object>> parameters = new ArrayList<>();
        operation
                .partsOfPath()
                .forEach(part -> parameters.add(parameter(part, "path", part + " as its list names it", true)));
        operation
                .queries()
                .forEach(query -> parameters.add(parameter(query.name(), "query", query.description(), false)));
        if (operation.changes()) {
            parameters.add(
                    parameter("Idempotency-Key", "header", "name of this wish; sent again, it is done once", false));
        }
        if (operation.versionKey() != null) {
            parameters.add(parameter(
                    "If-Match",
                    "header",
                    "ETag of what the change is based on, in place of the key of the body",
                    false));
        }
        return parameters;
    }

    private static Map<String, Object> parameter(String name, String in, String description, boolean required) {
        Map<String, Object> parameter = new LinkedHashMap<>();
        parameter.put("name", name);
        parameter.put("in", in);
        parameter.put("description", description);
        parameter.put("required", required);
        parameter.put("schema", Map.of("type", "string"));
        return parameter;
    }

    private static Map<String, Object> requestBody(Operation operation) {
        Map<String, Object> media = new LinkedHashMap<>();
        media.put("schema", operation.takes());
        media.put("example", MAPPER.readTree(operation.example()));
        return Map.of("required", true, "content", Map.of(Reply.JSON, media));
    }

    private static Map<String, Object> responses(Operation operation) {
        Map<String, Object> responses = new LinkedHashMap<>();
        responses.put(
                "200",
                Map.of(
                        "description",
                        "done",
                        "content",
                        Map.of(operation.answerType(), Map.of("schema", operation.answers()))));
        if (!operation.takes().isEmpty()) {
            responses.put("400", refused("the body is not readable, or has a key that is not known"));
            responses.put("413", refused("the body has more than 1 MB"));
            responses.put("415", refused("the body is not application/json"));
            responses.put("422", refused("what is asked for is understood and cannot be"));
        }
        if (!operation.partsOfPath().isEmpty()) {
            responses.put("404", refused("it is not there"));
        }
        if (operation.versionKey() != null) {
            responses.put("409", refused("somebody has changed it since; both are shown"));
            responses.put("428", refused("it is not said what the change is based on"));
        }
        responses.put("default", refused("a refusal, or with status 500 a fault of the program with its id"));
        return responses;
    }

    private static Map<String, Object> refused(String description) {
        return Map.of(
                "description", description, "content", Map.of(Reply.JSON, Map.of("schema", Schemas.ref("Refusal"))));
    }
}
