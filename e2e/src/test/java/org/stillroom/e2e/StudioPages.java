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
                "/shelf/removed",
                "/make/gauge",
                "/make/gauge?density=1.0423g%2Fml&refractometer=31.5Bx&volume=1.95L&to-strength=28%25&with=96%25");
    }
}
