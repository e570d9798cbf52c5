package org.stillroom.studio.shelffile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Assay;

/**
 * What a supplier's analysis says is in an oil, in per cent of it, or in the whole of something else, in mg/kg or mg/L. The table itself
 * is kept as given; this is what could be read of it.
 *
 * @param parts what was read in per cent, in the order given
 * @param whole what was read of the whole
 * @param percent what the parts make together
 * @param confirmed whether a line of it says that it is meant, however far it lies from what is usual
 * @param problems what is wrong with it, by line
 */
public record OilAnalysis(
        List<Part> parts, Assay whole, double percent, boolean confirmed, List<LineProblem> problems) {
    /** Rule of what is wrong where the table has no such constituent; the rest of the analysis holds all the same. */
    public static final String NOT_KNOWN = "constituent-not-known";

    /** Verdict on what is a sum of constituents, of which none of an oil's parts is told. */
    public static final String OF_WHOLE_ALONE = "known of a whole alone";

    /** Rounding of the parts may put their sum off by so much, %. */
    private static final double OFF = 0.5;

    /** Analyses round each part: parts that come to so much are let pass. */
    private static final double ROUNDED = 100.0 + OFF;

    /** Words of a line that is the sum of the others, after any sign of what is summed up. */
    private static final Set<String> SUMS = Set.of(
            "total",
            "sum",
            "summe",
            "gesamt",
            "insgesamt",
            "gesamtsumme",
            "grand total",
            "total identified",
            "total of all",
            "sum of constituents",
            "sum of components",
            "summe der bestandteile",
            "summe der komponenten",
            "somme",
            "totale",
            "σ",
            "∑");

    private static final Pattern SIGN_OF_SHARE = Pattern.compile("\\s*(?:[:=]|\\(?(?:area|fläche)?\\s*%\\)?)+\\s*$");
    private static final Set<String> CONFIRMED = Set.of("confirmed", "bestätigt");
    private static final Pattern SEPARATORS_LEFT = Pattern.compile("[;,\\t\\s]+$");
    private static final Pattern SHARE = Pattern.compile("([<≤~]?)\\s*(\\d{1,3}(?:[.,]\\d+)?)\\s*%?");
    private static final Pattern CAS = Pattern.compile("\\d{2,7}-\\d{2}-\\d");
    private static final Pattern LOCANT = Pattern.compile("\\d");
    private static final Pattern BEHIND_LOCANT = Pattern.compile("\\d-\\p{L}.*");

    /** So much of a whole, such as 35 mg/L, where per cent are of an oil. */
    private static final Pattern OF_WHOLE =
            Pattern.compile("[<≤]?\\s*\\d[\\d.,]*\\s*(?:[µu]g|mg|g)\\s*/\\s*(?:kg|l)", Pattern.CASE_INSENSITIVE);

    private static final QuantityText QUANTITIES = new QuantityText(OunceMeaning.US_FLUID);
    private static final Set<String> TRACES = Set.of("tr", "tr.", "trace", "traces", "spur", "spuren", "nd", "n.d.");
    private static final Map<String, Column> COLUMNS = Map.ofEntries(
            Map.entry("constituent", Column.NAME),
            Map.entry("name", Column.NAME),
            Map.entry("component", Column.NAME),
            Map.entry("compound", Column.NAME),
            Map.entry("substance", Column.NAME),
            Map.entry("bestandteil", Column.NAME),
            Map.entry("komponente", Column.NAME),
            Map.entry("stoff", Column.NAME),
            Map.entry("cas no", Column.CAS),
            Map.entry("cas no.", Column.CAS),
            Map.entry("cas", Column.CAS),
            Map.entry("cas number", Column.CAS),
            Map.entry("cas-nummer", Column.CAS),
            Map.entry("percent", Column.SHARE),
            Map.entry("share", Column.SHARE),
            Map.entry("%", Column.SHARE),
            Map.entry("area %", Column.SHARE),
            Map.entry("content", Column.SHARE),
            Map.entry("gehalt", Column.SHARE),
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
     * @param least of the oil by mass, per cent, as analyses by chromatography give it; none where only a bound is given, such as &lt;0.5
     * @param percent the same, or the bound
     */
    public record Part(
            int line,
            String written,
            @Nullable Constituent constituent,
            @Nullable String key,
            double least,
            double percent) {
        /** Returns whether it is anything from none to its per cent. */
        public boolean isBound() {
            return least < percent;
        }

        double middle() {
            return 0.5 * (least + percent);
        }
    }

    /** Returns what is known of it, parts of the oil from 0 to 1 by their keys; of what is bounded the middle. */
    public Map<String, Double> shares() {
        return shares(Part::middle);
    }

    /** Returns the same from the least to the most: once where nothing is only bounded, else twice. */
    public List<Map<String, Double>> ends() {
        boolean bounded = parts.stream().anyMatch(Part::isBound);
        return bounded ? List.of(shares(Part::least), shares(Part::percent)) : List.of(shares());
    }

    private Map<String, Double> shares(ToDoubleFunction<Part> percent) {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (Part part : parts) {
            if (part.key() != null) {
                shares.merge(part.key(), percent.applyAsDouble(part) / 100.0, Math::max);
            }
        }
        return shares;
    }

    /**
     * Reads a table of constituents: name or CAS number, or both, and per cent; with or without headings. Lines that begin with # are
     * passed over; one that says that the analysis is confirmed is no constituent, nor is the sum.
     */
    public static OilAnalysis read(String text) {
        String bare = text.lines()
                .map(line -> line.startsWith("#") || confirms(line) ? "" : line)
                .collect(Collectors.joining("\n"));
        boolean confirmed = text.lines().anyMatch(OilAnalysis::confirms);
        return new Reading(CsvTable.read(bare, cell -> COLUMNS.containsKey(Headings.plain(cell))), confirmed).all();
    }

    private static boolean confirms(String line) {
        return CONFIRMED.contains(Headings.plain(SEPARATORS_LEFT.matcher(line).replaceAll("")));
    }

    /** One reading. */
    private static final class Reading {
        private final CsvTable table;
        private final boolean confirmed;
        private final List<Part> parts = new ArrayList<>();
        private final List<Assay.Part> whole = new ArrayList<>();
        private final List<Sum> sums = new ArrayList<>();
        private final List<LineProblem> problems;
        private final Set<String> seen = new HashSet<>();

        /** What a line says that the parts make together. */
        private record Sum(int line, double percent) {}

        Reading(CsvTable table, boolean confirmed) {
            this.table = table;
            this.confirmed = confirmed;
            this.problems = new ArrayList<>(table.problems());
        }

        OilAnalysis all() {
            List<CsvTable.Row> rows = table.rows();
            boolean headed = !rows.isEmpty()
                    && rows.get(0).cells().stream().anyMatch(cell -> COLUMNS.containsKey(Headings.plain(cell)));
            List<@Nullable Column> columns = headed ? columns(rows.get(0)) : List.of();
            if (!rows.isEmpty() && isUnread(rows.get(0), columns)) {
                return new OilAnalysis(parts, Assay.NONE, 0.0, confirmed, problems);
            }
            rows.stream().skip(headed ? 1 : 0).forEach(row -> part(row, columns));
            double least = together(Part::least);
            if (least > ROUNDED) {
                tell(
                        0,
                        "analysis-beyond-whole",
                        "not possible",
                        String.format(Locale.ROOT, "The parts make %.1f %% together.", least),
                        "They come to 100 % at most; look for a part that is listed twice or a slip in a number.");
            }
            sums.forEach(sum -> compare(sum, least, together(Part::percent)));
            return new OilAnalysis(parts, whole(), together(Part::middle), confirmed, problems);
        }

        private Assay whole() {
            Assay assay = new Assay(whole);
            Assay.Part alone = assay.alone();
            if (alone != null) {
                tell(
                        0,
                        "analysis-part-alone",
                        "cannot be used",
                        alone.name() + " is watched as a part of " + Assay.sumOf(alone) + " alone.",
                        "Write how much " + Assay.sumOf(alone) + " there is, or all that counts into it.");
            }
            if (!whole.isEmpty() && !parts.isEmpty()) {
                tell(
                        0,
                        "analysis-mixed",
                        "cannot be used",
                        "Some lines are in per cent of an oil and some in mg of the whole.",
                        "Keep one of both: per cent of an essential oil, mg/kg or mg/L of anything else.");
            }
            return assay;
        }

        private void compare(Sum sum, double least, double most) {
            if (sum.percent() >= least - OFF && sum.percent() <= most + OFF) {
                return;
            }
            double together = 0.5 * (least + most);
            tell(
                    sum.line(),
                    "analysis-sum",
                    "does not fit",
                    String.format(
                            Locale.ROOT,
                            "It says that the parts make %.1f %% together; they make %.1f %%.",
                            sum.percent(),
                            together),
                    together < sum.percent()
                            ? "Look for a line that is missing or a slip in a number; where you left lines out, take the line of"
                                    + " the sum out too."
                            : "Look for a line that stands there twice or a slip in a number.");
        }

        /** Adds the parts up; what is a part of another that stands there too counts once. */
        private double together(ToDoubleFunction<Part> percent) {
            return parts.stream()
                    .filter(part -> Constituents.WHOLES.entrySet().stream()
                            .noneMatch(whole -> whole.getValue().contains(String.valueOf(part.key()))
                                    && parts.stream()
                                            .anyMatch(each -> whole.getKey().equals(each.key()))))
                    .mapToDouble(percent)
                    .sum();
        }

        /** Tells where headings do not say what is a constituent and what its share, and returns whether that is so. */
        private boolean isUnread(CsvTable.Row first, List<@Nullable Column> columns) {
            boolean named = columns.contains(Column.NAME) || columns.contains(Column.CAS);
            boolean unheaded =
                    columns.isEmpty() && first.cells().stream().anyMatch(cell -> guess(cell.strip()) == Column.SHARE);
            boolean numberless = columns.isEmpty() && first.cells().size() < 2;
            if ((named && columns.contains(Column.SHARE)) || unheaded || numberless) {
                return false;
            }
            String missing = columns.isEmpty()
                    ? "None of the headings is known: "
                    : named ? "No heading is one of how much there is: " : "No heading is one of the constituents: ";
            tell(
                    first.line(),
                    "analysis-heading",
                    "not understood",
                    missing + String.join(", ", first.cells()) + ".",
                    "Write the first line as constituent;cas;percent, where one of the first two may be left out.");
            return true;
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
            List<String> cells = withLocants(row.cells());
            for (int i = 0; i < cells.size(); i++) {
                String cell = cells.get(i).strip();
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

        /** "1,8-cineole" holds a comma that parts no columns. */
        private static List<String> withLocants(List<String> cells) {
            List<String> joined = new ArrayList<>();
            for (String cell : cells) {
                int last = joined.size() - 1;
                if (last >= 0
                        && LOCANT.matcher(joined.get(last).strip()).matches()
                        && BEHIND_LOCANT.matcher(cell.strip()).matches()) {
                    joined.set(last, joined.get(last).strip() + "," + cell.strip());
                } else {
                    joined.add(cell);
                }
            }
            return joined;
        }

        private static Column guess(String cell) {
            if (CAS.matcher(cell).matches()) {
                return Column.CAS;
            }
            boolean isShare = SHARE.matcher(cell).matches()
                    || OF_WHOLE.matcher(cell).matches()
                    || TRACES.contains(cell.toLowerCase(Locale.ROOT));
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
            if (cas.isEmpty()
                    && SUMS.contains(SIGN_OF_SHARE.matcher(Headings.plain(name)).replaceAll(""))) {
                sum(line, name, share);
                return;
            }
            if (OF_WHOLE.matcher(share).matches()) {
                ofWhole(line, written, share);
                return;
            }
            Constituent constituent = constituent(line, name, cas);
            if (key(constituent, written) == null) {
                unknown(line, written);
            }
            Span percent = percent(line, written, share);
            String same = constituent == null ? Headings.plain(written) : constituent.cas();
            if (!seen.add(same)) {
                twice(line, written);
            }
            if (percent != null) {
                parts.add(
                        new Part(line, written, constituent, key(constituent, written), percent.low(), percent.high()));
            }
        }

        private void ofWhole(int line, String written, String share) {
            Understanding<Assay.Part> read = Assay.part(written, share, QUANTITIES);
            if (read instanceof Understanding.Understood<Assay.Part> understood) {
                whole.add(understood.typed().value());
            } else if (read instanceof Understanding.Refused<Assay.Part> refused) {
                tell(
                        line,
                        Assay.isWatched(written) ? "analysis-share" : NOT_KNOWN,
                        "cannot be used",
                        refused.reason() + ".",
                        "Write how much was found of a substance that is watched, such as thujone;8 mg/kg.");
            }
            if (!seen.add(Headings.plain(written))) {
                twice(line, written);
            }
        }

        private void twice(int line, String written) {
            tell(
                    line,
                    "analysis-twice",
                    "said twice",
                    written + " stands in the analysis twice.",
                    "Keep one line of it, or add the two up.");
        }

        private void sum(int line, String name, String share) {
            Matcher number = SHARE.matcher(share);
            if (number.matches() && number.group(1).isEmpty()) {
                sums.add(new Sum(line, Double.parseDouble(number.group(2).replace(',', '.'))));
            } else {
                percent(line, name, share);
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
            boolean ofWhole = Assay.isWatched(written);
            tell(
                    line,
                    NOT_KNOWN,
                    ofWhole ? OF_WHOLE_ALONE : "not known",
                    written + " is no constituent of the table.",
                    ofWhole
                            ? "Of an oil write its parts, such as alpha-thujone; of anything else how much was found in the"
                                    + " whole, such as 8 mg/kg."
                            : "Write its CAS number or another of its names; else it is kept and nothing is reckoned with"
                                    + " it.");
        }

        private @Nullable Span percent(int line, String written, String share) {
            Matcher number = SHARE.matcher(share);
            if (TRACES.contains(share.toLowerCase(Locale.ROOT))) {
                return Span.exactly(0.0);
            }
            if (number.matches()) {
                double percent = Double.parseDouble(number.group(2).replace(',', '.'));
                boolean bound = number.group(1).equals("<") || number.group(1).equals("≤");
                if (percent <= 100.0) {
                    return bound ? new Span(0.0, percent) : Span.exactly(percent);
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
