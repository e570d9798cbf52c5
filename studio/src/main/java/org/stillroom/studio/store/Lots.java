package org.stillroom.studio.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jspecify.annotations.Nullable;

/** The bottles and jars of the shelf. Amounts only move by entries of the history. */
public final class Lots {
    static final RowMapper<Lot> LOT = (row, context) -> new Lot(
            row.getString("id"),
            row.getInt("version"),
            Bodies.read(row.getString("body"), LotSheet.class),
            row.getDouble("amount"));

    private final Jdbi jdbi;

    Lots(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * A new lot and what is in it.
     *
     * @param left in the unit of the sheet
     */
    public record NewLot(LotSheet sheet, double left) {}

    private record Added(List<Lot> lots) {}

    private record Sheets(LotSheet before, LotSheet after) {}

    private record Amounts(double before, double after, String why) {}

    /** Puts lots on the shelf, all of them or none, and returns them. */
    public List<Lot> add(List<NewLot> lots, String request) {
        HistoryEntry entry = Ledger.once(jdbi, request, handle -> {
            List<Lot> added = lots.stream().map(lot -> inserted(handle, lot)).toList();
            String subject = added.size() == 1 ? subject(added.get(0).id()) : "shelf";
            return Ledger.write(handle, subject, "lot.added", new Added(added), null, request);
        });
        return Bodies.read(entry.body(), Added.class).lots();
    }

    /** Puts on the shelf what a make left over, each lot with an entry of its own. */
    static void left(Handle handle, List<NewLot> lots, String request) {
        for (int i = 0; i < lots.size(); i++) {
            Lot lot = inserted(handle, lots.get(i));
            String own = request + "/left" + (i + 1);
            Ledger.write(handle, subject(lot.id()), "lot.added", new Added(List.of(lot)), null, own);
        }
    }

    private static Lot inserted(Handle handle, NewLot lot) {
        String id = Ids.next();
        handle.createUpdate("INSERT INTO lot (id, version, name, kind, body, amount)"
                        + " VALUES (:id, 1, :name, :kind, :body, :left)")
                .bind("id", id)
                .bind("name", lot.sheet().name())
                .bind("kind", lot.sheet().kind())
                .bind("body", Bodies.write(lot.sheet()))
                .bind("left", lot.left())
                .execute();
        return new Lot(id, 1, lot.sheet(), lot.left());
    }

    /**
     * Writes the sheet of a lot anew.
     *
     * @param version of the lot that the change began with
     * @throws MissingException when there is no such lot
     */
    public Changing<Lot> change(String id, int version, LotSheet sheet, String request) {
        try {
            Ledger.once(jdbi, request, handle -> write(handle, require(handle, id), version, sheet, request));
        } catch (OvertakenException overtaken) {
            return new Changing.Overtaken<>(there(id));
        }
        return new Changing.Changed<>(there(id));
    }

    private Lot there(String id) {
        return lot(id).orElseThrow(() -> new MissingException("there is no lot " + id));
    }

    private static HistoryEntry write(Handle handle, Lot before, int version, LotSheet sheet, String request) {
        int changed = handle.createUpdate("UPDATE lot SET version = version + 1, name = :name, kind = :kind,"
                        + " body = :body WHERE id = :id AND version = :version")
                .bind("name", sheet.name())
                .bind("kind", sheet.kind())
                .bind("body", Bodies.write(sheet))
                .bind("id", before.id())
                .bind("version", version)
                .execute();
        if (changed == 0) {
            throw new OvertakenException();
        }
        Sheets sheets = new Sheets(before.sheet(), sheet);
        return Ledger.write(handle, subject(before.id()), "lot.changed", sheets, null, request);
    }

    /**
     * A lot written anew, sheet and amount.
     *
     * @param id of the lot
     * @param version that the change began with
     * @param now what it is to be
     */
    public record Renewal(String id, int version, NewLot now) {}

    /**
     * Puts lots on the shelf and writes others anew, all of it or nothing.
     *
     * @return false when one of them was changed since it was read; nothing is changed then
     */
    public boolean deliver(List<NewLot> fresh, List<Renewal> renewed, String request) {
        try {
            Ledger.once(jdbi, request, handle -> {
                List<Lot> added =
                        fresh.stream().map(lot -> inserted(handle, lot)).toList();
                for (Renewal renewal : renewed) {
                    renew(handle, renewal, request);
                }
                return Ledger.write(handle, "shelf", "lot.added", new Added(added), null, request);
            });
            return true;
        } catch (OvertakenException overtaken) {
            return false;
        }
    }

    private static void renew(Handle handle, Renewal renewal, String request) {
        Lot before = require(handle, renewal.id());
        String own = request + "/" + renewal.id();
        write(handle, before, renewal.version(), renewal.now().sheet(), own);
        double change = renewal.now().left() - before.left();
        if (change != 0) {
            moved(handle, new LotMove(renewal.id(), change, "table"), "lot.measured", null, own + "/left");
        }
    }

    /** Takes from a lot or adds to it. */
    public HistoryEntry move(LotMove move, String request) {
        return Ledger.once(jdbi, request, handle -> moved(handle, move, "lot.moved", null, request));
    }

    /** Notes how much is in a lot, however much there should be. */
    public HistoryEntry measured(String id, double left, String why, String request) {
        return Ledger.once(jdbi, request, handle -> {
            Lot before = require(handle, id);
            return moved(handle, new LotMove(id, left - before.left(), why), "lot.measured", null, request);
        });
    }

    static HistoryEntry moved(Handle handle, LotMove move, String kind, @Nullable Long undoes, String request) {
        double after = handle.createQuery("UPDATE lot SET amount = amount + :change WHERE id = :id RETURNING amount")
                .bind("change", move.change())
                .bind("id", move.lot())
                .mapTo(Double.class)
                .findOne()
                .orElseThrow(() -> new MissingException("there is no lot " + move.lot()));
        Amounts amounts = new Amounts(after - move.change(), after, move.why());
        return Ledger.write(handle, subject(move.lot()), kind, amounts, undoes, request);
    }

    /** Takes a lot off the shelf; {@link #undo} puts it back. */
    public HistoryEntry remove(String id, String request) {
        return Ledger.once(jdbi, request, handle -> {
            Lot lot = require(handle, id);
            removed(handle, id, 1);
            return Ledger.write(handle, subject(id), "lot.removed", lot, null, request);
        });
    }

    /**
     * Undoes a removal, a move or a measurement by an entry that does the opposite.
     *
     * @param entry id of the entry to undo
     * @throws MissingException when there is no such entry, or it is not of a lot
     * @throws SettledException when it was undone before, or cannot be undone
     */
    public HistoryEntry undo(long entry, String request) {
        return Ledger.once(jdbi, request, handle -> {
            HistoryEntry done = Ledger.entry(handle, entry)
                    .filter(found -> found.subject().startsWith("lot:"))
                    .orElseThrow(() -> new MissingException("there is no entry " + entry + " of a lot"));
            String id = done.subject().substring("lot:".length());
            switch (done.kind()) {
                case "lot.removed" -> {
                    removed(handle, id, 0);
                    return Ledger.write(handle, done.subject(), "lot.brought-back", "{}", entry, request);
                }
                case "lot.moved", "lot.measured" -> {
                    Amounts amounts = Bodies.read(done.body(), Amounts.class);
                    double back = amounts.before() - amounts.after();
                    return moved(handle, new LotMove(id, back, "undone"), "lot.move-undone", entry, request);
                }
                default -> throw new SettledException("an entry \"" + done.kind() + "\" cannot be undone");
            }
        });
    }

    private static void removed(Handle handle, String id, int value) {
        handle.createUpdate("UPDATE lot SET removed = :value WHERE id = :id")
                .bind("value", value)
                .bind("id", id)
                .execute();
    }

    /** Returns a lot of the shelf, and keeps others from changing it until the transaction ends. */
    private static Lot require(Handle handle, String id) {
        return handle.createQuery("UPDATE lot SET removed = 0 WHERE id = :id AND removed = 0 RETURNING *")
                .bind("id", id)
                .map(LOT)
                .findOne()
                .orElseThrow(() -> new MissingException("there is no lot " + id));
    }

    /** Returns all lots on the shelf by name, then by id. */
    public List<Lot> all() {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT * FROM lot WHERE removed = 0 ORDER BY name, id")
                .map(LOT)
                .list());
    }

    public Optional<Lot> lot(String id) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT * FROM lot WHERE id = :id AND removed = 0")
                .bind("id", id)
                .map(LOT)
                .findOne());
    }

    /**
     * Returns a lot as it was written when an entry of the history was, also where it is off the shelf by now; how much is in it is as
     * of today.
     *
     * @param entry id of the entry; {@link Long#MAX_VALUE} for the lot as it is
     */
    public Optional<Lot> asOf(String id, long entry) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT * FROM lot WHERE id = :id")
                .bind("id", id)
                .map(LOT)
                .findOne()
                .map(lot -> new Lot(id, lot.version(), sheet(handle, lot, entry), lot.left())));
    }

    private static LotSheet sheet(Handle handle, Lot lot, long entry) {
        return handle.createQuery("SELECT * FROM history WHERE subject = :subject AND kind = 'lot.changed'"
                        + " AND id > :entry ORDER BY id LIMIT 1")
                .bind("subject", subject(lot.id()))
                .bind("entry", entry)
                .map(Ledger.ENTRY)
                .findOne()
                .map(changed -> Bodies.read(changed.body(), Sheets.class).before())
                .orElse(lot.sheet());
    }

    private static String subject(String id) {
        return "lot:" + id;
    }
}
