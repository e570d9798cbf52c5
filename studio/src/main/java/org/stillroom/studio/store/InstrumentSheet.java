package org.stillroom.studio.store;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a maker writes about a thing to measure with, or an empty jar; every field is the text as typed.
 *
 * @param name what the maker calls it
 * @param kind as under {@code measures} in a recipe file, or "jar"
 * @param fields under the keys of a measure in a recipe file; of a jar "tare" and "holds"
 * @param note or null
 */
public record InstrumentSheet(
        String name,
        String kind,
        Map<String, String> fields,
        @Nullable String note) {
    public InstrumentSheet {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }
}
