package org.stillroom.core.reference;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The tables in force: those that ship with the program, and in place of some the ones that a maker took from signed-off files. */
public final class TableSet {
    /** What ships with the program. */
    public static final TableSet SHIPPED = new TableSet(Map.of(), List.of());

    private final Map<String, Table> taken;
    private final List<Edition> editions;

    private TableSet(Map<String, Table> taken, List<Edition> editions) {
        this.taken = Map.copyOf(taken);
        this.editions = List.copyOf(editions);
    }

    /**
     * Whose edition of a table is in force.
     *
     * @param table what it is called
     * @param asOf day of its figures, as 2026-10-31
     * @param signedBy who stands for it
     * @param source where its figures are from
     */
    public record Edition(String table, String asOf, String signedBy, String source) {
        /**
         * Returns the day as of which it is.
         *
         * @throws java.time.format.DateTimeParseException when none is said
         */
        public LocalDate day() {
            return LocalDate.parse(asOf);
        }

        /** Returns it in words. */
        public String told() {
            return table + " as of " + asOf + ", signed off by " + signedBy;
        }
    }

    /**
     * Returns the table in force.
     *
     * @param name its path below this package
     */
    public Table open(String name) {
        Table table = taken.get(name);
        return table == null ? Tables.open(name) : table;
    }

    /** Returns the same with another edition of one table. */
    public TableSet with(String name, Edition edition, Table table) {
        Map<String, Table> more = new HashMap<>(taken);
        more.put(name, table);
        List<Edition> now = new ArrayList<>(editions);
        now.removeIf(each -> each.table().equals(edition.table()));
        now.add(edition);
        return new TableSet(more, now);
    }

    /** Returns the editions that stand in place of shipped tables; empty where all are as shipped. */
    public List<Edition> editions() {
        return editions;
    }
}
