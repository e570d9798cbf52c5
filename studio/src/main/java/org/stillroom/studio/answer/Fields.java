package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The fields of an answer for scripts, in the order they were put.
 *
 * <p>Keys are snake_case and end in their unit ({@code density_kg_m3}); numbers are not rounded.
 */
public final class Fields {
    private final Map<String, @Nullable Object> values = new LinkedHashMap<>();

    public Fields put(String key, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(key + " is " + value + "; an answer carries finite numbers only");
        }
        return add(key, value);
    }

    /** Puts a number that counts or numbers something. */
    public Fields putCount(String key, long value) {
        return add(key, value);
    }

    public Fields put(String key, @Nullable String value) {
        return add(key, value);
    }

    public Fields put(String key, boolean value) {
        return add(key, value);
    }

    public Fields put(String key, Fields value) {
        return add(key, value);
    }

    public Fields put(String key, List<Fields> values) {
        return add(key, List.copyOf(values));
    }

    /** Puts plain texts, such as the steps of the work. */
    public Fields putTexts(String key, List<String> texts) {
        return add(key, List.copyOf(texts));
    }

    /** Puts plain numbers, such as the drops of several oils in their order; whole ones stay whole. */
    public Fields putNumbers(String key, List<? extends Number> numbers) {
        List<Number> plain = new ArrayList<>();
        for (Number number : numbers) {
            plain.add(number instanceof Double ? number : (Number) number.longValue());
        }
        return add(key, List.copyOf(plain));
    }

    /** Puts what is JSON already, such as the body of an entry of the history; its keys are those that it was written with. */
    public Fields putJson(String key, String json) {
        return add(key, new Written(json));
    }

    /** JSON as it was written. */
    record Written(String json) {}

    /** Puts a figure that does not exist here, such as the volume of a solid: the key stays, its value is null. */
    public Fields putNone(String key) {
        return add(key, null);
    }

    /** Puts a number, or null where it does not exist. */
    public Fields putOrNone(String key, @Nullable Double value) {
        return value == null ? putNone(key) : put(key, value.doubleValue());
    }

    private Fields add(String key, @Nullable Object value) {
        if (!isSnakeCase(key)) {
            throw new IllegalArgumentException("a key is snake_case, not \"" + key + "\"");
        }
        if (values.containsKey(key)) {
            throw new IllegalArgumentException("the key " + key + " is put twice");
        }
        values.put(key, value);
        return this;
    }

    /** Returns whether something stands under this key already. */
    public boolean has(String key) {
        return values.containsKey(key);
    }

    private static boolean isSnakeCase(String key) {
        for (int i = 0; i < key.length(); i++) {
            char c = key.charAt(i);
            if (!(c == '_' || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))) {
                return false;
            }
        }
        return !key.isEmpty();
    }

    Map<String, @Nullable Object> values() {
        return Collections.unmodifiableMap(values);
    }
}
