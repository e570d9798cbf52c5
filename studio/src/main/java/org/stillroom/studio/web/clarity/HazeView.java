package org.stillroom.studio.web.clarity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.stillroom.core.clarity.Clarified;
import org.stillroom.core.clarity.Cream;
import org.stillroom.core.clarity.OtherHazes;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.usecase.TellHaze;
import org.stillroom.studio.wording.Words;

/**
 * Hazes, cream and clarifying as their page shows them.
 *
 * @param found what is told
 * @param typed texts by part
 * @param problems what was not understood
 */
public record HazeView(TellHaze.Found found, Map<String, List<String>> typed, List<Finding> problems, Words words) {
    public HazeView {
        typed = Map.copyOf(typed);
        problems = List.copyOf(problems);
    }

    /** Returns what was typed for a part, or empty. */
    public String typed(String part) {
        return typed.getOrDefault(part, List.of("")).get(0);
    }

    public Map<String, String> questions() {
        return OtherHazes.asked();
    }

    public Set<String> waysToClarify() {
        return OtherHazes.clarifying().keySet();
    }

    /** Returns the dose of a way for a litre, or empty where it takes nothing. */
    public String dose(OtherHazes.Way way) {
        OtherHazes.Dose dose = way.dose();
        return dose.isNone()
                ? ""
                : range(dose.least(), dose.most(), OtherHazes.Dose.decimals(dose.most())) + " " + unit(dose) + "/L";
    }

    /** Returns a cause of a cream that breaks, with its figure, in a sentence. */
    public String cause(Cream.Sign sign) {
        return words.say(
                "clarity.creamCause",
                words.say("clarity.cream." + sign.limit().cause().name()),
                words.number(sign.value(), 1),
                words.say("clarity.creamUnit." + sign.limit().cause().name()),
                words.number(sign.limit().keepsBelow(), 0),
                words.number(sign.limit().breaksFrom(), 0));
    }

    /** Returns how a cream does, in a word. */
    public String keeping(Cream.Keeping keeping) {
        return words.say("clarity.creamIs." + keeping.name());
    }

    /** Returns what clarifying takes and leaves, line by line. */
    public List<ClarityView.Row> clarified(Clarified clarified) {
        List<ClarityView.Row> rows = new ArrayList<>();
        OtherHazes.Dose dose = clarified.way().dose();
        if (!dose.isNone()) {
            rows.add(new ClarityView.Row(
                    words.say("clarity.take"),
                    range(clarified.least(), clarified.most(), OtherHazes.Dose.decimals(clarified.most())),
                    unit(dose)));
        }
        if (clarified.mostWater() > 0.0) {
            rows.add(new ClarityView.Row(
                    words.say("clarity.waterWithIt"), range(clarified.leastWater(), clarified.mostWater(), 0), "mL"));
        }
        rows.add(new ClarityView.Row(
                words.say("clarity.leftAfter", words.number(clarified.way().lossPercent(), 0)),
                range(clarified.leftAtLeast(), clarified.leftAtMost(), 0),
                "mL"));
        OptionalDouble least = clarified.afterLeast();
        OptionalDouble most = clarified.afterMost();
        if (least.isPresent() && most.isPresent()) {
            rows.add(new ClarityView.Row(
                    words.say("clarity.strengthAfter"), range(most.getAsDouble(), least.getAsDouble(), 1), "% vol"));
        }
        return rows;
    }

    private String range(double least, double most, int decimals) {
        String from = words.number(least, decimals);
        String to = words.number(most, decimals);
        return from.equals(to) ? from : words.say("clarity.range", from, to);
    }

    private static String unit(OtherHazes.Dose dose) {
        return dose.unit().equals("ml") ? "mL" : dose.unit();
    }
}
