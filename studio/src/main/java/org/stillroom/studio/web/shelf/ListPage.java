package org.stillroom.studio.web.shelf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.ShelfBoard;
import org.stillroom.studio.usecase.shelf.StarterBottles;
import org.stillroom.studio.usecase.shelf.TakenBy;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** What stands on the shelf, board by board; and what was taken off it. */
public final class ListPage {
    /** How far back the page of what was removed looks. */
    private static final int ENTRIES = 2_000;

    private final Desk desk;

    ListPage(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.get("/shelf", this::show).get("/shelf/removed", this::removed).post("/shelf/undo", this::undo);
    }

    /**
     * A board with what stands on it.
     *
     * @param all how many lots there are, whatever is looked for
     */
    public record Board(ShelfBoard board, String name, int all, List<LotRow> rows) {}

    private void show(Visit visit) {
        List<LotOnShelf> lots = desk.everything();
        String undo = visit.field("removed");
        if (lots.isEmpty()) {
            visit.page(visit.words().say("shelf.title"), ShelfRoom.KEY)
                    .style("shelf.css")
                    .show("shelf/first.jte", Map.of("spirits", StarterBottles.spirits(), "undo", undo));
            return;
        }
        String seek = visit.field("seek").strip();
        String sort = visit.field("sort");
        List<Board> boards = boards(lots, seek, sort, new Shown(visit.words()));
        visit.page(visit.words().say("shelf.title"), ShelfRoom.KEY)
                .style("shelf.css")
                .script("shelf.js")
                .show(
                        "shelf/list.jte",
                        Map.of("boards", boards, "count", lots.size(), "seek", seek, "sort", sort, "undo", undo));
    }

    private List<Board> boards(List<LotOnShelf> lots, String seek, String sort, Shown shown) {
        List<TakenBy> taken = desk.taken();
        Grounds grounds = MakersGrounds.of(desk.store());
        List<Board> boards = new ArrayList<>();
        for (ShelfBoard board : ShelfBoard.values()) {
            List<LotOnShelf> on = lots.stream()
                    .filter(lot -> ShelfBoard.of(lot.lot().sheet().kind()) == board)
                    .toList();
            if (on.isEmpty()) {
                continue;
            }
            List<LotRow> rows = on.stream()
                    .map(lot -> LotRow.of(lot, lots, taken, grounds, shown))
                    .filter(row -> row.answers(seek))
                    .filter(row -> sort.isEmpty() || sort.equals(board.key()))
                    .toList();
            boards.add(new Board(board, shown.words().say("shelf.board." + board.key()), on.size(), rows));
        }
        return boards;
    }

    private void removed(Visit visit) {
        List<HistoryEntry> entries = desk.store().history().latest(Long.MAX_VALUE, ENTRIES);
        Set<Long> undone = new HashSet<>();
        List<Removal> removals = new ArrayList<>();
        for (HistoryEntry entry : entries) {
            if (entry.undoes() != null) {
                undone.add(entry.undoes());
            }
            boolean isRemoval =
                    entry.kind().equals("lot.removed") || entry.kind().equals("instrument.removed");
            if (isRemoval && !undone.contains(entry.id())) {
                removals.add(new Removal(
                        entry.id(), LotHistory.name(entry), visit.words().moment(entry.at())));
            }
        }
        visit.page(visit.words().say("shelf.removedTitle"), ShelfRoom.KEY)
                .style("shelf.css")
                .show("shelf/removed.jte", Map.of("removals", removals));
    }

    /** Something that was taken off the shelf and can be put back. */
    public record Removal(long entry, String name, String when) {}

    /** Undoes an entry of the history of the shelf; its subject tells whether it is of a lot or of an instrument. */
    private void undo(Visit visit) {
        String typed = visit.field("entry");
        long entry = typed.matches("\\d{1,18}") ? Long.parseLong(typed) : -1;
        HistoryEntry done = desk.store().history().entry(entry).orElse(null);
        if (done == null) {
            visit.notFound();
            return;
        }
        if (done.subject().startsWith("instrument:")) {
            String id = done.subject().substring("instrument:".length());
            desk.store().instruments().bringBack(id, entry, visit.request());
            visit.goOn("/shelf/instruments");
            return;
        }
        desk.store().lots().undo(entry, visit.request());
        visit.goOn("/shelf/lots/" + done.subject().substring("lot:".length()));
    }
}
