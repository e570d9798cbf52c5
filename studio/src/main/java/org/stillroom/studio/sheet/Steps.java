package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.MixingStep;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Rules;
import org.stillroom.studio.usecase.Minding;
import org.stillroom.studio.usecase.WorkedPlan;

/** The steps with their tick boxes, the reason small; among them the measuring when all is in and cool. */
final class Steps {
    /** The group of the phrasebook for the order of mixing. */
    private static final String MIXING = "mixing";

    private final WorkedPlan worked;
    private final Minding minding;
    private final @Nullable String stage;
    private int ownSteps;

    /** What a rule says of an ingredient, or of what is done. */
    private record Minded(String of, Finding finding) {
        /** Writes why, where it can hurt, else its verdict; the whole of it stands under the steps. */
        void write(Markup page) {
            page.text(" ").open("strong").text("To mind:").typed(of.isEmpty() ? "" : " " + of + ":");
            if (Rules.canHurt(finding)) {
                page.close().typed(" ").toldFirst(finding.rule(), finding.message());
            } else {
                page.typed(" ").told(finding.rule(), finding.verdict());
                page.typed(finding.verdict().endsWith("?") ? "" : ".").close();
            }
        }

        String said() {
            return of + ", " + (Rules.canHurt(finding) ? finding.message() : finding.verdict());
        }
    }

    /**
     * @param minding what rules say of the whole drink
     * @param stage name under which what is made is used, or null for the recipe itself
     */
    Steps(WorkedPlan worked, Minding minding, @Nullable String stage) {
        this.worked = worked;
        this.minding = minding;
        this.stage = stage;
    }

    void write(Markup page, String heading) {
        page.element(heading, "Steps").open("ol", "class", "steps");
        List<MixingStep> steps = worked.steps();
        int measuring =
                (int) steps.stream().filter(step -> !step.act().isAfterMixing()).count();
        for (int i = 0; i <= steps.size(); i++) {
            if (i == measuring && !holdsPlants()) {
                measure(page);
            }
            if (i < steps.size()) {
                step(page, steps.get(i));
            }
        }
        page.close();
    }

    /** What plants give to the liquid is not in the plan, so that no density can be foretold. */
    private boolean holdsPlants() {
        return worked.plan().lines().stream()
                .map(line -> line.ingredient().kind())
                .anyMatch(kind -> kind == Kind.FRESH_PLANT || kind == Kind.DRIED_PLANT);
    }

    private void step(Markup page, MixingStep step) {
        page.open("li").element("span", "", "class", "tick").open("div");
        if (step.act() == MixingStep.Act.OWN) {
            page.typed(step.what());
        } else {
            page.told(MIXING, step.what());
        }
        if (!step.why().isEmpty()) {
            page.text(" ").open("small").told(MIXING, step.why()).close();
        }
        mind(step).forEach(minded -> minded.write(page));
        page.close().close();
    }

    /** Returns what rules say of the ingredients that go in at a step, or of what is done; the whole of it stands under the steps. */
    private List<Minded> mind(MixingStep step) {
        List<Minded> verdicts = new ArrayList<>();
        for (int line : step.lines()) {
            String name = worked.plan().lines().get(line).name();
            minding.ofLine(stage, line, name).forEach(finding -> verdicts.add(new Minded(name, finding)));
        }
        if (step.act() == MixingStep.Act.OWN) {
            ownSteps++;
            minding.ofOwnStep(stage, ownSteps).forEach(finding -> verdicts.add(new Minded("", finding)));
        }
        Set<String> said = new HashSet<>(); // two laws that do not know the same of an ingredient say one thing here
        return verdicts.stream().filter(each -> said.add(each.said())).toList();
    }

    private void measure(Markup page) {
        String expected = Told.figure(worked.measured().result().density() / 1000.0, 4, "g/mL");
        page.open("li").element("span", "", "class", "tick").open("div");
        page.text("Measure when cool.")
                .text(" Expect " + expected + " at 20 °C.")
                .text(" Found ");
        page.element("span", "", "class", "gap").text(Told.kept(" g/mL at "));
        page.element("span", "", "class", "gap").text(Told.kept(" °C"));
        page.close().close();
    }
}
