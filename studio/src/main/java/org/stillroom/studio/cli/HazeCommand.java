package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.stillroom.core.clarity.OtherHazes;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.HazeFields;
import picocli.CommandLine.Option;

/** Tells what a haze most likely is by what is seen of it, and what to try first. */
final class HazeCommand extends Subcommand {
    @Option(
            names = "--seen",
            split = ",",
            description = "what is true of it, such as fruit,boiled; without it the questions are shown")
    private List<String> seen = new ArrayList<>();

    @Override
    protected Answer answer(Workings workings) {
        for (String sign : seen) {
            if (!OtherHazes.asked().containsKey(sign)) {
                throw Refusal.wrongInput(
                        "--seen",
                        "\"" + sign + "\" is no sign that is asked for.",
                        "Write one or more of: "
                                + String.join(", ", OtherHazes.asked().keySet()) + ".");
            }
        }
        return new Diagnosis(new LinkedHashSet<>(seen));
    }

    private record Diagnosis(Set<String> seen) implements Answer {
        @Override
        public Fields fields() {
            return HazeFields.of(seen);
        }

        @Override
        public void print(Page page) {
            if (seen.isEmpty()) {
                page.heading("What is true of it? Give the words as --seen fruit,cold");
                Table table = new Table().text("").text("");
                OtherHazes.asked().forEach(table::row);
                page.table(table);
                return;
            }
            page.heading("Most likely first");
            for (OtherHazes.Haze haze : OtherHazes.likely(seen)) {
                page.blank();
                page.paragraph(haze.name() + " (" + haze.standing().label() + ")");
                page.paragraph("  Make sure: " + haze.test());
                page.paragraph("  Try first: " + haze.tryFirst());
                haze.then().forEach(way -> page.paragraph("  " + words(way)));
            }
        }

        private static String words(OtherHazes.Way way) {
            return way.name() + ": " + way.dose() + "; " + way.waiting() + "; about "
                    + Figure.decimals(way.lossPercent(), 0)
                    + " % is lost; strength " + way.strengthAfter()
                    + (way.allergens().isEmpty() ? "" : "; allergens: " + way.allergens());
        }
    }
}
