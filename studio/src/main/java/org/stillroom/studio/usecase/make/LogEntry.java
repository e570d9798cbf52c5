package org.stillroom.studio.usecase.make;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.stillroom.studio.store.HistoryEntry;

/**
 * An entry of a make's log, read.
 *
 * @param id its number
 * @param at when it was written
 * @param kind what happened, as in {@link Logged}
 * @param said what it says
 * @param undone whether a later entry takes it back
 */
public record LogEntry(long id, Instant at, String kind, Logged said, boolean undone) {
    /** Returns the log in the order of writing; what begins and ends it has no step and is left out. */
    static List<LogEntry> of(List<HistoryEntry> history) {
        Set<Long> undone = new HashSet<>();
        for (HistoryEntry entry : history) {
            if (entry.undoes() != null) {
                undone.add(entry.undoes());
            }
        }
        List<LogEntry> log = new ArrayList<>();
        for (HistoryEntry entry : history) {
            if (!entry.kind().startsWith("make.")) {
                log.add(new LogEntry(
                        entry.id(),
                        entry.at(),
                        entry.kind(),
                        LogBodies.read(entry.body(), Logged.class),
                        undone.contains(entry.id())));
            }
        }
        return log;
    }

    /** Returns whether it still counts. */
    public boolean counts() {
        return !undone && !kind.equals(Logged.UNDO);
    }

    /** Returns whether something went into the vessel, or was left out of it. */
    boolean isPour() {
        return kind.equals(Logged.DONE) || kind.equals(Logged.POURED) || kind.equals(Logged.SKIPPED);
    }
}
