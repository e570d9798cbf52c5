package org.stillroom.studio.faults;

import java.util.logging.Level;
import java.util.logging.Logger;

/** Keeps libraries from telling a maker how they are: only what they warn of is shown. */
public final class LibraryLogs {
    private LibraryLogs() {}

    public static void quiet() {
        Logger.getLogger("").setLevel(Level.WARNING);
    }
}
