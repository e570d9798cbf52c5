package org.stillroom.e2e;

import java.util.List;

/** The pages of the studio that are held to the rules of every page. A room adds its own here. */
final class StudioPages {
    private StudioPages() {}

    /** Returns their paths, such as "/settings". */
    static List<String> all() {
        return List.of(
                "/settings",
                "/history",
                "/nowhere",
                "/shelf",
                "/shelf/put",
                "/shelf/put/essential-oil",
                "/shelf/put/juice",
                "/shelf/table",
                "/shelf/instruments",
                "/shelf/instruments/put/jar",
                "/shelf/removed");
    }
}
