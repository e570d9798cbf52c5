package org.stillroom.studio.store;

/** What came of saving a recipe. */
public sealed interface Saving {
    /** It is kept. */
    record Saved(Revision revision) implements Saving {}

    /** Somebody saved since the work began; nothing was changed. */
    record Overtaken(Revision current) implements Saving {}
}
