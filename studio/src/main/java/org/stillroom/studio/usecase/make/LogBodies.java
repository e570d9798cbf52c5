package org.stillroom.studio.usecase.make;

import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The JSON in which what happens to makes and batches is kept. */
public final class LogBodies {
    private static final JsonMapper JSON = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES) // a newer version may have written more
            .build();

    private LogBodies() {}

    public static String write(Object body) {
        return JSON.writeValueAsString(body);
    }

    public static <T> T read(String json, Class<T> type) {
        return JSON.readValue(json, type);
    }
}
