package org.stillroom.studio.store;

/**
 * What came of changing something that others may change too.
 *
 * @param <T> what was changed
 */
public sealed interface Changing<T> {
    /** It is changed. */
    record Changed<T>(T now) implements Changing<T> {}

    /** Somebody changed it since it was read; nothing was changed. */
    record Overtaken<T>(T current) implements Changing<T> {}
}
