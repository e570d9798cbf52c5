package org.stillroom.studio.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jspecify.annotations.Nullable;

/** Makes with their logs, and the batches that came of them. */
public final class Makes {
    private static final RowMapper<Make> MAKE = (row, context) -> new Make(
            row.getString("id"),
            row.getString("recipe"),
            row.getInt("revision"),
            Instant.parse(row.getString("begun")),
            row.getString("start"),
            row.getString("finished") == null ? null : Instant.parse(row.getString("finished")));

    private static final RowMapper<Batch> BATCH = (row, context) -> new Batch(
            row.getString("id"),
            row.getString("make"),
            row.getString("recipe"),
            row.getInt("number"),
            Instant.parse(row.getString("made")),
            row.getString("body"));

    private final Jdbi jdbi;

    Makes(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * Begins a make.
     *
     * @param start JSON of what is settled at the beginning
     */
    public Make begin(String recipe, int revision, String start, String request) {
        HistoryEntry entry = Ledger.once(jdbi, request, handle -> {
            String id = Ids.next();
            handle.createUpdate("INSERT INTO make (id, recipe, revision, begun, start)"
                            + " VALUES (:id, :recipe, :revision, :now, :start)")
                    .bind("id", id)
                    .bind("recipe", recipe)
                    .bind("revision", revision)
                    .bind("now", Instant.now().toString())
                    .bind("start", start)
                    .execute();
            return Ledger.write(handle, subject(id), "make.begun", start, null, request);
        });
        return make(entry.subject().substring("make:".length())).orElseThrow();
    }

    /**
     * Adds an entry to the log of a make.
     *
     * @param kind what happened, such as "step.poured"
     * @param body JSON
     * @param undoes id of the entry that this takes back, or null
     * @throws MissingException when there is no such make
     * @throws SettledException when it is finished
     */
    public HistoryEntry append(String make, String kind, String body, @Nullable Long undoes, String request) {
        return Ledger.once(jdbi, request, handle -> {
            requireOpen(handle, make);
            return Ledger.write(handle, subject(make), kind, body, undoes, request);
        });
    }

    /** Returns the log, oldest first. */
    public List<HistoryEntry> entries(String make) {
        return jdbi.withHandle(handle -> Ledger.of(handle, subject(make)));
    }

    /** Returns the makes that are not finished, latest first. */
    public List<Make> open() {
        return jdbi.withHandle(
                handle -> handle.createQuery("SELECT * FROM make WHERE finished IS NULL ORDER BY begun DESC, id")
                        .map(MAKE)
                        .list());
    }

    public Optional<Make> make(String id) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT * FROM make WHERE id = :id")
                .bind("id", id)
                .map(MAKE)
                .findOne());
    }

    /**
     * Makes a batch of a make: the lots are drawn down, what is left over is put on the shelf and the log is closed, all at once or
     * not at all.
     *
     * @param body JSON of the batch
     * @param left lots that the make left over
     */
    public Batch finish(String make, String body, List<LotMove> taken, List<Lots.NewLot> left, String request) {
        Ledger.once(jdbi, request, handle -> {
            Make open = requireOpen(handle, make);
            String now = Instant.now().toString();
            handle.createUpdate("UPDATE make SET finished = :now WHERE id = :id")
                    .bind("now", now)
                    .bind("id", make)
                    .execute();
            handle.createUpdate("INSERT INTO batch (id, make, recipe, number, made, body) VALUES (:id, :make, :recipe,"
                            + " (SELECT coalesce(max(number), 0) + 1 FROM batch), :now, :body)")
                    .bind("id", Ids.next())
                    .bind("make", make)
                    .bind("recipe", open.recipe())
                    .bind("now", now)
                    .bind("body", body)
                    .execute();
            int part = 0;
            for (LotMove move : taken) {
                part++;
                Lots.moved(handle, move, "lot.moved", null, request + "/" + part);
            }
            Lots.left(handle, left, request);
            return Ledger.write(handle, subject(make), "make.finished", body, null, request);
        });
        return batchOf(make).orElseThrow();
    }

    /** Returns a make that is not finished, and keeps others from changing it until the transaction ends. */
    private static Make requireOpen(Handle handle, String id) {
        return handle.createQuery("UPDATE make SET finished = NULL WHERE id = :id AND finished IS NULL RETURNING *")
                .bind("id", id)
                .map(MAKE)
                .findOne()
                .orElseThrow(() -> noneOpen(handle, id));
    }

    private static RuntimeException noneOpen(Handle handle, String id) {
        boolean finished = handle.createQuery("SELECT * FROM make WHERE id = :id")
                .bind("id", id)
                .map(MAKE)
                .findOne()
                .isPresent();
        return finished
                ? new SettledException("the make " + id + " is finished")
                : new MissingException("there is no make " + id);
    }

    public Optional<Batch> batchOf(String make) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT * FROM batch WHERE make = :make")
                .bind("make", make)
                .map(BATCH)
                .findOne());
    }

    public Optional<Batch> batch(String id) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT * FROM batch WHERE id = :id")
                .bind("id", id)
                .map(BATCH)
                .findOne());
    }

    /** Returns all batches, latest first. */
    public List<Batch> batches() {
        return jdbi.withHandle(Makes::batches);
    }

    static List<Batch> batches(Handle handle) {
        return handle.createQuery("SELECT * FROM batch ORDER BY number DESC")
                .map(BATCH)
                .list();
    }

    private static String subject(String id) {
        return "make:" + id;
    }
}
