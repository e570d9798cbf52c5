package org.stillroom.studio.web.frame;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** Puts pages into the layout: navigation, words of the reader, the token of this browser. */
public final class Frame {
    private final Store store;
    private final Entrance entrance;
    private final List<Room> rooms;

    Frame(Store store, Entrance entrance, List<Room> rooms) {
        this.store = store;
        this.entrance = entrance;
        this.rooms = List.copyOf(rooms);
    }

    Visit visit(Context context) {
        return new Visit(context, this, words(context));
    }

    private Words words(Context context) {
        Map<String, String> settled = settled();
        Language language = Language.of(settled.getOrDefault("language", ""))
                .orElseGet(() -> Language.wanted(context.header("Accept-Language")));
        return new Words(language, UnitSystem.named(settled.getOrDefault("units", "")));
    }

    private Map<String, String> settled() {
        try {
            return store.settings().all();
        } catch (RuntimeException away) { // that the store does not answer must still be said
            return Map.of();
        }
    }

    PageFrame of(Context context, Words words, String title, String room, List<String> styles, List<String> scripts) {
        List<PageFrame.Entry> entries = rooms.stream()
                .filter(Room::isInNavigation)
                .map(each -> new PageFrame.Entry(
                        each.key(), each.path(), words.say("frame." + each.key()), each.state(words)))
                .toList();
        return new PageFrame(
                title, room, entries, words, FormToken.of(context), styles, scripts, entrance.hasSession(context));
    }
}
