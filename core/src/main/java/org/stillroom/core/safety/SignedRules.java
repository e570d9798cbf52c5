package org.stillroom.core.safety;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.TableSet;
import org.stillroom.core.reference.TableSet.Edition;
import org.stillroom.core.reference.Tables;

/**
 * Another edition of one table of rules, from a file that somebody stands for: lines that begin with # say of which table, who signed
 * it off, as of when and from where; below them stands the whole table, with the columns of the one that ships.
 *
 * <p>The form is in docs/rules-file.md.
 *
 * @param of which table
 * @param edition who stands for it, as of when
 * @param table the rows
 */
public record SignedRules(RuleTable of, Edition edition, Table table) {
    private static final int MOST_LINES = 2000;
    private static final String OF = "table";
    private static final String SIGNED = "signed off by";
    private static final String AS_OF = "as of";
    private static final String SOURCE = "source";

    /**
     * What was made of a text.
     *
     * @param rules the edition, or null where anything is wrong
     * @param problems everything that is, by line
     */
    public record Reading(@Nullable SignedRules rules, List<Finding> problems) {
        public Reading {
            problems = List.copyOf(problems);
        }
    }

    /** Reads a file. */
    public static Reading read(String text) {
        return new Reader(text.replace("\uFEFF", "").lines().toList()).reading();
    }

    /** Returns the tables with this edition in its place; stops that it leaves out stay in force. */
    public TableSet takenInto(TableSet tables) {
        return tables.with(of.path(), edition, RuleChanges.between(this, tables).merged());
    }

    private static final class Reader {
        private final List<String> lines;
        private final Map<String, String> head = new HashMap<>();
        private final List<Finding> problems = new ArrayList<>();
        private int columnsAt = -1;

        Reader(List<String> lines) {
            this.lines = lines;
        }

        Reading reading() {
            if (lines.size() > MOST_LINES) {
                problem(0, "It has more than 2000 lines.", "Send one table.");
                return new Reading(null, problems);
            }
            readHead();
            @Nullable RuleTable of = of();
            required(SIGNED, "who stands for it");
            required(SOURCE, "where its figures are from");
            String day = head.getOrDefault(AS_OF, "");
            if (!isDay(day)) {
                problem(
                        0,
                        day.isEmpty()
                                ? "It does not say as of which day."
                                : "It is as of \"" + day + "\", which is no day.",
                        "Write it on a line, such as: # As of: 2026-10-31");
            }
            if (of == null || !hasColumnsOf(of)) {
                return new Reading(null, problems);
            }
            checkRows(of);
            if (problems.isEmpty()) {
                checkWhole(of);
            }
            return problems.isEmpty() ? new Reading(whole(of), problems) : new Reading(null, problems);
        }

        private static boolean isDay(String text) {
            try {
                LocalDate.parse(text);
                return true;
            } catch (DateTimeParseException noDay) {
                return false;
            }
        }

        private void readHead() {
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i).strip();
                int colon = line.indexOf(':');
                if (line.startsWith("#") && colon > 0) {
                    String name = line.substring(1, colon).strip().toLowerCase(java.util.Locale.ROOT);
                    head.putIfAbsent(name, line.substring(colon + 1).strip());
                } else if (!line.isEmpty() && !line.startsWith("#") && columnsAt < 0) {
                    columnsAt = i;
                }
            }
        }

        private @Nullable RuleTable of() {
            String name = head.getOrDefault(OF, "");
            List<String> all = new ArrayList<>();
            for (RuleTable each : RuleTable.values()) {
                all.add(each.label());
                if (each.label().equals(name)) {
                    return each;
                }
            }
            problem(
                    0,
                    name.isEmpty() ? "It does not say of which table it is." : "There is no table \"" + name + "\".",
                    "Write one of these on a line \"# Table: ...\": " + String.join(", ", all) + ".");
            return null;
        }

        private void required(String name, String what) {
            if (head.getOrDefault(name, "").isEmpty()) {
                String written = Character.toUpperCase(name.charAt(0)) + name.substring(1);
                problem(0, "It does not say " + what + ".", "Write it on a line \"# " + written + ": ...\".");
            }
        }

        private boolean hasColumnsOf(RuleTable of) {
            List<String> wanted = Tables.open(of.path()).columns();
            List<String> found = columnsAt < 0
                    ? List.of()
                    : Table.of(of.label(), List.of(lines.get(columnsAt))).columns();
            if (!found.equals(wanted)) {
                problem(
                        columnsAt + 1,
                        "Its columns are not those of " + of.label() + ".",
                        "Write " + String.join(",", wanted));
            }
            return found.equals(wanted);
        }

        private void checkRows(RuleTable of) {
            Table shipped = Tables.open(of.path());
            Set<String> seen = new HashSet<>();
            int rows = 0;
            for (int i = columnsAt + 1; i < lines.size(); i++) {
                String line = lines.get(i);
                if (!line.isBlank() && !line.startsWith("#")) {
                    rows++;
                    try {
                        Table.Row row = alone(of, i);
                        of.check(row, shipped);
                        if (!seen.add(of.key(row))) {
                            problem(i + 1, of.about(row) + " stands there twice.", "Keep one of the two lines.");
                        }
                    } catch (IllegalStateException fault) {
                        problem(i + 1, fault.getMessage() + ".", "Write it as in the table that ships.");
                    }
                }
            }
            if (rows == 0) {
                problem(0, "It has no rows.", "A file brings the whole table, not only what changes.");
            }
        }

        private void checkWhole(RuleTable of) {
            try {
                of.checkWhole(Table.of(of.label(), lines), Tables.open(of.path()));
            } catch (IllegalStateException fault) {
                problem(0, fault.getMessage() + ".", "A file brings the whole table, not only what changes.");
            }
        }

        /** Reads one line under its columns, so that a slip in one hides none in the next; it keeps its number. */
        private Table.Row alone(RuleTable of, int at) {
            List<String> bare = new ArrayList<>(Collections.nCopies(at + 1, ""));
            bare.set(columnsAt, lines.get(columnsAt));
            bare.set(at, lines.get(at));
            return Table.of(of.label(), bare).rows().get(0);
        }

        private SignedRules whole(RuleTable of) {
            return new SignedRules(
                    of,
                    new Edition(
                            of.label(),
                            head.getOrDefault(AS_OF, ""),
                            head.getOrDefault(SIGNED, ""),
                            head.getOrDefault(SOURCE, "")),
                    Table.of(of.label(), lines));
        }

        private void problem(int line, String message, String remedy) {
            problems.add(Finding.of(
                    "rules-file", Severity.STOP, line == 0 ? "" : "line " + line, "not understood", message, remedy));
        }
    }
}
