package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What is to be said of a drink, each with the places that it is said of, and what to do right behind it. */
final class Remarks {
    private final List<Finding> findings;
    private final Footnotes footnotes;
    private final Set<String> names;

    /** @param names of ingredients, which stay as the maker wrote them */
    Remarks(List<Finding> findings, Footnotes footnotes, Set<String> names) {
        this.findings = findings;
        this.footnotes = footnotes;
        this.names = names;
    }

    /** Returns the names of what goes into a plan and its stages. */
    static Set<String> names(Plan plan) {
        Set<String> names = new HashSet<>();
        plan.lines().forEach(line -> names.add(line.name()));
        plan.stages().forEach(stage -> names.addAll(names(stage.plan())));
        return names;
    }

    /** What is said in the same words of several things is said once. */
    private record Said(
            String rule, Severity severity, String jurisdiction, String verdict, String message, String remedy) {}

    /** Writes each as an element of its own. */
    void write(Markup page, String element) {
        Map<Said, List<Finding>> each = new LinkedHashMap<>();
        for (Finding finding : findings) {
            Said said = new Said(
                    finding.rule(),
                    finding.severity(),
                    finding.jurisdiction(),
                    finding.verdict(),
                    finding.message(),
                    finding.remedy());
            each.computeIfAbsent(said, any -> new ArrayList<>()).add(finding);
        }
        each.values().forEach(same -> write(page, element, same));
    }

    private void write(Markup page, String element, List<Finding> same) {
        Finding first = same.get(0);
        page.open(element);
        if (first.severity() == Severity.CAUTION) {
            Mark.NEAR.draw(page);
            page.element("strong", " " + Mark.NEAR.word() + ". ");
        }
        List<String> places = same.stream()
                .flatMap(finding -> Stream.of(finding.where().split("; ", -1)))
                .filter(place -> !place.isEmpty())
                .distinct()
                .toList();
        for (int i = 0; i < places.size(); i++) {
            page.typed(i == 0 ? "" : "; ");
            if (names.contains(places.get(i))) {
                page.typed(places.get(i));
            } else {
                page.told(first.rule(), i == 0 ? Told.sentence(places.get(i)) : places.get(i));
            }
        }
        page.typed(places.isEmpty() ? "" : ": ");
        if (first.severity() == Severity.STOP) {
            page.open("strong").told(first.rule(), first.message()).close();
        } else {
            page.told(first.rule(), first.message());
        }
        if (!first.remedy().isEmpty()) {
            page.typed(" ").text("What to do:").typed(" ").told(first.rule(), first.remedy());
        }
        footnotes.mark(page, first);
        page.close();
    }
}
