package org.stillroom.studio.store;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jspecify.annotations.Nullable;

/** What the maker measures with, and empty jars with their tare. */
public final class Instruments {
    private static final RowMapper<Instrument> INSTRUMENT = (row, context) -> new Instrument(
            row.getString("id"), row.getInt("version"), Bodies.read(row.getString("body"), InstrumentSheet.class));

    private final Jdbi jdbi;

    Instruments(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    public Instrument add(InstrumentSheet sheet, String request) {
        HistoryEntry entry = Ledger.once(jdbi, request, handle -> {
            String id = Ids.next();
            handle.createUpdate("INSERT INTO instrument (id, version, name, kind, body)"
                            + " VALUES (:id, 1, :name, :kind, :body)")
                    .bind("id", id)
                    .bind("name", sheet.name())
                    .bind("kind", sheet.kind())
                    .bind("body", Bodies.write(sheet))
                    .execute();
            return Ledger.write(handle, subject(id), "instrument.added", sheet, null, request);
        });
        return instrument(entry.subject().substring("instrument:".length())).orElseThrow();
    }

    /**
     * Writes the sheet anew. A calibration stays as long as the sheet is about the same thing.
     *
     * @param version of the instrument that the change began with
     */
    public Changing<Instrument> change(String id, int version, InstrumentSheet sheet, String request) {
        return change(id, version, "instrument.changed", sheet::after, request);
    }

    /** Keeps a calibration, or with null forgets the one there is; what else is written about it stays. */
    public Changing<Instrument> calibrate(String id, int version, @Nullable Calibration calibration, String request) {
        String kind = calibration == null ? "instrument.uncalibrated" : "instrument.calibrated";
        return change(id, version, kind, before -> before.with(calibration), request);
    }

    private Changing<Instrument> change(
            String id, int version, String kind, UnaryOperator<InstrumentSheet> change, String request) {
        try {
            Ledger.once(jdbi, request, handle -> {
                InstrumentSheet sheet = handle.createQuery("SELECT * FROM instrument WHERE id = :id AND removed = 0")
                        .bind("id", id)
                        .map(INSTRUMENT)
                        .findOne()
                        .map(Instrument::sheet)
                        .map(change)
                        .orElseThrow(OvertakenException::new);
                int changed = handle.createUpdate("UPDATE instrument SET version = version + 1, name = :name,"
                                + " kind = :kind, body = :body WHERE id = :id AND version = :version AND removed = 0")
                        .bind("name", sheet.name())
                        .bind("kind", sheet.kind())
                        .bind("body", Bodies.write(sheet))
                        .bind("id", id)
                        .bind("version", version)
                        .execute();
                if (changed == 0) {
                    throw new OvertakenException();
                }
                return Ledger.write(handle, subject(id), kind, sheet, null, request);
            });
        } catch (OvertakenException overtaken) {
            return new Changing.Overtaken<>(
                    instrument(id).orElseThrow(() -> new MissingException("there is no instrument " + id)));
        }
        return new Changing.Changed<>(instrument(id).orElseThrow());
    }

    /** Takes an instrument away; {@link #bringBack} undoes it. */
    public HistoryEntry remove(String id, String request) {
        return mark(id, 1, "instrument.removed", null, request);
    }

    /**
     * Undoes a removal.
     *
     * @param removal id of the entry of the removal
     */
    public HistoryEntry bringBack(String id, long removal, String request) {
        return mark(id, 0, "instrument.brought-back", removal, request);
    }

    private HistoryEntry mark(String id, int removed, String kind, @Nullable Long undoes, String request) {
        return Ledger.once(jdbi, request, handle -> {
            int marked = handle.createUpdate("UPDATE instrument SET removed = :removed WHERE id = :id")
                    .bind("removed", removed)
                    .bind("id", id)
                    .execute();
            if (marked == 0) {
                throw new MissingException("there is no instrument " + id);
            }
            return Ledger.write(handle, subject(id), kind, "{}", undoes, request);
        });
    }

    /** Returns all of them by name. */
    public List<Instrument> all() {
        return jdbi.withHandle(
                handle -> handle.createQuery("SELECT * FROM instrument WHERE removed = 0 ORDER BY name, id")
                        .map(INSTRUMENT)
                        .list());
    }

    public Optional<Instrument> instrument(String id) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT * FROM instrument WHERE id = :id AND removed = 0")
                .bind("id", id)
                .map(INSTRUMENT)
                .findOne());
    }

    private static String subject(String id) {
        return "instrument:" + id;
    }
}
