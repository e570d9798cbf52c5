package org.stillroom.studio.shelffile;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * A table as people paste or save it: separated by comma, semicolon or tab, with or without quotes and a byte order mark, its
 * lines ended in any way.
 *
 * @param rows those that say anything, the header among them
 * @param problems what could not be made out
 */
record CsvTable(List<Row> rows, List<LineProblem> problems) {
    /** Nobody's shelf holds more. */
    static final int MOST_CHARACTERS = 1_000_000;

    private static final int MOST_ROWS = 5_000;
    private static final char[] SEPARATORS = {';', '\t', ','};
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /** A row that knows the line on which it begins. */
    record Row(int line, List<String> cells) {}

    /**
     * Reads a text.
     *
     * @param isHeading whether a cell of the first line is known as a heading; the separator that finds most of them is taken
     */
    static CsvTable read(String text, Predicate<String> isHeading) {
        String plain = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        if (plain.length() > MOST_CHARACTERS) {
            return trouble(
                    0,
                    "The table has more than 1 MB; nothing of it was read.",
                    "Check that this is the file you meant.");
        }
        String first = plain.strip().lines().findFirst().orElse("");
        char separator = SEPARATORS[0];
        int most = -1;
        for (char candidate : SEPARATORS) {
            int known = headings(first, candidate, isHeading);
            if (known > most) {
                most = known;
                separator = candidate;
            }
        }
        return rows(plain, separator);
    }

    private static int headings(String line, char separator, Predicate<String> isHeading) {
        List<Row> rows = rows(line, separator).rows();
        return rows.isEmpty()
                ? 0
                : 100 * (int) rows.get(0).cells().stream().filter(isHeading).count()
                        + rows.get(0).cells().size();
    }

    private static CsvTable rows(String text, char separator) {
        List<Row> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .trimWhitespacesAroundQuotes(true)
                .ofCsvRecord(text)) {
            for (CsvRecord read : reader) {
                if (read.getFields().stream().anyMatch(cell -> !cell.isBlank())) {
                    rows.add(new Row((int) read.getStartingLineNumber(), read.getFields()));
                }
                if (rows.size() > MOST_ROWS) {
                    return trouble(
                            0, "The table has more than " + MOST_ROWS + " lines; nothing of it was read.", "Split it.");
                }
            }
        } catch (CsvParseException unreadable) {
            int last = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1;
            return new CsvTable(
                    rows,
                    trouble(
                                    last,
                                    "From here on the quotes do not fit: a text in quotes has to end with one.",
                                    "Write a quote within a text twice, and one at its end.")
                            .problems());
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
        return new CsvTable(rows, List.of());
    }

    private static CsvTable trouble(int line, String message, String remedy) {
        Finding finding = Finding.of("table-unreadable", Severity.STOP, where(line), "cannot be read", message, remedy);
        return new CsvTable(List.of(), List.of(new LineProblem(line, finding)));
    }

    static String where(int line) {
        return line == 0 ? "" : "line " + line;
    }
}
