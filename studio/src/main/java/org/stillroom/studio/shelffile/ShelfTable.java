package org.stillroom.studio.shelffile;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * The shelf as a table: a heading, then a line for each bottle or jar, under the keys of {@link LotKeys}.
 *
 * @param lines what stands in it
 * @param problems what is wrong with it as a table; while one stands, nothing of it may be taken
 * @param notes what was passed over
 */
public record ShelfTable(List<Line> lines, List<LineProblem> problems, List<LineProblem> notes) {
    /** A text that a spreadsheet would take for a formula, or one that was kept from it. */
    private static final Pattern FORMULA = Pattern.compile("'*[=+\\-@\\t\\r].*", Pattern.DOTALL);

    public ShelfTable {
        lines = List.copyOf(lines);
        problems = List.copyOf(problems);
        notes = List.copyOf(notes);
    }

    /**
     * A bottle or jar as it stands in the table.
     *
     * @param number of the line on which it begins
     * @param typed its texts by key; a key is there when the table has the column
     */
    public record Line(int number, Map<String, String> typed) {}

    /** Reads a table; kinds written in German come back as recipe files name them. */
    public static ShelfTable read(String text) {
        CsvTable table = CsvTable.read(text, cell -> Headings.key(cell) != null);
        if (table.rows().isEmpty()) {
            return new ShelfTable(
                    List.of(), table.problems().isEmpty() ? List.of(empty()) : table.problems(), List.of());
        }
        return new Reading(table).all();
    }

    private static LineProblem empty() {
        return problem(
                0,
                "table-empty",
                "nothing there",
                "There is nothing in the table.",
                "Paste it, with its headings in the first line.");
    }

    private static LineProblem problem(int line, String rule, String verdict, String message, String remedy) {
        return new LineProblem(line, Finding.of(rule, Severity.STOP, CsvTable.where(line), verdict, message, remedy));
    }

    /** Writes a table with the columns that any of the lots needs; what a spreadsheet would run is kept from it. */
    public static String write(List<Map<String, String>> lots, char separator) {
        List<String> columns = LotKeys.ALL.stream()
                .filter(key -> key.equals(LotKeys.NAME)
                        || key.equals(LotKeys.KIND)
                        || lots.stream()
                                .anyMatch(lot -> !lot.getOrDefault(key, "").isEmpty()))
                .toList();
        StringWriter out = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder()
                .fieldSeparator(separator)
                .lineDelimiter(LineDelimiter.CRLF)
                .build(out)) {
            csv.writeRecord(columns);
            for (Map<String, String> lot : lots) {
                csv.writeRecord(columns.stream()
                        .map(key -> guarded(lot.getOrDefault(key, "")))
                        .toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be written", e);
        }
        return out.toString();
    }

    private static String guarded(String text) {
        return FORMULA.matcher(text).matches() ? "'" + text : text;
    }

    private static String unguarded(String text) {
        return text.startsWith("'") && FORMULA.matcher(text).matches() ? text.substring(1) : text;
    }

    /** One reading: the columns, then the lines below them. */
    private static final class Reading {
        private final CsvTable table;
        private final List<Line> lines = new ArrayList<>();
        private final List<LineProblem> problems;
        private final List<LineProblem> notes = new ArrayList<>();

        Reading(CsvTable table) {
            this.table = table;
            this.problems = new ArrayList<>(table.problems());
        }

        ShelfTable all() {
            CsvTable.Row heading = table.rows().get(0);
            List<@Nullable String> columns = columns(heading);
            if (!columns.contains(LotKeys.NAME)) {
                problems.add(problem(
                        heading.line(),
                        "table-headings",
                        "no headings",
                        "The first line names no column “name”.",
                        "Begin with a line such as: name;kind;strength;left"));
                return new ShelfTable(List.of(), problems, notes);
            }
            table.rows().stream().skip(1).forEach(row -> line(row, columns));
            return new ShelfTable(lines, problems, notes);
        }

        private List<@Nullable String> columns(CsvTable.Row heading) {
            List<@Nullable String> columns = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            for (String cell : heading.cells()) {
                String key = Headings.key(cell);
                columns.add(key);
                if (key == null && !cell.isBlank()) {
                    notes.add(new LineProblem(
                            heading.line(),
                            Finding.of(
                                    "table-column",
                                    Severity.CAUTION,
                                    CsvTable.where(heading.line()),
                                    "passed over",
                                    "The column “" + cell.strip() + "” is not known and is passed over.",
                                    "Rename it if it is meant to be read.")));
                } else if (key != null && !seen.add(key)) {
                    problems.add(problem(
                            heading.line(),
                            "table-column-twice",
                            "said twice",
                            "Two columns say the “" + key + "”.",
                            "Keep one of them."));
                }
            }
            return columns;
        }

        private void line(CsvTable.Row row, List<@Nullable String> columns) {
            if (row.cells().size() > columns.size()) {
                problems.add(problem(
                        row.line(),
                        "table-cells",
                        "too many values",
                        "There are " + row.cells().size() + " values for " + columns.size() + " columns.",
                        "Put a value that holds the separator, such as a decimal comma, in quotes."));
                return;
            }
            Map<String, String> typed = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                String key = columns.get(i);
                if (key != null) {
                    String cell = i < row.cells().size() ? unguarded(row.cells().get(i)) : "";
                    typed.put(key, key.equals(LotKeys.KIND) ? Headings.kind(cell) : cell);
                }
            }
            lines.add(new Line(row.line(), typed));
        }
    }
}
