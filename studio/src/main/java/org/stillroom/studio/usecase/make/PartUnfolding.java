package org.stillroom.studio.usecase.make;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.plan.Replanned;
import org.stillroom.core.plan.Replanning;
import org.stillroom.core.plan.Way;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.marks.Measured;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.planner.marks.Measuring;

/** Works out how one part of a make stands: its plan, made again where the log says that something else went in. */
final class PartUnfolding {
    private final int number;
    private final @Nullable String ingredient;
    private final Plan plan;
    private final List<LogEntry> log;
    private final Tally tally;

    PartUnfolding(int number, @Nullable String ingredient, Plan plan, List<LogEntry> log) {
        this.number = number;
        this.ingredient = ingredient;
        this.plan = plan;
        this.log = log;
        this.tally = new Tally(number, log);
    }

    MakePart part() {
        Measured asPlanned = Measuring.of(plan);
        Plan planned = asMeasured(asPlanned);
        Replanned replanned = tally.deviates() ? Replanning.of(planned, tally.goal(), tally.poured()) : null;
        Measured now =
                replanned == null ? asPlanned : Measuring.of(replanned.keeping().plan());
        List<Way.Part> parts =
                replanned == null ? allOnce() : replanned.keeping().parts();
        StepList steps = new StepList(number, ingredient, plan, now, parts, tally);
        List<Finding> findings = new ArrayList<>(replanned == null ? List.of() : replanned.findings());
        findings.addAll(new Found(number, now.result(), log).findings());
        return new MakePart(
                number,
                plan.recipe().title(),
                ingredient,
                planned,
                now,
                steps.steps(),
                replanned,
                tally.isSettled(),
                findings);
    }

    private List<Way.Part> allOnce() {
        return IntStream.range(0, plan.lines().size())
                .mapToObj(line -> new Way.Part(line, tally.in(line) != null))
                .toList();
    }

    /** Returns the plan with the amounts as the instruments show them: what "as asked" means to who pours. */
    private static Plan asMeasured(Measured measured) {
        List<PlannedLine> lines = new ArrayList<>();
        Contents liquid = Contents.NONE;
        for (MeasuredLine line : measured.lines()) {
            PlannedLine exact = line.exact();
            lines.add(new PlannedLine(exact.line(), exact.ingredient(), line.grams()));
            liquid = liquid.plus(exact.ingredient().perGram().times(line.grams()));
        }
        Plan plan = measured.plan();
        double millilitres = VolumeModel.atTwenty().millilitres(liquid.toGrams());
        return new Plan(plan.recipe(), lines, liquid, millilitres, plan.reached(), plan.stages(), plan.findings());
    }
}
