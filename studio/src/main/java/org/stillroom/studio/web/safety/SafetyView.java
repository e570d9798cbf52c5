package org.stillroom.studio.web.safety;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Amount;
import org.stillroom.core.safety.Range;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.answer.NotesThatMatter;
import org.stillroom.studio.web.tables.AskedField;
import org.stillroom.studio.wording.Words;

/**
 * What is in a drink, as its page shows it.
 *
 * @param recipe its id
 * @param fields who drinks how much, and whose law is asked
 * @param problems what is wrong with what was typed
 * @param safety or null as long as there is no plan that makes something
 */
public record SafetyView(
        String recipe,
        String title,
        List<AskedField> fields,
        List<AskedField> ofDrink,
        List<Finding> problems,
        @Nullable Safety safety,
        Words words) {
    public SafetyView {
        fields = List.copyOf(fields);
        ofDrink = List.copyOf(ofDrink);
        problems = List.copyOf(problems);
    }

    /** Returns stops and cautions, then the notes that matter. */
    public List<Finding> weighty() {
        return of(finding -> finding.severity() != Severity.NOTE || NotesThatMatter.matters(finding));
    }

    /** Returns what is within its limit or beside its guidance, and the like. */
    public List<Finding> others() {
        return of(finding -> finding.severity() == Severity.NOTE && !NotesThatMatter.matters(finding));
    }

    private List<Finding> of(java.util.function.Predicate<Finding> which) {
        return safety == null
                ? List.of()
                : safety.findings().stream().filter(which).toList();
    }

    /** Returns who drinks how much, and whose law was asked. */
    public String who(Safety asked) {
        return words.say(
                "safety.who",
                words.plain(asked.serving().millilitres()),
                words.plain(asked.serving().perDay()),
                words.plain(asked.serving().bodyKilograms()),
                String.join(
                        ", ",
                        asked.serving().places().stream()
                                .map(place -> place.label())
                                .sorted()
                                .toList()));
    }

    /** Least, middle and most in the unit of a column. */
    public record Told(String unit, String told) {}

    /** A substance with its amounts, one for each of the columns. */
    public record Row(Amount amount, List<Told> amounts) {}

    /** Returns what the columns of amounts are in. */
    public List<String> units() {
        return List.of("mg/kg", "mg/L", words.say("safety.aServing"), words.say("safety.aDay"));
    }

    /** Returns the watched substances that are in it or expected in it. */
    public List<Row> rows(Safety asked) {
        double serving = asked.serving().millilitres() / 1000.0;
        return asked.drink().amounts().stream()
                .map(amount -> row(
                        amount,
                        List.of(
                                amount.perKilogram(),
                                amount.perLitre(),
                                amount.perLitre().times(serving),
                                amount.perDay(asked.serving()))))
                .toList();
    }

    private Row row(Amount amount, List<Range> ranges) {
        List<String> units = units();
        return new Row(
                amount,
                IntStream.range(0, units.size())
                        .mapToObj(column -> new Told(units.get(column), told(amount, ranges.get(column))))
                        .toList());
    }

    /** Where a part of it is not known neither middle nor most is. */
    private String told(Amount amount, Range range) {
        if (!amount.isKnown()) {
            return amount.from().isEmpty()
                    ? words.say("safety.notKnown")
                    : words.say("safety.atLeast", words.marked(Range.figures(range.least())));
        }
        String least = words.marked(Range.figures(range.least()));
        String most = words.marked(Range.figures(range.most()));
        return least.equals(most)
                ? most
                : words.say("safety.range", least, words.marked(Range.figures(range.middle())), most);
    }

    /** Returns where the figures are from: the lot's own analysis, what was read, or memory. */
    public String by(Amount amount) {
        if (amount.from().isEmpty() && !amount.isKnown()) {
            return "";
        }
        return words.say(
                amount.isAnalysed()
                        ? "safety.by.analysis"
                        : amount.status().mayClear() ? "safety.by.read" : "safety.by.memory");
    }
}
