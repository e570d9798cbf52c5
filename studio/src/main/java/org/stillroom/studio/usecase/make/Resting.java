package org.stillroom.studio.usecase.make;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.studio.store.HistoryEntry;

/**
 * A make that stands at a rest of days.
 *
 * @param step that it stands at
 * @param entry number of the entry of its log with which the rest began
 * @param from when that was
 * @param until the day on which it is ready, as it was postponed last
 * @param plants whether plants stand in it, so that it macerates
 */
public record Resting(MakeStep step, long entry, Instant from, LocalDate until, boolean plants) {
    private static final Set<String> SETTLING =
            Set.of(Logged.DONE, Logged.POURED, Logged.SKIPPED, Logged.MEASURED, Logged.WEIGHED_VESSEL, Logged.CAME);

    private static final double SECONDS_OF_DAY = 86_400.0;

    /** Returns how a make rests, or nothing where it does not. */
    public static Optional<Resting> of(MakeState state, ZoneId zone) {
        MakeStep here = state.here();
        if (here == null || here.kind() != MakeStep.Kind.REST) {
            return Optional.empty();
        }
        return state.log().stream()
                .filter(entry -> entry.counts() && SETTLING.contains(entry.kind()))
                .reduce((earlier, later) -> later)
                .map(began -> resting(state, here, began, zone));
    }

    private static Resting resting(MakeState state, MakeStep here, LogEntry began, ZoneId zone) {
        LocalDate from = began.at().atZone(zone).toLocalDate();
        LocalDate until = state.log().stream()
                .filter(entry -> entry.counts() && entry.kind().equals(Logged.POSTPONED))
                .filter(entry -> entry.said().step().equals(here.id()))
                .map(entry -> LocalDate.parse(String.valueOf(entry.said().typed())))
                .reduce((earlier, later) -> later)
                .orElse(from.plusDays(days(here.waitSeconds())));
        boolean plants = state.partOf(here).planned().lines().stream()
                .anyMatch(line -> isPlant(line.ingredient().kind()));
        return new Resting(here, began.id(), began.at(), until, plants);
    }

    private static long days(long seconds) {
        return (long) Math.ceil(seconds / SECONDS_OF_DAY);
    }

    /** Returns whether something of a kind gives what it has to the liquid that it stands in. */
    public static boolean isPlant(Kind kind) {
        return kind == Kind.FRESH_PLANT || kind == Kind.DRIED_PLANT;
    }

    /**
     * How the rest of a finished make began, and what became of it before it was finished.
     *
     * @param from when the last of it went in, or null where the log does not say
     * @param seenTo when its rest was ticked, or null
     * @param skipped whether it was left out
     */
    public record Before(@Nullable Instant from, @Nullable Instant seenTo, boolean skipped) {}

    /** Returns that from the log of a make. */
    public static Before before(List<HistoryEntry> log) {
        Instant from = null;
        Instant seenTo = null;
        boolean skipped = false;
        for (LogEntry entry : LogEntry.of(log)) {
            if (entry.counts() && entry.said().grams() > 0.0) {
                from = entry.at();
                seenTo = null; // a rest of a stage before it
                skipped = false;
            } else if (entry.counts() && entry.said().step().endsWith("/" + StepList.REST)) {
                seenTo = entry.kind().equals(Logged.DONE) ? entry.at() : seenTo;
                skipped = skipped || entry.kind().equals(Logged.SKIPPED);
            }
        }
        return new Before(from, seenTo, skipped);
    }
}
