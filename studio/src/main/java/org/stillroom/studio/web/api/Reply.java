package org.stillroom.studio.web.api;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.Json;

/** What a call is answered with. */
final class Reply {
    static final String JSON = "application/json";

    private final String type;
    private final String body;
    private final Map<String, String> headers = new LinkedHashMap<>();

    private Reply(String type, String body) {
        this.type = type;
        this.body = body;
    }

    static Reply of(Fields fields) {
        return new Reply(JSON, Json.of(fields) + "\n");
    }

    static Reply text(String type, String body) {
        return new Reply(type, body);
    }

    /** Names the state that was answered, for a change to say what it is based on. */
    Reply version(long number) {
        return header("ETag", "\"" + number + "\"");
    }

    Reply header(String name, String value) {
        headers.put(name, value);
        return this;
    }

    String type() {
        return type;
    }

    String body() {
        return body;
    }

    Map<String, String> headers() {
        return Collections.unmodifiableMap(headers);
    }
}
