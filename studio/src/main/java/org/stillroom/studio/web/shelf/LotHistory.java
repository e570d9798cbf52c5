package org.stillroom.studio.web.shelf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.shelf.Stock;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What happened to a lot, in words. */
public final class LotHistory {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private LotHistory() {}

    /**
     * Something that happened.
     *
     * @param entry number of its entry
     * @param undoable whether it can be undone and was not
     */
    public record Line(long entry, String when, String what, boolean undoable) {}

    /** Returns what happened, latest first. */
    static List<Line> of(Lot lot, List<HistoryEntry> entries, Shown shown) {
        Set<Long> undone = new HashSet<>();
        entries.stream().map(HistoryEntry::undoes).forEach(undone::add);
        List<Line> lines = new ArrayList<>();
        for (HistoryEntry entry : entries) {
            boolean undoable = (entry.kind().equals("lot.moved") || entry.kind().equals("lot.measured"))
                    && !undone.contains(entry.id());
            lines.add(0, new Line(entry.id(), shown.words().moment(entry.at()), what(lot, entry, shown), undoable));
        }
        return lines;
    }

    private static String what(Lot lot, HistoryEntry entry, Shown shown) {
        JsonNode body = JSON.readTree(entry.body());
        String key = "shelf.history." + entry.kind().substring(entry.kind().indexOf('.') + 1);
        return switch (entry.kind()) {
            case "lot.moved", "lot.measured", "lot.move-undone" ->
                shown.words()
                        .say(
                                key,
                                amount(body.path("before").asDouble(), lot, shown),
                                amount(body.path("after").asDouble(), lot, shown),
                                why(body.path("why").asString(""), shown));
            case "lot.added", "lot.changed", "lot.removed", "lot.brought-back" ->
                shown.words().say(key);
            default -> entry.kind();
        };
    }

    private static String amount(double amount, Lot lot, Shown shown) {
        return shown.stock(new Stock(amount, lot.sheet().unit())).text();
    }

    /** Reasons of the shelf's own pages are keys; those of others are words. */
    private static String why(String why, Shown shown) {
        return switch (why) {
            case "weighed", "counted", "table", "undone" -> shown.words().say("shelf.why." + why);
            default -> why;
        };
    }

    /** Returns the name of what an entry is about, or its subject where the entry does not hold it. */
    static String name(HistoryEntry entry) {
        String name = JSON.readTree(entry.body()).path("sheet").path("name").asString("");
        return name.isEmpty() ? entry.subject() : name;
    }
}
