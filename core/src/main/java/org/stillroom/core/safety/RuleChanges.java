package org.stillroom.core.safety;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.TableSet;

/**
 * What a signed-off edition would change, row by row.
 *
 * @param file the edition
 * @param rows that are added, changed, removed or kept against it; what stays as it is, is not among them
 * @param same how many rows stay as they are
 * @param merged the table that would be in force
 * @param inForce the edition that is, or null where it is what ships
 */
public record RuleChanges(
        SignedRules file, List<Change> rows, int same, Table merged, TableSet.@Nullable Edition inForce) {
    /** Law and guidance of longer ago are asked about. Own judgement. */
    private static final int OLD_DAYS = 366;

    public RuleChanges {
        rows = List.copyOf(rows);
    }

    /** What calls for a look at the day of an edition. */
    public enum Day {
        BEFORE_WHAT_IS_IN_FORCE("It is of a day before that of the edition in force."),
        LONG_AGO("It is of more than a year ago: law may have changed since."),
        TO_COME("It is of a day to come: what it says is not in force yet.");

        private final String said;

        Day(String said) {
            this.said = said;
        }

        public String said() {
            return said;
        }
    }

    /** Returns what is to be asked about the day of the file, seen from a day. */
    public List<Day> asked(LocalDate today) {
        LocalDate day = file.edition().day();
        List<Day> asked = new ArrayList<>();
        if (inForce != null && day.isBefore(inForce.day())) {
            asked.add(Day.BEFORE_WHAT_IS_IN_FORCE);
        }
        if (day.isBefore(today.minusDays(OLD_DAYS))) {
            asked.add(Day.LONG_AGO);
        }
        if (day.isAfter(today)) {
            asked.add(Day.TO_COME);
        }
        return asked;
    }

    /** What becomes of a row. */
    public enum Fate {
        ADDED("added"),
        CHANGED("changed"),
        REMOVED("removed"),
        /** The file would take a stop away, and it stays. */
        KEPT("kept, a hard stop");

        private final String label;

        Fate(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /**
     * One row.
     *
     * @param about what it is about
     * @param line of the file, or 0 where the file does not have it
     * @param differences cells before and after, by column
     * @param loosens whether less would be forbidden or warned of than now
     */
    public record Change(Fate fate, String about, int line, Map<String, Difference> differences, boolean loosens) {
        public Change {
            differences = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(differences));
        }
    }

    /** A cell before and after. */
    public record Difference(String before, String after) {}

    /** Returns the rows by which less would be forbidden or warned of, or that a file cannot take away. */
    public List<Change> loud() {
        return rows.stream()
                .filter(row -> row.loosens() || row.fate() == Fate.KEPT)
                .toList();
    }

    /** Returns what an edition would change in the tables in force. */
    public static RuleChanges between(SignedRules file, TableSet tables) {
        RuleTable of = file.of();
        Table now = tables.open(of.path());
        Map<String, Table.Row> before = byKey(of, now);
        Map<String, Table.Row> after = byKey(of, file.table());
        Map<String, Table.Row> shipped = byKey(of, TableSet.SHIPPED.open(of.path()));
        List<Change> changes = new ArrayList<>();
        List<List<String>> merged = new ArrayList<>();
        int same = 0;
        for (Map.Entry<String, Table.Row> each : after.entrySet()) {
            Table.@Nullable Row old = before.get(each.getKey());
            merged.add(each.getValue().cells());
            if (old != null && old.cells().equals(each.getValue().cells())) {
                same++;
            } else {
                changes.add(change(of, now.columns(), old, each.getValue(), shipped.get(each.getKey())));
            }
        }
        for (Map.Entry<String, Table.Row> each : before.entrySet()) {
            Table.@Nullable Row row = after.get(each.getKey());
            if (isStopLost(of, each.getValue(), row)) {
                merged.add(each.getValue().cells());
                changes.add(new Change(
                        Fate.KEPT, of.about(each.getValue()), row == null ? 0 : row.line(), Map.of(), false));
            } else if (row == null) {
                changes.add(new Change(
                        Fate.REMOVED, of.about(each.getValue()), 0, Map.of(), of.loosens(each.getValue(), null)));
            }
        }
        TableSet.@Nullable Edition inForce = tables.editions().stream()
                .filter(edition -> edition.table().equals(of.label()))
                .findFirst()
                .orElse(null);
        return new RuleChanges(file, changes, same, Table.of(of.label(), now.columns(), merged), inForce);
    }

    private static boolean isStopLost(RuleTable of, Table.Row before, Table.@Nullable Row after) {
        return of.isStop(before) && of.loosens(before, after);
    }

    /** A row that comes back is held to the one that ships, so that none returns looser unseen. */
    private static Change change(
            RuleTable of, List<String> columns, Table.@Nullable Row old, Table.Row row, Table.@Nullable Row shipped) {
        Map<String, Difference> differences = new LinkedHashMap<>();
        for (String column : columns) {
            String was = old == null ? "" : old.textOrEmpty(column);
            String is = row.textOrEmpty(column);
            if (!was.equals(is)) {
                differences.put(column, new Difference(was, is));
            }
        }
        boolean looser = shipped != null && of.loosens(shipped, row);
        return old == null
                ? new Change(Fate.ADDED, of.about(row), row.line(), differences, looser || of.loosensWhenAdded())
                : new Change(Fate.CHANGED, of.about(row), row.line(), differences, of.loosens(old, row));
    }

    /** A stop that was kept against a file stands beside the row that the file brought of the same; the later line is the stop. */
    private static Map<String, Table.Row> byKey(RuleTable of, Table table) {
        Map<String, Table.Row> rows = new LinkedHashMap<>();
        table.rows().forEach(row -> rows.put(of.key(row), row));
        return rows;
    }
}
