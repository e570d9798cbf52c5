package org.stillroom.studio.usecase.make;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Replanned;
import org.stillroom.core.plan.Way;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.marks.Measured;

/**
 * One making within a make: a stage that comes first, or the recipe itself.
 *
 * @param number its place, from 1; the first part of the ids of its steps
 * @param title of what is made
 * @param ingredient name under which its result is used, or null for the recipe itself
 * @param planned what was planned before anything was poured, as the instruments show it
 * @param measured what it comes to now, with what is in and what is still to pour
 * @param steps in order
 * @param replanned how it can go on, or null while everything is as asked
 * @param settled whether the maker has chosen a way since the last slip
 * @param findings what the slips did, and what else to know
 */
public record MakePart(
        int number,
        String title,
        @Nullable String ingredient,
        Plan planned,
        Measured measured,
        List<MakeStep> steps,
        @Nullable Replanned replanned,
        boolean settled,
        List<Finding> findings) {
    public MakePart {
        steps = List.copyOf(steps);
        findings = List.copyOf(findings);
    }

    /** Returns the ways to choose from; empty where there is nothing to choose. */
    public List<Way> choices() {
        return replanned == null || settled || replanned.ways().size() < 2 ? List.of() : replanned.ways();
    }

    /** Returns the last step in which something else went in than was asked, or null. */
    public @Nullable MakeStep slip() {
        MakeStep slip = null;
        long last = -1;
        for (MakeStep step : steps) {
            LogEntry entry = step.last();
            boolean differs = step.state() == MakeStep.State.DIFFERING || step.state() == MakeStep.State.SKIPPED;
            if (differs && step.isPour() && entry != null && entry.id() > last) {
                slip = step;
                last = entry.id();
            }
        }
        return slip;
    }
}
