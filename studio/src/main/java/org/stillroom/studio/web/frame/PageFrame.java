package org.stillroom.studio.web.frame;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.wording.Words;

/**
 * What the layout needs to know of a page.
 *
 * @param title of the page, shown in the tab
 * @param room key of the room that it belongs to; empty for none
 * @param rooms the navigation
 * @param words of the reader
 * @param token that changes from this page carry
 * @param styles style sheets of its own, such as "shelf.css"
 * @param scripts modules of its own, such as "shelf.js"
 * @param signedIn whether there is a session to end
 */
public record PageFrame(
        String title,
        String room,
        List<Entry> rooms,
        Words words,
        String token,
        List<String> styles,
        List<String> scripts,
        boolean signedIn) {
    public PageFrame {
        rooms = List.copyOf(rooms);
        styles = List.copyOf(styles);
        scripts = List.copyOf(scripts);
    }

    /** An entry of the navigation. */
    public record Entry(String key, String path, String name, String state) {}

    /** Returns the room before this one or after it in the navigation, or null at its ends. */
    public @Nullable Entry beside(int step) {
        for (int i = 0; i < rooms.size(); i++) {
            int other = i + step;
            if (rooms.get(i).key().equals(room)) {
                return other >= 0 && other < rooms.size() ? rooms.get(other) : null;
            }
        }
        return null;
    }

    /** Returns the name of the room that is open, or of the house. */
    public String here() {
        return rooms.stream()
                .filter(entry -> entry.key().equals(room))
                .map(Entry::name)
                .findFirst()
                .orElse("Stillroom");
    }

    /** Returns a fresh name for a change that a form on this page asks for. */
    public String request() {
        return UUID.randomUUID().toString();
    }
}
