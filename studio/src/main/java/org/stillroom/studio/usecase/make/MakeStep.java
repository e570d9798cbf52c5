package org.stillroom.studio.usecase.make;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Drops;
import org.stillroom.planner.marks.MeasuredLine;

/**
 * One step of a make, at the size of one thing that hands do.
 *
 * @param id stays the same however often the rest is planned again
 * @param kind of step
 * @param what to do, a sentence; for a pour what belongs to it besides the amount
 * @param why the reason, or empty
 * @param pour what goes in, or null
 * @param state how it stands
 * @param entries what counts in the log about it, oldest first
 * @param waitSeconds how long its timer runs unless somebody says otherwise, and how long a rest lasts; 0 where nothing waits
 */
public record MakeStep(
        String id,
        Kind kind,
        String what,
        String why,
        @Nullable Pour pour,
        State state,
        List<LogEntry> entries,
        long waitSeconds) {
    public MakeStep {
        entries = List.copyOf(entries);
    }

    /** The kinds of step. */
    public enum Kind {
        /** The empty vessel is weighed, and the scale set to zero or not. */
        VESSEL,
        /** Something goes into the vessel. */
        POUR,
        /** The vessel is filled up to its mark. */
        MAKE_UP,
        /** What is in the second jar is stirred or dissolved. */
        STIR,
        /** Something waits until it is cool. */
        COOL,
        /** What is in the second jar goes into the vessel. */
        POUR_IN,
        /** Density and temperature are measured. */
        MEASURE,
        /** It rests for days. */
        REST,
        /** A step of the maker's own. */
        OWN,
        /** What a stage left is measured. */
        CAME,
        /** The vessel gets its label. */
        LABEL
    }

    /** How a step stands. */
    public enum State {
        TO_COME,
        DONE,
        /** Done, with something else than was asked. */
        DIFFERING,
        SKIPPED,
        /** The plan, made again, takes nothing of it. */
        NOT_NEEDED
    }

    /**
     * What goes in.
     *
     * @param line index of the recipe's line
     * @param asked what is asked, as the instrument shows it
     * @param grams what went in so far, or is asked while nothing did, g
     * @param before what the scale shows before it, when everything earlier is in as asked or as poured, g
     * @param inVessel what is in the vessel really, as its scale shows it now, g
     * @param secondJar whether it goes into the second jar
     * @param further whether it tops up what is in already
     */
    public record Pour(
            int line,
            MeasuredLine asked,
            double grams,
            double before,
            double inVessel,
            boolean secondJar,
            boolean further) {
        public String name() {
            return asked.name();
        }

        /** Returns what the scale shows when it is in, g. */
        public double after() {
            return before + grams;
        }

        /** Returns how many drops are asked; 0 where it is not counted in drops. */
        public int drops() {
            return asked.reading().amount() instanceof Drops drops ? (int) Math.round(drops.count()) : 0;
        }
    }

    public boolean isToCome() {
        return state == State.TO_COME;
    }

    public boolean isPour() {
        return pour != null;
    }

    /** Returns which of the maker's own steps it is, from 1. */
    int ownNumber() {
        return Integer.parseInt(id.substring(id.lastIndexOf('-') + 1));
    }

    /** Returns by how many grams more went in than was asked; negative when it was less. */
    public double over() {
        return entries.stream()
                .filter(LogEntry::isPour)
                .mapToDouble(entry -> entry.said().grams() - entry.said().asked())
                .sum();
    }

    /** Returns the last entry that counts about it, which an undo takes back; null when there is none. */
    public @Nullable LogEntry last() {
        return entries.isEmpty() ? null : entries.get(entries.size() - 1);
    }
}
