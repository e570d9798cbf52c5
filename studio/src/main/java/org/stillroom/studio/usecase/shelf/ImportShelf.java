package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.shelffile.LineProblem;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.shelffile.ShelfTable;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.Lots.NewLot;

/**
 * Tells what a table would change on the shelf, and, when that is accepted, changes it: all of it or nothing.
 *
 * <p>A line stands for the lot of its id, else for the one lot of its name and label, else for a new one. A column that the
 * table lacks leaves its field alone; a blank cell makes it blank.
 */
public final class ImportShelf {
    private final OunceMeaning ounce;
    private final List<Lot> shelf;
    private final List<Item> items = new ArrayList<>();
    private final List<LineProblem> problems = new ArrayList<>();
    private final Set<String> touched = new HashSet<>();

    private ImportShelf(List<Lot> shelf, OunceMeaning ounce) {
        this.shelf = shelf;
        this.ounce = ounce;
    }

    /** What a line of the table comes to. */
    public sealed interface Item {
        /** Returns the line of the table on which it begins. */
        int line();

        /** It would be put on the shelf. */
        record Added(int line, NewLot lot) implements Item {}

        /** It is on the shelf and would be written anew. */
        record Changed(int line, Lot before, NewLot after, List<Difference> differences) implements Item {
            public Changed {
                differences = List.copyOf(differences);
            }
        }

        /** It is on the shelf just so. */
        record Same(int line, Lot lot) implements Item {}
    }

    /** A field that would change. */
    public record Difference(String key, String before, String after) {}

    /**
     * What would be done.
     *
     * @param items one for each line that is in order
     * @param problems what is wrong, by line; while one stands nothing may be accepted
     * @param notes what was passed over
     */
    public record Preview(List<Item> items, List<LineProblem> problems, List<LineProblem> notes) {
        public Preview {
            items = List.copyOf(items);
            problems = List.copyOf(problems);
            notes = List.copyOf(notes);
        }

        public List<Item.Added> added() {
            return of(Item.Added.class);
        }

        public List<Item.Changed> changed() {
            return of(Item.Changed.class);
        }

        public List<Item.Same> same() {
            return of(Item.Same.class);
        }

        private <I extends Item> List<I> of(Class<I> type) {
            return items.stream().filter(type::isInstance).map(type::cast).toList();
        }

        /** Returns whether there is anything to accept. */
        public boolean isAcceptable() {
            return problems.isEmpty() && !(added().isEmpty() && changed().isEmpty());
        }

        /** Returns what tells this preview from one made after the shelf has changed. */
        public String mark() {
            return Integer.toHexString(Objects.hash(
                    added().size(),
                    changed().stream()
                            .map(item -> item.before().id()
                                    + item.before().version()
                                    + item.before().left())
                            .toList()));
        }
    }

    /** Returns what a table would change; nothing is changed. */
    public static Preview preview(String table, List<Lot> shelf, OunceMeaning ounce) {
        ShelfTable read = ShelfTable.read(table);
        ImportShelf at = new ImportShelf(shelf, ounce);
        at.problems.addAll(read.problems());
        read.lines().forEach(at::line);
        return new Preview(at.items, at.problems, read.notes());
    }

    /**
     * Does what a preview told.
     *
     * @return false when the shelf was changed since; nothing is done then
     */
    public static boolean accept(Preview preview, Lots lots, String request) {
        if (!preview.problems().isEmpty()) {
            throw new IllegalStateException("a table with problems is not accepted");
        }
        return lots.deliver(
                preview.added().stream().map(Item.Added::lot).toList(),
                preview.changed().stream()
                        .map(item -> new Lots.Renewal(
                                item.before().id(), item.before().version(), item.after()))
                        .toList(),
                request);
    }

    private void line(ShelfTable.Line line) {
        List<Lot> meant = meant(line.typed());
        if (meant.size() > 1) {
            problem(
                    line.number(),
                    Finding.of(
                            "table-which-lot",
                            Severity.STOP,
                            "",
                            "not clear",
                            meant.size() + " bottles or jars are called “"
                                    + line.typed().get(LotKeys.NAME) + "”.",
                            "Tell them apart by a column “label”, or by “id” as an export has it."));
            return;
        }
        @Nullable Lot before = meant.isEmpty() ? null : meant.get(0);
        if (before != null && !touched.add(before.id())) {
            problem(
                    line.number(),
                    Finding.of(
                            "table-lot-twice",
                            Severity.STOP,
                            "",
                            "said twice",
                            "“" + before.sheet().name() + "” stands in the table twice.",
                            "Keep one line of it, or give them labels."));
            return;
        }
        read(line, before);
    }

    private List<Lot> meant(Map<String, String> typed) {
        String id = typed.getOrDefault(LotKeys.ID, "").strip();
        List<Lot> byId = shelf.stream().filter(lot -> lot.id().equals(id)).toList();
        if (!byId.isEmpty()) {
            return byId;
        }
        String name = typed.getOrDefault(LotKeys.NAME, "").strip();
        String label = typed.getOrDefault(LotKeys.LABEL, "").strip();
        return shelf.stream()
                .filter(lot -> lot.sheet().name().equalsIgnoreCase(name))
                .filter(lot ->
                        Objects.requireNonNullElse(lot.sheet().label(), "").equalsIgnoreCase(label))
                .toList();
    }

    private void read(ShelfTable.Line line, @Nullable Lot before) {
        Map<String, String> typed = new LinkedHashMap<>(before == null ? Map.of() : ReadLot.typed(before));
        typed.putAll(line.typed());
        SheetReading<NewLot> reading = ReadLot.answer(typed, ounce);
        if (reading instanceof SheetReading.Refused<NewLot> refused) {
            for (SheetProblem problem : refused.problems()) {
                Finding finding = problem.finding();
                problem(line.number(), at(problem.key(), finding));
            }
            return;
        }
        NewLot after = ((SheetReading.Understood<NewLot>) reading).value();
        if (before == null) {
            items.add(new Item.Added(line.number(), after));
            return;
        }
        NewLot kept = new NewLot(after.sheet().keeping(before.sheet()), after.left());
        List<Difference> differences = differences(before, kept);
        items.add(
                differences.isEmpty()
                        ? new Item.Same(line.number(), before)
                        : new Item.Changed(line.number(), before, kept, differences));
    }

    private static Finding at(String key, Finding finding) {
        return Finding.of(
                finding.rule(), finding.severity(), key, finding.verdict(), finding.message(), finding.remedy());
    }

    private void problem(int line, Finding finding) {
        problems.add(new LineProblem(line, finding));
    }

    private static List<Difference> differences(Lot before, NewLot after) {
        Map<String, String> was = ReadLot.typed(before);
        Map<String, String> is = ReadLot.typed(new Lot(before.id(), before.version(), after.sheet(), after.left()));
        return LotKeys.ALL.stream()
                .filter(key -> !was.getOrDefault(key, "").equals(is.getOrDefault(key, "")))
                .map(key -> new Difference(key, was.getOrDefault(key, ""), is.getOrDefault(key, "")))
                .toList();
    }
}
