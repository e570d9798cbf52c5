package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.stillroom.core.clarity.OtherHazes;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import picocli.CommandLine.Option;

/** Tells what a haze most likely is by what is seen of it, and what to try first. */
final class HazeCommand extends Subcommand {
    @Option(names = "--seen", split = ",", description = "what is true of it, such as fruit,boiled; without it the questions are shown")
    private List<String> seen = new ArrayList<>();

    @Override
    protected Answer answer(Workings workings) {
        for (String sign : seen) {
            if (!OtherHazes.asked().containsKey(sign)) {
                throw Refusal.wrongInput(
                        "--seen",
                        "\"" + sign + "\" is no sign that is asked for.",
                        "Write one or more of: " + String.join(", ", OtherHazes.asked().keySet()) + ".");
            }
        }
        return new Diagnosis(new LinkedHashSet<>(seen));
    }

    private record Diagnosis(Set<String> seen) implements Answer {
        @Override
        public Fields fields() {
            List<Fields> questions = new ArrayList<>();
            OtherHazes.asked()
                    .forEach((sign, question) ->
                            questions.add(new Fields().put("sign", sign).put("question", question)));
            List<Fields> likely = new ArrayList<>();
            OtherHazes.likely(seen).forEach(haze -> likely.add(haze(haze)));
            return new Fields()
                    .put("questions", questions)
                    .put("likely", likely)
                    .put("findings", List.of());
        }

        private static Fields haze(OtherHazes.Haze haze) {
            List<Fields> ways = new ArrayList<>();
            for (OtherHazes.Way way : haze.then()) {
                ways.add(new Fields()
                        .put("way", way.name())
                        .put("takes_out", way.takesOut())
                        .put("dose", way.dose())
                        .put("wait", way.waiting())
                        .put("loss_percent", way.lossPercent())
                        .put("strength_after", way.strengthAfter())
                        .put("allergens", way.allergens())
                        .put("status", way.standing().label()));
            }
            return new Fields()
                    .put("haze", haze.name())
                    .putTexts("signs", haze.signs())
                    .put("test", haze.test())
                    .put("try_first", haze.tryFirst())
                    .put("clarifying", ways)
                    .put("status", haze.standing().label());
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
            return way.name() + ": " + way.dose() + "; " + way.waiting() + "; about " + Figure.decimals(way.lossPercent(), 0)
                    + " % is lost; strength " + way.strengthAfter()
                    + (way.allergens().isEmpty() ? "" : "; allergens: " + way.allergens());
        }
    }
}
