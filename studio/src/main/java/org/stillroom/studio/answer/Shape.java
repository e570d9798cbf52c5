package org.stillroom.studio.answer;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What stands under a key of an answer, for whoever describes answers to other programs. */
public sealed interface Shape {
    /** A number, with its unit. */
    record Amount(String unit) implements Shape {}

    /** A number, or null where there is none. */
    record MaybeAmount(String unit) implements Shape {}

    /** A text. */
    record Text(String what) implements Shape {}

    /** True or false. */
    record Flag(String what) implements Shape {}

    /** Keys that are always there, with what stands under each. */
    record Group(List<Key> keys) implements Shape {
        public Group {
            keys = List.copyOf(keys);
        }

        /** Returns what stands under each key, in their order. */
        public Map<String, Shape> byKey() {
            Map<String, Shape> byKey = new LinkedHashMap<>();
            keys.forEach(key -> byKey.put(key.name(), key.shape()));
            return byKey;
        }
    }

    /** A key and what stands under it. */
    record Key(String name, Shape shape) {}

    /** Any number of one kind. */
    record ListOf(Shape each) implements Shape {}

    /** Returns a group of keys. */
    static Group group(Key... keys) {
        return new Group(List.of(keys));
    }

    /** Returns a key with a number. */
    static Key number(String name, String unit) {
        return new Key(name, new Amount(unit));
    }

    /** Returns a key with a text. */
    static Key text(String name, String what) {
        return new Key(name, new Text(what));
    }
}
