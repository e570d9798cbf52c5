package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Rows in aligned columns: texts to the left, figures to the right.
 *
 * <p>Put a figure and its unit in columns of their own, so that the figures line up.
 */
public final class Table {
    private static final String GAP = "  ";

    private final List<Side> sides = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    private boolean headed;

    private enum Side {
        LEFT,
        RIGHT
    }

    /** Adds a column of text with its heading, which may be empty. */
    public Table text(String heading) {
        return column(Side.LEFT, heading);
    }

    /** Adds a column of figures with its heading, which may be empty. */
    public Table figure(String heading) {
        return column(Side.RIGHT, heading);
    }

    private Table column(Side side, String heading) {
        if (rows.size() > 1) {
            throw new IllegalStateException("columns come before rows");
        }
        if (rows.isEmpty()) {
            rows.add(new ArrayList<>());
        }
        sides.add(side);
        rows.get(0).add(heading);
        headed |= !heading.isEmpty();
        return this;
    }

    /** Adds a row, one cell for each column. */
    public Table row(String... cells) {
        if (cells.length != sides.size()) {
            throw new IllegalArgumentException(sides.size() + " columns, not " + cells.length + " cells");
        }
        rows.add(List.of(cells));
        return this;
    }

    /** Returns the lines; the first is the heading if {@link #isHeaded()}. */
    List<String> lines() {
        int[] widths = widths();
        List<String> lines = new ArrayList<>();
        for (List<String> row : headed ? rows : rows.subList(Math.min(1, rows.size()), rows.size())) {
            lines.add(line(row, widths));
        }
        return Collections.unmodifiableList(lines);
    }

    boolean isHeaded() {
        return headed;
    }

    private int[] widths() {
        int[] widths = new int[sides.size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], width(row.get(i)));
            }
        }
        return widths;
    }

    private String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = row.get(i);
            String pad = " ".repeat(widths[i] - width(cell));
            line.append(i == 0 ? "" : GAP);
            line.append(sides.get(i) == Side.RIGHT ? pad + cell : cell + pad);
        }
        return line.toString().stripTrailing();
    }

    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
