package org.stillroom.studio.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;

/** Reads what happened; entries are written by the change that they tell of, in the same transaction. */
public final class History {
    private final Jdbi jdbi;

    History(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /** Returns all that happened to something, oldest first. */
    public List<HistoryEntry> of(String subject) {
        return jdbi.withHandle(handle -> Ledger.of(handle, subject));
    }

    /**
     * Returns the latest entries of all, newest first.
     *
     * @param before entries below this id only; for the first page Long.MAX_VALUE
     */
    public List<HistoryEntry> latest(long before, int most) {
        return jdbi.withHandle(
                handle -> handle.createQuery("SELECT * FROM history WHERE id < :before ORDER BY id DESC LIMIT :most")
                        .bind("before", before)
                        .bind("most", most)
                        .map(Ledger.ENTRY)
                        .list());
    }

    /** Returns an entry, or nothing when there is none of that number. */
    public Optional<HistoryEntry> entry(long id) {
        return jdbi.withHandle(handle -> Ledger.entry(handle, id));
    }
}
