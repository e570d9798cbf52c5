package org.stillroom.studio.store;

import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The JSON in which the store keeps what has no column of its own. */
final class Bodies {
    private static final JsonMapper JSON = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES) // a newer version may have written more
            .build();

    private Bodies() {}

    /** Returns JSON; a text is taken to be JSON already. */
    static String write(Object body) {
        return body instanceof String json ? json : JSON.writeValueAsString(body);
    }

    static <T> T read(String json, Class<T> type) {
        return JSON.readValue(json, type);
    }
}
