package org.stillroom.studio.shelffile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * What a supplier's analysis says is in an oil. The table itself is kept as given; this is what could be read of it.
 *
 * @param parts what was read, in the order given
 * @param percent what the parts make together
 * @param problems what is wrong with it, by line
 */
public record OilAnalysis(List<Part> parts, double percent, List<LineProblem> problems) {
    /** Analyses round each part: parts that come to so much are let pass. */
    private static final double ROUNDED = 100.5;

    private static final Pattern SHARE = Pattern.compile("[<≤~]?\\s*(\\d{1,3}(?:[.,]\\d+)?)\\s*%?");
    private static final Pattern CAS = Pattern.compile("\\d{2,7}-\\d{2}-\\d");
    private static final Set<String> TRACES = Set.of("tr", "tr.", "trace", "traces", "spur", "spuren", "nd", "n.d.");
    private static final Map<String, Column> COLUMNS = Map.ofEntries(
            Map.entry("constituent", Column.NAME),
            Map.entry("name", Column.NAME),
            Map.entry("bestandteil", Column.NAME),
            Map.entry("cas", Column.CAS),
            Map.entry("cas number", Column.CAS),
            Map.entry("cas-nummer", Column.CAS),
            Map.entry("percent", Column.SHARE),
            Map.entry("share", Column.SHARE),
            Map.entry("%", Column.SHARE),
            Map.entry("prozent", Column.SHARE),
            Map.entry("anteil", Column.SHARE));

    private enum Column {
        NAME,
        CAS,
        SHARE
    }

    public OilAnalysis {
        parts = List.copyOf(parts);
        problems = List.copyOf(problems);
    }

    /**
     * A constituent of the oil.
     *
     * @param line on which it stands
     * @param written name or CAS number as given
     * @param constituent what is known of it, or null when it is no single one of the table's
     * @param key by which it is reckoned with: its CAS number, or the name of a sum; null when it is not known
     * @param percent of the oil by mass, as analyses by chromatography give it
     */
    public record Part(
            int line,
            String written,
            @Nullable Constituent constituent,
            @Nullable String key,
            double percent) {}

    /** Returns what is known of it, parts of the oil from 0 to 1 by their keys. */
    public Map<String, Double> shares() {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (Part part : parts) {
            if (part.key() != null) {
                shares.merge(part.key(), part.percent() / 100.0, Math::max);
            }
        }
        return shares;
    }

    /** Reads a table of constituents: name or CAS number, or both, and per cent; with or without headings. Lines that begin with # are passed over. */
    public static OilAnalysis read(String text) {
        String bare = text.lines().map(line -> line.startsWith("#") ? "" : line).collect(Collectors.joining("\n"));
        return new Reading(CsvTable.read(bare, cell -> COLUMNS.containsKey(Headings.plain(cell)))).all();
    }

    /** One reading. */
    private static final class Reading {
        private final CsvTable table;
        private final List<Part> parts = new ArrayList<>();
        private final List<LineProblem> problems;
        private final Set<String> seen = new HashSet<>();

        Reading(CsvTable table) {
            this.table = table;
            this.problems = new ArrayList<>(table.problems());
        }

        OilAnalysis all() {
            List<CsvTable.Row> rows = table.rows();
            boolean headed = !rows.isEmpty()
                    && rows.get(0).cells().stream().anyMatch(cell -> COLUMNS.containsKey(Headings.plain(cell)));
            List<@Nullable Column> columns = headed ? columns(rows.get(0)) : List.of();
            rows.stream().skip(headed ? 1 : 0).forEach(row -> part(row, columns));
            double together = parts.stream().mapToDouble(Part::percent).sum();
            if (together > ROUNDED) {
                tell(
                        0,
                        "analysis-beyond-whole",
                        "not possible",
                        String.format(Locale.ROOT, "The parts make %.1f %% together.", together),
                        "They come to 100 % at most; look for a part that is listed twice or a slip in a number.");
            }
            return new OilAnalysis(parts, together, problems);
        }

        private List<@Nullable Column> columns(CsvTable.Row heading) {
            List<@Nullable Column> columns = new ArrayList<>();
            heading.cells().forEach(cell -> columns.add(COLUMNS.get(Headings.plain(cell))));
            return columns;
        }

        private void part(CsvTable.Row row, List<@Nullable Column> columns) {
            String name = "";
            String cas = "";
            String share = "";
            for (int i = 0; i < row.cells().size(); i++) {
                String cell = row.cells().get(i).strip();
                Column column = columns.isEmpty() ? guess(cell) : i < columns.size() ? columns.get(i) : null;
                if (column == null || cell.isEmpty()) {
                    continue;
                }
                switch (column) {
                    case NAME -> name = cell;
                    case CAS -> cas = cell;
                    case SHARE -> share = cell;
                }
            }
            part(row.line(), name, cas, share);
        }

        private static Column guess(String cell) {
            if (CAS.matcher(cell).matches()) {
                return Column.CAS;
            }
            boolean isShare = SHARE.matcher(cell).matches() || TRACES.contains(cell.toLowerCase(Locale.ROOT));
            return isShare ? Column.SHARE : Column.NAME;
        }

        private void part(int line, String name, String cas, String share) {
            String written = name.isEmpty() ? cas : name;
            if (written.isEmpty()) {
                tell(
                        line,
                        "analysis-nameless",
                        "missing",
                        "The line names no constituent.",
                        "Write its name or its CAS number.");
                return;
            }
            Constituent constituent = constituent(line, name, cas);
            if (key(constituent, written) == null) {
                unknown(line, written);
            }
            Double percent = percent(line, written, share);
            String same = constituent == null ? Headings.plain(written) : constituent.cas();
            if (!seen.add(same)) {
                tell(
                        line,
                        "analysis-twice",
                        "said twice",
                        written + " stands in the analysis twice.",
                        "Keep one line of it, or add the two up.");
            }
            if (percent != null) {
                parts.add(new Part(line, written, constituent, key(constituent, written), percent));
            }
        }

        private @Nullable Constituent constituent(int line, String name, String cas) {
            Constituent byNumber = cas.isEmpty() ? null : Constituents.find(cas);
            Constituent byName = name.isEmpty() ? null : Constituents.find(name);
            if (byNumber != null && byName != null && !byNumber.cas().equals(byName.cas())) {
                tell(
                        line,
                        "analysis-cas",
                        "does not fit",
                        cas + " is the number of " + byNumber.name() + ", not of " + name + ".",
                        name + " has the number " + byName.cas() + ".");
            }
            return byNumber == null ? byName : byNumber;
        }

        private static @Nullable String key(@Nullable Constituent constituent, String written) {
            return constituent == null ? Materials.keyOf(written) : constituent.cas();
        }

        private void unknown(int line, String written) {
            tell(
                    line,
                    "constituent-not-known",
                    "not known",
                    written + " is no constituent of the table.",
                    "Write its CAS number or another of its names; else it is kept and nothing is reckoned with it.");
        }

        private @Nullable Double percent(int line, String written, String share) {
            Matcher number = SHARE.matcher(share);
            if (TRACES.contains(share.toLowerCase(Locale.ROOT))) {
                return 0.0;
            }
            if (number.matches()) {
                double percent = Double.parseDouble(number.group(1).replace(',', '.'));
                if (percent <= 100.0) {
                    return percent;
                }
            }
            tell(
                    line,
                    "analysis-share",
                    "cannot be used",
                    share.isEmpty()
                            ? "How much " + written + " there is, is not said."
                            : "“" + share + "” is no share of " + written + ".",
                    "Write it in per cent, such as 92.5, or “tr” for traces.");
            return null;
        }

        private void tell(int line, String rule, String verdict, String message, String remedy) {
            Finding finding = Finding.of(rule, Severity.STOP, CsvTable.where(line), verdict, message, remedy);
            problems.add(new LineProblem(line, finding));
        }
    }
}
