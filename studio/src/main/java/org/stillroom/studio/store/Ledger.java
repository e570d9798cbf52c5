package org.stillroom.studio.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import org.jspecify.annotations.Nullable;

/** Writes and reads the history within a transaction; a request that was done before is not done again. */
final class Ledger {
    static final RowMapper<HistoryEntry> ENTRY = (row, context) -> {
        long undoes = row.getLong("undoes");
        boolean isUndo = !row.wasNull();
        return new HistoryEntry(
                row.getLong("id"),
                Instant.parse(row.getString("at")),
                row.getString("subject"),
                row.getString("kind"),
                row.getString("body"),
                isUndo ? Long.valueOf(undoes) : null);
    };

    /** More than a pool has connections: of changes that meet, one gets through each time. */
    private static final int MOST_TRIES = 10;

    private Ledger() {}

    /** A change: does it, and returns the entry that tells of it. */
    interface Change {
        HistoryEntry in(Handle handle);
    }

    /**
     * Does a change in a transaction of its own, or, when this request was done before, returns the entry of that time.
     *
     * @param request the name that whoever asks gave to this one wish, however often it is sent
     */
    static HistoryEntry once(Jdbi jdbi, String request, Change change) {
        if (request.isBlank() || request.length() > 100) {
            throw new IllegalArgumentException("a request is named by 1 to 100 characters");
        }
        for (int tries = 1; ; tries++) {
            try {
                return jdbi.inTransaction(handle -> earlier(handle, request).orElseGet(() -> change.in(handle)));
            } catch (UnableToExecuteStatementException met) {
                // Another change came in between, perhaps the same request from another side: look again.
                if (tries == MOST_TRIES) {
                    throw met;
                }
            }
        }
    }

    static Optional<HistoryEntry> earlier(Handle handle, String request) {
        return handle.createQuery("SELECT * FROM history WHERE request = :request")
                .bind("request", request)
                .map(ENTRY)
                .findOne();
    }

    static HistoryEntry write(
            Handle handle, String subject, String kind, Object body, @Nullable Long undoes, String request) {
        if (undoes != null) {
            requireUndoable(handle, subject, undoes);
        }
        Instant at = Instant.now();
        String json = Bodies.write(body);
        long id = handle.createQuery("INSERT INTO history (at, subject, kind, body, undoes, request)"
                        + " VALUES (:at, :subject, :kind, :body, :undoes, :request) RETURNING id")
                .bind("at", at.toString())
                .bind("subject", subject)
                .bind("kind", kind)
                .bind("body", json)
                .bind("undoes", undoes)
                .bind("request", request)
                .mapTo(Long.class)
                .one();
        return new HistoryEntry(id, at, subject, kind, json, undoes);
    }

    private static void requireUndoable(Handle handle, String subject, long id) {
        if (entry(handle, id).filter(found -> found.subject().equals(subject)).isEmpty()) {
            throw new MissingException("there is no entry " + id + " of " + subject);
        }
        boolean undone = handle.createQuery("SELECT count(*) FROM history WHERE undoes = :id")
                        .bind("id", id)
                        .mapTo(Long.class)
                        .one()
                > 0;
        if (undone) {
            throw new SettledException("the entry " + id + " was undone before");
        }
    }

    static List<HistoryEntry> of(Handle handle, String subject) {
        return handle.createQuery("SELECT * FROM history WHERE subject = :subject ORDER BY id")
                .bind("subject", subject)
                .map(ENTRY)
                .list();
    }

    static Optional<HistoryEntry> entry(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM history WHERE id = :id")
                .bind("id", id)
                .map(ENTRY)
                .findOne();
    }
}
