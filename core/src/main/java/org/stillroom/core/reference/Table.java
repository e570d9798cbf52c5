package org.stillroom.core.reference;

import java.util.ArrayList;
import java.util.List;

/**
 * A shipped table: rows of named columns, with commas between them and the lines about it starting with #.
 *
 * <p>A cell that does not read as what is asked of it is a fault of the table and stops at once, naming table, line and column.
 */
public final class Table {
    private final String name;
    private final List<String> columns;
    private final List<Row> rows;

    private Table(String name, List<String> columns, List<Row> rows) {
        this.name = name;
        this.columns = columns;
        this.rows = rows;
    }

    /**
     * Reads a table from its lines.
     *
     * @param name what faults call it
     */
    public static Table of(String name, List<String> lines) {
        List<String> columns = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        Table table = new Table(name, columns, rows);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith("#") || line.isBlank()) {
                continue;
            }
            if (columns.isEmpty()) {
                columns.addAll(cells(line));
            } else {
                rows.add(table.new Row(i + 1, cells(line)));
            }
        }
        return table;
    }

    /**
     * Returns a table of cells that were read before.
     *
     * @param name what faults call it
     */
    public static Table of(String name, List<String> columns, List<List<String>> cells) {
        List<Row> rows = new ArrayList<>();
        Table table = new Table(name, List.copyOf(columns), rows);
        for (List<String> each : cells) {
            rows.add(table.new Row(rows.size() + 1, List.copyOf(each)));
        }
        return table;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().trim());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().trim());
        return cells;
    }

    public List<String> columns() {
        return List.copyOf(columns);
    }

    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /** One row of the table. */
    public final class Row {
        private final int line;
        private final List<String> cells;

        private Row(int line, List<String> cells) {
            this.line = line;
            this.cells = cells;
            if (cells.size() != columns.size()) {
                throw new IllegalStateException(
                        name + ", line " + line + ": " + cells.size() + " cells under " + columns.size() + " columns");
            }
        }

        /** Returns the line of the text on which it stands. */
        public int line() {
            return line;
        }

        /** Returns all cells in the order of the columns. */
        public List<String> cells() {
            return List.copyOf(cells);
        }

        /** Returns the text of a cell, which is never empty. */
        public String text(String column) {
            String text = textOrEmpty(column);
            if (text.isEmpty()) {
                throw fault(column, "is empty");
            }
            return text;
        }

        /** Returns the text of a cell that may be empty. */
        public String textOrEmpty(String column) {
            int at = columns.indexOf(column);
            if (at < 0) {
                throw fault(column, "does not exist");
            }
            return cells.get(at);
        }

        /** Returns the number in a cell. */
        public double number(String column) {
            try {
                double number = Double.parseDouble(text(column));
                if (Double.isFinite(number)) {
                    return number;
                }
            } catch (NumberFormatException e) {
                throw fault(column, "holds no number: " + text(column));
            }
            throw fault(column, "holds no finite number");
        }

        /** Returns the standing that a cell names by its label. */
        public Standing standing(String column) {
            for (Standing standing : Standing.values()) {
                if (standing.label().equals(text(column))) {
                    return standing;
                }
            }
            throw fault(column, "is no standing: " + text(column));
        }

        /** Returns the fault of a cell, to be thrown by who finds that its value cannot be. */
        public IllegalStateException fault(String column, String what) {
            return new IllegalStateException(name + ", line " + line + ", column " + column + ": " + what);
        }
    }
}
