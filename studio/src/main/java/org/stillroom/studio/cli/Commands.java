package org.stillroom.studio.cli;

import java.util.List;

/** The commands in force, in the order in which help shows them. */
public final class Commands {
    private Commands() {}

    public static List<Entry> all() {
        return List.of();
    }
}
