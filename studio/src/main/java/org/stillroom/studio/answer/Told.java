package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.liquid.Bounded;
import org.stillroom.core.liquid.DoubtWord;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;

/** The figures that answer a question at the desk, each with its doubt, and what to know about them. */
public final class Told {
    private final String heading;
    private final List<Row> rows = new ArrayList<>();
    private final List<Finding> before = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Series> series = new ArrayList<>();
    private final List<Section> sections = new ArrayList<>();
    private final List<Next> next = new ArrayList<>();
    private final List<Series> shown = new ArrayList<>();
    private boolean doubtOfReadings;
    private final List<Consumer<Fields>> further = new ArrayList<>();

    /**
     * What a figure is called, and how it is shown.
     *
     * @param decimals places after the point, {@link #IN_FIGURES} or {@link #AS_STATED}
     */
    public record Name(String key, String label, String unit, int decimals) {
        /** In about three figures, however large or small it is. */
        public static final int IN_FIGURES = -1;
        /** With the digits that a table has. */
        public static final int AS_STATED = -2;

        /** Returns the places after the point in which a number is shown. */
        public int decimalsOf(double number) {
            if (decimals == AS_STATED) {
                String digits = QuantityWords.plain(number);
                int point = digits.indexOf('.');
                return point < 0 ? 0 : digits.length() - point - 1;
            }
            int figures = number == 0.0 ? 0 : QuantityWords.places(Math.abs(number));
            return decimals == IN_FIGURES ? figures : decimals;
        }

        /** Returns how a figure of a liquid is told, with the temperature that was asked in its unit. */
        public static Name of(org.stillroom.core.liquid.Figure figure, Temperature asked) {
            String degrees = QuantityWords.plain(asked.celsius()) + " °C";
            String unit = figure.unit().replace("the temperature asked", degrees);
            return new Name(figure.key(), figure.label(), unit, figure.decimals());
        }
    }

    /**
     * One figure.
     *
     * @param estimate null where the liquid has none such
     * @param ends where it lies in nine cases of ten, where scripts are told that beside the value; else null
     * @param uneven the same, where the doubt is not alike to both sides and no half-width says it; else null
     */
    public record Row(
            Name name,
            @Nullable Estimate estimate,
            DoubtWord word,
            @Nullable Ends ends,
            @Nullable Ends uneven) {}

    /**
     * The ends of the central 90 %.
     *
     * @param high infinite where nothing bounds it
     */
    public record Ends(double low, double high) {
        public boolean isOpen() {
            return high == Double.POSITIVE_INFINITY;
        }
    }

    /** What is told besides, in sentences. */
    public record Section(String heading, List<String> sentences) {
        public Section {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * What can be asked next, one part of the same question.
     *
     * @param part its name
     * @param each the texts that can be typed into it, with what each is about
     */
    public record Next(String heading, String part, List<Pick> each) {
        public Next {
            each = List.copyOf(each);
        }

        /**
         * One of them.
         *
         * @param text to type
         * @param words what it is about
         */
        public record Pick(String text, String words) {}
    }

    /** Starts an answer; the heading says what was asked. */
    public Told(String heading) {
        this.heading = heading;
    }

    /** Adds an amount or a content. */
    public Told put(Name name, Estimate estimate) {
        return put(name, estimate, DoubtWord.ofPart(estimate));
    }

    /** Adds a figure that may not be known; where it is not, a script sees null. */
    public Told putOrNone(Name name, @Nullable Estimate estimate) {
        if (estimate == null) {
            rows.add(new Row(name, null, DoubtWord.NONE, null, null));
            return this;
        }
        return put(name, estimate);
    }

    /** Adds a figure whose doubt need not be alike to both sides. */
    public Told put(Name name, Bounded bounded) {
        Estimate estimate = bounded.toEstimate();
        Ends uneven = bounded.isEven() ? null : new Ends(bounded.low(), bounded.high());
        rows.add(new Row(name, estimate, DoubtWord.ofPart(estimate), null, uneven));
        return this;
    }

    /** Adds a figure that may not be known, and whose doubt need not be alike to both sides. */
    public Told putOrNone(Name name, @Nullable Bounded bounded) {
        return bounded == null ? putOrNone(name, (Estimate) null) : put(name, bounded);
    }

    /** Adds a figure whose doubt has a word of its own. */
    public Told put(Name name, Estimate estimate, DoubtWord word) {
        rows.add(new Row(name, estimate, word, null, null));
        return this;
    }

    /** Adds a figure with the ends of where it lies; the word says how sure it is. */
    public Told put(org.stillroom.core.liquid.Figure figure, Interval interval) {
        Estimate estimate = new Estimate(interval.value(), interval.halfWidth());
        Ends ends = new Ends(interval.low(), interval.high());
        rows.add(new Row(
                Name.of(figure, Temperature.TWENTY_CELSIUS), estimate, DoubtWord.of(figure, estimate), ends, null));
        return this;
    }

    /** Says that the doubts told are those of readings too, not of the formulas alone. */
    public Told doubtingReadings() {
        doubtOfReadings = true;
        return this;
    }

    public boolean doubtsReadings() {
        return doubtOfReadings;
    }

    /** Adds several of a kind, for scripts; people are told them in a {@link Section}. */
    public Told put(String key, List<Fields> list) {
        further.add(fields -> fields.put(key, list));
        return this;
    }

    /** Adds what belongs together, for scripts; people are told it in a {@link Section}. */
    public Told put(String key, Fields group) {
        further.add(fields -> fields.put(key, group));
        return this;
    }

    /** Adds whether something is so, for scripts. */
    public Told put(String key, boolean isSo) {
        further.add(fields -> fields.put(key, isSo));
        return this;
    }

    /** Adds sentences, for people. */
    public Told section(String heading, List<String> sentences) {
        sections.add(new Section(heading, sentences));
        return this;
    }

    /** Adds what can be asked next, for people. */
    public Told next(Next more) {
        next.add(more);
        return this;
    }

    /** Adds a small difference of volumes: its doubt is judged by the volume that it belongs to. */
    public Told putDifference(Name name, Estimate estimate, Estimate volume) {
        return put(name, estimate, DoubtWord.ofPart(new Estimate(volume.value(), estimate.doubt())));
    }

    /** Adds a strength that has a basis of its own. */
    public Told putStrength(Name name, Estimate estimate) {
        return put(name, estimate, DoubtWord.of(org.stillroom.core.liquid.Figure.STRENGTH, estimate));
    }

    /** Adds a figure of a liquid that is stated at 20 °C, under its own name. */
    public Told put(org.stillroom.core.liquid.Figure figure, Estimate estimate) {
        return put(Name.of(figure, Temperature.TWENTY_CELSIUS), estimate, DoubtWord.of(figure, estimate));
    }

    /** Adds a figure of a liquid; where the liquid has none such, a script sees null. */
    public Told put(org.stillroom.core.liquid.Figure figure, Figures figures) {
        Name name = Name.of(figure, figures.temperature());
        if (!figures.has(figure)) {
            rows.add(new Row(name, null, DoubtWord.NONE, null, null));
            return this;
        }
        Estimate estimate = new Estimate(figures.value(figure), figures.doubt(figure));
        return put(name, estimate, DoubtWord.of(figure, estimate));
    }

    /** Adds a table of figures under one key: rows of numbers, one per column. */
    public Told table(Series more) {
        series.add(more);
        return this;
    }

    /** Adds a table of figures for people; scripts are told them otherwise. */
    public Told shown(Series more) {
        shown.add(more);
        return this;
    }

    /**
     * Figures that run on, such as the strength of what runs from a still.
     *
     * @param key of all of them
     * @param heading above them
     * @param columns what each number of a row is
     * @param rows in order
     */
    public record Series(String key, String heading, List<Name> columns, List<Line> rows) {
        public Series {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }

        /**
         * One row of it.
         *
         * @param name what it is about, or empty
         * @param numbers in the order of the columns
         */
        public record Line(String name, List<Double> numbers) {}

        private List<Fields> fields() {
            List<Fields> all = new ArrayList<>();
            for (Line row : rows) {
                Fields fields = new Fields();
                if (!row.name().isEmpty()) {
                    fields.put("name", row.name());
                }
                for (int i = 0; i < columns.size(); i++) {
                    fields.put(columns.get(i).key(), row.numbers().get(i));
                }
                all.add(fields);
            }
            return all;
        }
    }

    /** Adds what speaks against the figures as a whole: people read it before them. */
    public Told before(Finding finding) {
        before.add(finding);
        return this;
    }

    public Told finding(Finding finding) {
        findings.add(finding);
        return this;
    }

    public Told findings(List<Finding> more) {
        findings.addAll(more);
        return this;
    }

    /** Returns the figures for scripts. */
    public Fields fields() {
        Fields fields = new Fields();
        Fields doubt = new Fields();
        Fields spread = new Fields();
        rows.forEach(row -> put(row, fields, doubt));
        rows.forEach(row -> putSpread(row, spread));
        further.forEach(each -> each.accept(fields));
        series.forEach(each -> fields.put(each.key(), each.fields()));
        if (!rows.isEmpty()) {
            fields.put("doubt", doubt);
        }
        if (rows.stream().anyMatch(row -> row.uneven() != null)) {
            fields.put("spread", spread);
        }
        return fields.put("findings", FindingFields.of(findings()));
    }

    private static void putSpread(Row row, Fields spread) {
        Ends uneven = row.uneven();
        if (uneven != null) {
            Fields ends = new Fields().put("low", uneven.low());
            spread.put(row.name().key(), uneven.isOpen() ? ends.putNone("high") : ends.put("high", uneven.high()));
        }
    }

    private static void put(Row row, Fields fields, Fields doubt) {
        String key = row.name().key();
        @Nullable Estimate estimate = row.estimate();
        @Nullable Ends ends = row.ends();
        if (estimate == null) {
            fields.putNone(key);
            doubt.putNone(key);
            return;
        }
        doubt.putOrNone(key, estimate.tellsDoubt() ? (Double) estimate.doubt() : null);
        if (ends == null) {
            fields.put(key, estimate.value());
        } else {
            fields.put(
                    key,
                    new Fields()
                            .put("value", estimate.value())
                            .put("low", ends.low())
                            .put("high", ends.high()));
        }
    }

    public String heading() {
        return heading;
    }

    public List<Row> rows() {
        return Collections.unmodifiableList(rows);
    }

    /** Returns the tables of figures as people are shown them. */
    public List<Series> series() {
        return Stream.concat(series.stream(), shown.stream()).toList();
    }

    public List<Section> sections() {
        return Collections.unmodifiableList(sections);
    }

    public List<Next> next() {
        return Collections.unmodifiableList(next);
    }

    /** Returns what is told before the figures. */
    public List<Finding> before() {
        return Collections.unmodifiableList(before);
    }

    /** Returns what is told after the figures, what weighs most first. */
    public List<Finding> after() {
        return findings.stream()
                .sorted(Comparator.comparing(Finding::severity).reversed())
                .toList();
    }

    /** Returns all findings, those before the figures first. */
    public List<Finding> findings() {
        return Stream.concat(before.stream(), after().stream()).toList();
    }
}
