package org.stillroom.studio.usecase.shelf;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.shelffile.ShelfTable;
import org.stillroom.studio.store.Lot;

/** Hands the shelf out as a table that can be taken in again without loss. */
public final class ExportShelf {
    private ExportShelf() {}

    /** Returns the shelf as a table, its columns parted by the separator. */
    public static String table(List<Lot> lots, char separator) {
        return ShelfTable.write(lots.stream().map(ExportShelf::typed).toList(), separator);
    }

    /**
     * A lot as other programs see it.
     *
     * @param typed its texts by key, as the table has them
     * @param left what is left, or null when it is not known
     * @param facts what it is taken for; empty as long as it does not say enough
     */
    public record Entry(
            String id, Map<String, String> typed, @Nullable Stock left, List<LotFacts.Fact> facts) {
        public Entry {
            typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
            facts = List.copyOf(facts);
        }
    }

    /** Returns the shelf as other programs see it. */
    public static List<Entry> entries(List<LotOnShelf> lots) {
        return lots.stream().map(ExportShelf::entry).toList();
    }

    private static Entry entry(LotOnShelf lot) {
        Lot it = lot.lot();
        return new Entry(
                it.id(),
                ReadLot.typed(it),
                Stock.isKnown(it) ? Stock.left(it) : null,
                LotFacts.of(lot).map(LotFacts::facts).orElse(List.of()));
    }

    private static Map<String, String> typed(Lot lot) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put(LotKeys.ID, lot.id());
        typed.putAll(ReadLot.typed(lot));
        return typed;
    }
}
