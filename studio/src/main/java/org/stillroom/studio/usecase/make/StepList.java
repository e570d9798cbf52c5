package org.stillroom.studio.usecase.make;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.MixingOrder;
import org.stillroom.core.plan.MixingStep;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Way;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Wait;
import org.stillroom.planner.marks.Measured;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.planner.marks.Reading;

/** The steps of one part in order: what mixing takes, cut to the size of one thing at a time. */
final class StepList {
    /** How long a warm syrup, or what mixing has warmed, mostly takes to cool. Common practice, no source. */
    private static final long COOLING_SECONDS = 20L * 60;

    /** Last part of the id of the step in which a part rests. */
    static final String REST = "rest";

    private static final double SECONDS_OF_DAY = 86_400.0;

    private final int part;
    private final @Nullable String ingredient;
    private final Plan before;
    private final Measured now;
    private final List<Way.Part> parts;
    private final Tally tally;
    private final Scale scale;
    private final List<MakeStep> steps = new ArrayList<>();
    private final Set<Integer> placed = new HashSet<>();
    private int ownSteps;

    StepList(int part, @Nullable String ingredient, Plan before, Measured now, List<Way.Part> parts, Tally tally) {
        this.part = part;
        this.ingredient = ingredient;
        this.before = before;
        this.now = now;
        this.parts = parts;
        this.tally = tally;
        this.scale = new Scale(tally.entries(part + "/vessel"));
    }

    List<MakeStep> steps() {
        boolean measured = false;
        for (MixingStep step : MixingOrder.of(now.plan())) {
            if (step.act().isAfterMixing() && !measured) {
                endMixing();
                measured = true;
            }
            add(step);
        }
        if (!measured) {
            endMixing();
        }
        steps.add(
                ingredient == null
                        ? plain("label", MakeStep.Kind.LABEL, label(), "")
                        : plain("came", MakeStep.Kind.CAME, "Strain it, then measure what came.", uses()));
        return steps;
    }

    private String label() {
        Typed<Wait> rest = before.recipe().rest();
        return "Label it: name, strength, day, batch" + (rest == null ? "." : ", and when it has rested.");
    }

    private String uses() {
        return "The next part is planned again with it: it is used as " + ingredient + ".";
    }

    private void endMixing() {
        leftOut();
        if (!holdsPlants()) {
            steps.add(plain(
                    "measure",
                    MakeStep.Kind.MEASURE,
                    "Measure the density when it is cool.",
                    "It tells whether what is in the vessel is what was planned."));
        }
    }

    /** What plants give to the liquid is not in the plan, so that no density can be foretold. */
    private boolean holdsPlants() {
        return before.lines().stream()
                .anyMatch(line -> Resting.isPlant(line.ingredient().kind()));
    }

    /** Lines that were planned and that nothing is taken of any more. */
    private void leftOut() {
        for (int i = 0; i < before.lines().size(); i++) {
            boolean planned =
                    before.lines().get(i).grams() > 1e-9 * before.liquid().total();
            if (planned && !placed.contains(i)) {
                pours(i, "", "", false);
            }
        }
    }

    private void add(MixingStep step) {
        switch (step.act()) {
            case WEIGH_VESSEL -> steps.add(plain("vessel", MakeStep.Kind.VESSEL, step.what(), step.why()));
            case POUR, MAKE_UP -> step.lines().forEach(line -> pours(line, step.what(), step.why(), false));
            case SECOND_JAR -> secondJar(step);
            case COOL -> steps.add(waiting("cool", MakeStep.Kind.COOL, step, COOLING_SECONDS));
            case REST -> steps.add(waiting(REST, MakeStep.Kind.REST, step, restSeconds()));
            case OWN -> {
                ownSteps++;
                long seconds = WaitInText.seconds(step.what());
                steps.add(waiting("own-" + ownSteps, MakeStep.Kind.OWN, step, seconds));
            }
            case PASTEURISE -> {} // of the bottles, which are filled out of the batch: its log says when
        }
    }

    private long restSeconds() {
        Typed<Wait> rest = before.recipe().rest();
        return rest == null ? 0 : Math.round(SECONDS_OF_DAY * rest.value().days());
    }

    private void secondJar(MixingStep step) {
        step.lines().forEach(line -> pours(line, "Into a second jar.", "", true));
        boolean warm = step.what().startsWith("Dissolve");
        String jar = "jar-" + (step.lines().get(0) + 1);
        String stir = warm
                ? "Dissolve what is in the second jar, warm" + (isDry(step) ? ", in part of the water." : ".")
                : "Stir what is in the second jar.";
        steps.add(plain(jar + "-stir", MakeStep.Kind.STIR, stir, warm ? step.why() : ""));
        if (warm) {
            MixingStep cool = new MixingStep("Let the second jar cool.", "", List.of(), MixingStep.Act.COOL);
            steps.add(waiting(jar + "-cool", MakeStep.Kind.COOL, cool, COOLING_SECONDS));
        }
        MakeStep in = plain(
                jar + "-in", MakeStep.Kind.POUR_IN, "Pour the second jar in slowly, stirring.", warm ? "" : step.why());
        scale.secondJarIn(in.state() == MakeStep.State.DONE);
        steps.add(in);
    }

    /** Returns whether no water goes into the second jar, since the vessel is made up with it later. */
    private boolean isDry(MixingStep step) {
        return step.lines().stream()
                .noneMatch(line -> now.lines().get(line).exact().ingredient().kind() == Kind.WATER);
    }

    private MakeStep plain(String name, MakeStep.Kind kind, String what, String why) {
        return waiting(name, kind, new MixingStep(what, why, List.of(), MixingStep.Act.OWN), 0);
    }

    private MakeStep waiting(String name, MakeStep.Kind kind, MixingStep as, long seconds) {
        String id = part + "/" + name;
        List<LogEntry> entries = tally.entries(id);
        boolean timed = entries.stream().anyMatch(entry -> entry.kind().equals(Logged.TIMER));
        List<LogEntry> counting = entries.stream().filter(StepList::settles).toList();
        MakeStep.State state = counting.isEmpty()
                ? MakeStep.State.TO_COME
                : counting.stream().anyMatch(entry -> entry.kind().equals(Logged.SKIPPED))
                        ? MakeStep.State.SKIPPED
                        : MakeStep.State.DONE;
        return new MakeStep(id, kind, as.what(), as.why(), null, state, timed ? entries : counting, seconds);
    }

    private static boolean settles(LogEntry entry) {
        return !entry.kind().equals(Logged.POSTPONED)
                && !entry.kind().equals(Logged.TIMER)
                && !entry.kind().equals(Logged.TIMER_OFF)
                && !entry.kind().equals(Logged.NOTE);
    }

    /** Adds what went in of a line of the plan, step by step, or what is still to go in. */
    private void pours(int index, String what, String why, boolean second) {
        Way.Part as = parts.get(index);
        placed.add(as.line());
        MeasuredLine asked = now.lines().get(index);
        MakeStep.Kind kind =
                asked.reading().manner() == Reading.Manner.TO_THE_MARK ? MakeStep.Kind.MAKE_UP : MakeStep.Kind.POUR;
        Tally.InLine in = tally.in(as.line());
        if (in != null && (as.isIn() || index == as.line())) {
            for (String id : in.steps()) {
                steps.add(poured(id, kind, what, why, asked, as.line(), second));
            }
            return;
        }
        boolean nothing = asked.reading().value() <= 0.0;
        if (nothing && in != null) {
            return;
        }
        double grams = asked.grams();
        MakeStep.Pour pour = new MakeStep.Pour(
                as.line(), asked, grams, scale.shows(second), scale.inVessel(second), second, in != null);
        scale.add(grams, second, false);
        MakeStep.State state = nothing ? MakeStep.State.NOT_NEEDED : MakeStep.State.TO_COME;
        steps.add(new MakeStep(tally.stepOf(as.line()), kind, what, why, pour, state, List.of(), 0));
    }

    private MakeStep poured(
            String id, MakeStep.Kind kind, String what, String why, MeasuredLine asked, int line, boolean second) {
        List<LogEntry> entries = tally.entries(id);
        double grams = 0.0;
        boolean differs = entries.size() > 1;
        boolean skipped = false;
        for (LogEntry entry : entries) {
            grams += entry.said().grams();
            differs = differs || Math.abs(entry.said().grams() - entry.said().asked()) > 1e-6;
            skipped = skipped || entry.kind().equals(Logged.SKIPPED);
        }
        MakeStep.Pour pour = new MakeStep.Pour(
                line,
                asked,
                grams,
                scale.shows(second),
                scale.inVessel(second),
                second,
                !id.endsWith("line-" + (line + 1)));
        scale.add(grams, second, true);
        MakeStep.State state =
                skipped ? MakeStep.State.SKIPPED : differs ? MakeStep.State.DIFFERING : MakeStep.State.DONE;
        return new MakeStep(id, kind, what, why, pour, state, entries, 0);
    }
}
