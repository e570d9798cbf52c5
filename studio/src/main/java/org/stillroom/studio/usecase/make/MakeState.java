package org.stillroom.studio.usecase.make;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.Make;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.usecase.Minding;

/**
 * How a make stands: worked out from its start and its log, never kept apart from them.
 *
 * @param make as the store has it
 * @param revision that is made
 * @param start what was settled at the beginning
 * @param parts stages first
 * @param log all of it, what was taken back included
 * @param timers that run, or have run out and were not switched off
 * @param problems why a later part cannot be planned; empty as a rule
 * @param minding what rules say of the drink as it stands, which goes with its steps
 */
public record MakeState(
        Make make,
        Revision revision,
        MakeStart start,
        List<MakePart> parts,
        List<LogEntry> log,
        List<Timer> timers,
        List<Finding> problems,
        Minding minding) {
    public MakeState {
        parts = List.copyOf(parts);
        log = List.copyOf(log);
        timers = List.copyOf(timers);
        problems = List.copyOf(problems);
    }

    /**
     * A timer of a step.
     *
     * @param step that waits
     * @param begun when
     * @param seconds it runs
     */
    public record Timer(MakeStep step, Instant begun, long seconds) {
        public Instant ends() {
            return begun.plusSeconds(seconds);
        }
    }

    public List<MakeStep> steps() {
        return parts.stream().flatMap(part -> part.steps().stream()).toList();
    }

    /** Returns the step that is at hand, or null when everything is done. */
    public @Nullable MakeStep here() {
        return steps().stream().filter(MakeStep::isToCome).findFirst().orElse(null);
    }

    /** Returns what rules say of a step: of what goes in at it, or of what is done. */
    public List<Finding> minded(MakeStep step) {
        MakePart part = partOf(step);
        MakeStep.Pour pour = step.pour();
        if (pour != null) {
            return minding.ofLine(part.ingredient(), pour.line(), pour.name());
        }
        return step.kind() == MakeStep.Kind.OWN ? minding.ofOwnStep(part.ingredient(), step.ownNumber()) : List.of();
    }

    /** Returns the part that a step belongs to. */
    public MakePart partOf(MakeStep step) {
        return parts.stream()
                .filter(part -> part.steps().contains(step))
                .findFirst()
                .orElseThrow(() -> new MissingException("no part has the step " + step.id()));
    }

    /**
     * Returns a step.
     *
     * @throws MissingException when there is none of that id
     */
    public MakeStep step(String id) {
        return steps().stream()
                .filter(step -> step.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new MissingException("this make has no step " + id));
    }

    public long done() {
        return steps().stream().filter(step -> !step.isToCome()).count();
    }

    /** Returns the number of the last entry, for a page to say what it knew. */
    public long seen() {
        return log.isEmpty() ? 0 : log.get(log.size() - 1).id();
    }

    /** Returns whether everything that is poured or measured out is in, so that a batch can be made of it. */
    public boolean isPoured() {
        return problems.isEmpty() && steps().stream().noneMatch(step -> step.isToCome() && step.isPour());
    }

    /** Returns the part that is the recipe itself; there is one unless there are problems. */
    public MakePart whole() {
        return parts.get(parts.size() - 1);
    }
}
