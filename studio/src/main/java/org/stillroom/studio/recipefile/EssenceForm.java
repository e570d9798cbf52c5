package org.stillroom.studio.recipefile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * An essence as it is typed field by field: {@code title}, {@code dose} and so on by the keys of an essence file, and
 * {@code oils.0.oil} for what stands in its list.
 */
public final class EssenceForm {
    /** Rows of oils that are read. */
    public static final int MOST_OILS = EssenceReader.MOST_OILS;

    private final Map<String, String> fields;

    /** Takes what was typed; blank is left out. */
    public EssenceForm(Map<String, String> typed) {
        Map<String, String> filled = new LinkedHashMap<>();
        typed.forEach((name, text) -> {
            if (!text.isBlank()) {
                filled.put(name, text.strip());
            }
        });
        this.fields = Collections.unmodifiableMap(filled);
    }

    /** Returns the name of a field of an oil. */
    public static String ofOil(int row, String key) {
        return "oils." + row + "." + key;
    }

    /** Returns what is typed; empty where nothing is. */
    public String typed(String name) {
        return fields.getOrDefault(name, "");
    }

    /** Returns everything that is typed. */
    public Map<String, String> fields() {
        return fields;
    }

    /** Returns the form with another text in a field. */
    public EssenceForm with(String name, String text) {
        Map<String, String> changed = new LinkedHashMap<>(fields);
        changed.put(name, text);
        return new EssenceForm(changed);
    }

    /** Returns the rows in which an oil, its parts or its drop stand. */
    public IntStream rows() {
        return IntStream.range(0, MOST_OILS)
                .filter(row -> EssenceReader.OIL.stream().anyMatch(key -> fields.containsKey(ofOil(row, key))));
    }
}
