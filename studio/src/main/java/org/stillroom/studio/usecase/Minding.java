package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.Rules;
import org.stillroom.core.safety.Safety;
import org.stillroom.planner.marks.Measured;
import org.stillroom.planner.marks.Measuring;

/**
 * What rules say of a drink, brought to the step where it matters: where an ingredient goes in, or where a step of the maker's own is done.
 *
 * @param findings stops and cautions of the whole drink, its stages included, and what is to be known of its doses and their bottles
 */
public record Minding(List<Finding> findings) {
    /** Picks what has to be known with the vessel in hand from all that was found. */
    public Minding {
        findings = findings.stream()
                .filter(finding -> Slips.isOne(finding.rule())
                        || Measuring.isOfDose(finding)
                        || (finding.severity() != Severity.NOTE
                                && Rules.isOne(finding.rule())
                                && !Rules.isOfFigures(finding)))
                .distinct()
                .toList();
    }

    /** Returns what is to be minded with a plan as it is measured. */
    public static Minding of(Measured measured, Grounds grounds) {
        Plan plan = measured.plan();
        List<Finding> findings = new ArrayList<>(Slips.of(plan));
        findings.addAll(Safety.ofPlan(plan, grounds));
        findings.addAll(measured.findings());
        ofStages(plan, findings);
        return new Minding(findings);
    }

    private static void ofStages(Plan plan, List<Finding> findings) {
        for (Plan.StagePlan stage : plan.stages()) {
            for (Finding finding : Measuring.of(stage.plan()).findings()) {
                if (Measuring.isOfDose(finding)) {
                    String name = finding.where().replaceFirst("line \\d+, ", "");
                    findings.add(finding.at(stage.ingredient() + ": " + name));
                }
            }
            ofStages(stage.plan(), findings);
        }
    }

    /** Returns all but the questions that are asked by themselves. */
    public List<Finding> besides(List<Slips.Asked> asked) {
        List<Finding> questions = asked.stream().map(Slips.Asked::finding).toList();
        return findings.stream().filter(finding -> !questions.contains(finding)).toList();
    }

    /** Returns what means that nobody is to drink it. */
    public List<Finding> notForDrinking() {
        return findings.stream().filter(Rules::isNotForDrinking).toList();
    }

    /** Returns what has to be known when it is done and is filled. */
    public List<Finding> atTheEnd() {
        return findings.stream().filter(Safety::isOfFilling).toList();
    }

    /**
     * Returns what is said of a line, the ingredient that goes in.
     *
     * @param stage name under which what is made is used, or null for the recipe itself
     * @param line its index
     * @param name of the ingredient
     */
    public List<Finding> ofLine(@Nullable String stage, int line, String name) {
        String inRecipe = "line " + (line + 1) + ", " + name;
        return at(place ->
                begins(place, name) || (stage == null ? begins(place, inRecipe) : follows(place, stage, name)));
    }

    /**
     * Returns what is said of a step of the maker's own.
     *
     * @param stage name under which what is made is used, or null for the recipe itself
     * @param number of the step, from 1
     */
    public List<Finding> ofOwnStep(@Nullable String stage, int number) {
        String step = "step " + number + " of your own";
        return at(place -> stage == null ? place.equals(step) : place.equals(stage + ": " + step));
    }

    private List<Finding> at(Predicate<String> place) {
        return findings.stream()
                .filter(finding -> Stream.of(finding.where().split("; ", -1)).anyMatch(place))
                .toList();
    }

    /** Places go into detail behind the name: "line 2, sage essence: sage oil", "line 2, sage essence (thujone)". */
    private static boolean begins(String place, String name) {
        return place.startsWith(name)
                && (place.length() == name.length()
                        || place.startsWith(":", name.length())
                        || place.startsWith(" (", name.length()));
    }

    private static boolean follows(String place, String stage, String name) {
        int at = place.indexOf(stage + ": ");
        return at >= 0 && begins(place.substring(at + stage.length() + 2), name);
    }
}
