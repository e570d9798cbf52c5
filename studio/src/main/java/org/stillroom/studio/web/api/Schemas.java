package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.studio.answer.Shape;
import org.stillroom.studio.answer.desk.Part;

/** Builds JSON Schemas (2020-12) in few words. */
final class Schemas {
    private Schemas() {}

    static Map<String, Object> of(String type, String description) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", type);
        if (!description.isEmpty()) {
            schema.put("description", description);
        }
        return schema;
    }

    static Map<String, Object> text(String description) {
        return of("string", description);
    }

    static Map<String, Object> number(String description) {
        return of("number", description);
    }

    static Map<String, Object> count(String description) {
        return of("integer", description);
    }

    static Map<String, Object> flag(String description) {
        return of("boolean", description);
    }

    /** Returns a schema that null fulfils too. */
    static Map<String, Object> orNull(Map<String, Object> schema) {
        Map<String, Object> wider = new LinkedHashMap<>(schema);
        wider.put("type", List.of(String.valueOf(schema.get("type")), "null"));
        return wider;
    }

    static Map<String, Object> list(Map<String, Object> items) {
        Map<String, Object> schema = of("array", "");
        schema.put("items", items);
        return schema;
    }

    /** Returns a group of any keys with values of one kind. */
    static Map<String, Object> named(Map<String, Object> values, String description) {
        Map<String, Object> schema = of("object", description);
        schema.put("additionalProperties", values);
        return schema;
    }

    static Map<String, Object> ref(String component) {
        return Map.of("$ref", "#/components/schemas/" + component);
    }

    static Map<String, Object> either(Map<String, Object> one, Map<String, Object> other) {
        return Map.of("anyOf", List.of(one, other));
    }

    /** An object on its way: of the keys that it names and no others. */
    static final class Group {
        private final Map<String, Object> properties = new LinkedHashMap<>();
        private final List<String> required = new ArrayList<>();

        /** Adds a key that is always there. */
        Group with(String key, Map<String, Object> schema) {
            required.add(key);
            return maybe(key, schema);
        }

        /** Adds a key that may be left out. */
        Group maybe(String key, Map<String, Object> schema) {
            properties.put(key, schema);
            return this;
        }

        Map<String, Object> schema() {
            Map<String, Object> schema = of("object", "");
            schema.put("properties", properties);
            if (!required.isEmpty()) {
                schema.put("required", required);
            }
            schema.put("additionalProperties", false);
            return schema;
        }
    }

    static Group group() {
        return new Group();
    }

    /** Returns the schema of what stands under a key of an answer. */
    static Map<String, Object> of(Shape shape) {
        if (shape instanceof Shape.Amount number) {
            return number(number.unit());
        }
        if (shape instanceof Shape.MaybeAmount number) {
            return orNull(number(number.unit()));
        }
        if (shape instanceof Shape.Text text) {
            return text(text.what());
        }
        if (shape instanceof Shape.Flag flag) {
            return flag(flag.what());
        }
        if (shape instanceof Shape.ListOf list) {
            return list(of(list.each()));
        }
        Group group = group();
        ((Shape.Group) shape).byKey().forEach((key, each) -> group.with(key, of(each)));
        return group.schema();
    }

    /** Returns an object that is a question: to answer it changes nothing. */
    static Map<String, Object> question(Map<String, Object> schema) {
        Map<String, Object> question = new LinkedHashMap<>(schema);
        question.put("x-question", true);
        return question;
    }

    /** Adds the parts of a question as keys. */
    static Group parts(List<Part> parts) {
        Group group = group();
        for (Part part : parts) {
            String key = Keys.SNAKE_CASE.name(part.name());
            if (part.isRequired()) {
                group.with(key, part(part));
            } else {
                group.maybe(key, part(part));
            }
        }
        return group;
    }

    private static Map<String, Object> part(Part part) {
        String usual = part.usual() == null ? "" : " (default: " + part.usual() + ")";
        String description = part.description() + usual;
        return switch (part.form()) {
            case FLAG -> flag(description);
            case REQUIRED, TEXT -> typed(description);
            case REQUIRED_TEXTS, TEXTS, TEXTS_AS_TYPED -> either(list(typed("")), typed(description));
            case NAMED_TEXTS -> either(list(text("")), named(typed(""), description));
        };
    }

    /** Returns a quantity as people type it; a bare number is taken for its text. */
    static Map<String, Object> typed(String description) {
        Map<String, Object> schema = of("string", description);
        schema.put("type", List.of("string", "number"));
        return schema;
    }
}
