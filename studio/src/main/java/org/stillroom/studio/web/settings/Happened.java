package org.stillroom.studio.web.settings;

import java.time.Instant;
import java.util.MissingResourceException;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.wording.Words;

/**
 * One entry of the history as a person reads it.
 *
 * @param what was done, in words
 * @param name of what it was done to; empty where that has no name any more
 * @param path to where it can be seen, or empty
 * @param body the entry as it is kept
 */
public record Happened(Instant at, String what, String name, String path, String body) {
    static Happened of(HistoryEntry entry, Store store, Words words) {
        int colon = entry.subject().indexOf(':');
        String kind = colon < 0 ? entry.subject() : entry.subject().substring(0, colon);
        String id = entry.subject().substring(colon + 1);
        String name = name(kind, id, store);
        return new Happened(
                entry.at(), what(entry, kind, words), name, name.isEmpty() ? "" : path(kind, id), entry.body());
    }

    private static String what(HistoryEntry entry, String kind, Words words) {
        boolean ofMake = kind.equals("make") && !entry.kind().startsWith("make.");
        try {
            return words.say((ofMake ? "make.log." : "settings.happened.") + entry.kind());
        } catch (MissingResourceException unsaid) {
            return entry.kind();
        }
    }

    private static String name(String kind, String id, Store store) {
        return switch (kind) {
            case "recipe" -> store.recipes().head(id).map(RecipeHead::title).orElse("");
            case "lot" ->
                store.lots().lot(id).map(Lot::sheet).map(sheet -> sheet.name()).orElse("");
            case "instrument" ->
                store.instruments()
                        .instrument(id)
                        .map(Instrument::sheet)
                        .map(sheet -> sheet.name())
                        .orElse("");
            case "make" ->
                store.makes()
                        .make(id)
                        .flatMap(make -> store.recipes().head(make.recipe()))
                        .map(RecipeHead::title)
                        .orElse("");
            default -> "";
        };
    }

    private static String path(String kind, String id) {
        return switch (kind) {
            case "recipe" -> "/compose/" + id;
            case "lot" -> "/shelf/lots/" + id;
            case "make" -> "/make/" + id;
            default -> "";
        };
    }
}
