package org.stillroom.studio.usecase.shelf;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    private static Map<String, String> typed(Lot lot) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put(LotKeys.ID, lot.id());
        typed.putAll(ReadLot.typed(lot));
        return typed;
    }
}
