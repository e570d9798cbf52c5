package org.stillroom.studio.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Amount;
import org.stillroom.core.safety.Range;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.NotesThatMatter;
import org.stillroom.studio.answer.SafetyFields;

/** What is in a drink and what rules say of it, the same for a person and for a script. */
record SafetyAnswer(Safety safety, Extent extent) implements Answer {
    /** How much of it a person is told; a script is told all. */
    enum Extent {
        ALL,
        WHAT_MATTERS
    }

    @Override
    public Exit exit() {
        return safety.isStopped() ? Exit.OUT_OF_REACH : Exit.DONE;
    }

    @Override
    public Fields fields() {
        return SafetyFields.of(safety);
    }

    @Override
    public void print(Page page) {
        if (told(page, "Stops", Severity.STOP)) {
            page.blank();
        }
        inIt(page);
        page.blank();
        if (told(page, "Cautions", Severity.CAUTION)) {
            page.blank();
        }
        if (notes(page)) {
            page.blank();
        }
        safety.drink()
                .knowledge()
                .tables()
                .editions()
                .forEach(edition -> page.paragraph("Rules: " + edition.told() + "."));
        page.paragraph(Safety.STANDING);
    }

    private void inIt(Page page) {
        List<Amount> amounts = safety.drink().amounts();
        page.heading(amounts.isEmpty() ? nothing() : "What is in it");
        if (!amounts.isEmpty()) {
            page.table(substances(amounts));
            page.paragraph(
                    "The most is that of the most adverse source group; of plants anything from nothing to all comes"
                            + " over. What no table holds is not known.");
        }
    }

    /** That no table tells anything is no good news where something in it is not known. */
    private String nothing() {
        return safety.tellsUnknown()
                ? "What watched substances are in it is not known"
                : "Our tables know none of the watched substances in it";
    }

    private Table substances(List<Amount> amounts) {
        Table table = new Table()
                .text("")
                .figure("least")
                .figure("most")
                .text("")
                .figure("most a day")
                .text("")
                .text("by");
        for (Amount amount : amounts) {
            Range day = amount.perLitre()
                    .times(safety.serving().millilitres() * safety.serving().perDay() / 1000.0);
            table.row(
                    amount.watched().name(),
                    Range.figures(amount.perKilogram().least()),
                    amount.isKnown() ? Range.figures(amount.perKilogram().most()) : "not known",
                    "mg/kg",
                    amount.isKnown() ? Range.figures(day.most()) : "not known",
                    "mg",
                    by(amount));
        }
        return table;
    }

    private static String by(Amount amount) {
        if (!amount.isKnown() && amount.from().isEmpty()) {
            return "";
        }
        return amount.isAnalysed() ? "analysis" : amount.status().mayClear() ? "range" : "range, from memory";
    }

    private boolean told(Page page, String heading, Severity severity) {
        List<Finding> findings = of(severity);
        if (!findings.isEmpty()) {
            page.heading(heading);
            findings.forEach(page::finding);
        }
        return !findings.isEmpty();
    }

    /** Notes take one line each, so that they do not drown what matters. */
    private boolean notes(Page page) {
        List<Finding> notes = of(Severity.NOTE);
        List<Finding> told = extent == Extent.ALL
                ? notes
                : notes.stream().filter(NotesThatMatter::matters).toList();
        if (!told.isEmpty()) {
            page.heading("To know");
            told.forEach(note -> page.paragraph("- " + note.verdict() + ": " + place(note) + note.message()));
        }
        if (told.size() < notes.size()) {
            if (!told.isEmpty()) {
                page.blank();
            }
            page.paragraph("Besides, with --all: " + counted(notes) + ".");
        }
        return !notes.isEmpty();
    }

    private static String counted(List<Finding> notes) {
        Map<String, Long> counts = notes.stream()
                .filter(note -> !NotesThatMatter.matters(note))
                .collect(Collectors.groupingBy(Finding::verdict, LinkedHashMap::new, Collectors.counting()));
        return String.join(
                "; ",
                counts.entrySet().stream()
                        .map(each -> each.getKey() + (each.getValue() == 1 ? "" : " (" + each.getValue() + ")"))
                        .toList());
    }

    /** Returns the place where the message does not name what it speaks of. */
    private static String place(Finding note) {
        boolean named = !note.jurisdiction().isEmpty()
                || note.rule().equals("intake")
                || note.where().isEmpty();
        return named ? "" : note.where() + ": ";
    }

    private List<Finding> of(Severity severity) {
        return safety.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .toList();
    }
}
