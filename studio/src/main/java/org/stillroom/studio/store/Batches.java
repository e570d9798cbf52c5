package org.stillroom.studio.store;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/** The log of all batches after their make; an entry is about one of them and stands in the history under "batch:ID". */
public final class Batches {
    private final Jdbi jdbi;

    Batches(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /** Looks at what is there before an entry is written, while nobody else writes; it refuses by throwing. */
    @FunctionalInterface
    public interface Judge {
        /**
         * Judges.
         *
         * @param batches all of them
         * @param log of all batches, oldest first
         */
        void judge(List<Batch> batches, List<HistoryEntry> log);
    }

    /**
     * An entry to be written.
     *
     * @param batch id of the batch that it is about
     * @param kind what happened, such as "batch.moved"
     * @param body JSON
     * @param undoes id of the entry that it takes back, or null
     * @param lots what it takes from the shelf or puts back there, in the same moment
     */
    public record Writing(
            String batch,
            String kind,
            String body,
            @Nullable Long undoes,
            List<LotMove> lots) {
        public Writing {
            lots = List.copyOf(lots);
        }
    }

    /**
     * Writes an entry if the judge lets it pass; of two at once the second is judged by what the first left.
     *
     * @throws MissingException when there is no such batch or lot
     * @throws SettledException when what it undoes was undone before
     */
    public HistoryEntry append(Writing writing, Judge judge, String request) {
        return Ledger.once(jdbi, request, handle -> {
            handle.execute("UPDATE cellar SET writings = writings + 1 WHERE id = 1");
            List<Batch> batches = Makes.batches(handle);
            if (batches.stream().noneMatch(batch -> batch.id().equals(writing.batch()))) {
                throw new MissingException("there is no batch " + writing.batch());
            }
            judge.judge(batches, log(handle));
            int part = 0;
            for (LotMove move : writing.lots()) {
                part++;
                Lots.moved(handle, move, "lot.moved", null, request + "/" + part);
            }
            return Ledger.write(
                    handle, subject(writing.batch()), writing.kind(), writing.body(), writing.undoes(), request);
        });
    }

    /** Returns the log of all batches, oldest first. */
    public List<HistoryEntry> log() {
        return jdbi.withHandle(Batches::log);
    }

    private static List<HistoryEntry> log(Handle handle) {
        return handle.createQuery("SELECT history.* FROM history JOIN batch ON history.subject = 'batch:' || batch.id"
                        + " ORDER BY history.id")
                .map(Ledger.ENTRY)
                .list();
    }

    static String subject(String batch) {
        return "batch:" + batch;
    }
}
