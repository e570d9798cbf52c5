package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Lots.NewLot;

/** Reads a shelf from a table, for who has no studio at hand. */
public final class ReadShelf {
    private ReadShelf() {}

    /**
     * What stands in it.
     *
     * @param lots each with the number of its line as its id
     * @param problems what is wrong with it; while one stands there are no lots
     */
    public record Outcome(List<LotOnShelf> lots, List<Finding> problems) {
        public Outcome {
            lots = List.copyOf(lots);
            problems = List.copyOf(problems);
        }
    }

    /** Returns the bottles and jars of a table, in its order. */
    public static Outcome answer(String table, OunceMeaning ounce) {
        ImportShelf.Preview preview = ImportShelf.preview(table, List.of(), ounce);
        if (!preview.problems().isEmpty()) {
            return new Outcome(
                    List.of(),
                    preview.problems().stream()
                            .map(problem -> onLine(problem.line(), problem.finding()))
                            .toList());
        }
        List<Lot> lots = new ArrayList<>();
        for (ImportShelf.Item.Added item : preview.added()) {
            NewLot lot = item.lot();
            lots.add(new Lot(String.valueOf(item.line()), 1, lot.sheet(), lot.left()));
        }
        return new Outcome(new ShelfLots(ounce).of(lots), List.of());
    }

    private static Finding onLine(int line, Finding finding) {
        String where = line == 0 ? finding.where() : ("line " + line + ", " + finding.where()).replaceAll(", $", "");
        return Finding.of(
                finding.rule(), finding.severity(), where, finding.verdict(), finding.message(), finding.remedy());
    }
}
