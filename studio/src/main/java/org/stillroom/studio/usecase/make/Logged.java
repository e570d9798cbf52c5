package org.stillroom.studio.usecase.make;

import org.jspecify.annotations.Nullable;

/**
 * What an entry of a make's log says; its kind is that of the entry.
 *
 * @param step id of the step, empty where it is about the whole
 * @param typed as typed, or null when it was ticked or counted
 * @param grams that went in, g
 * @param asked what the page asked for, g
 * @param seen number of the last entry that the page knew of
 * @param second further text as typed: a temperature, a name of a way
 * @param number of seconds of a timer, of mL of a way
 */
public record Logged(
        String step,
        @Nullable String typed,
        double grams,
        double asked,
        long seen,
        @Nullable String second,
        double number) {
    /** The step was done as it was asked. */
    public static final String DONE = "step.done";
    /** Something else than what was asked went in, or it was weighed or counted. */
    public static final String POURED = "step.poured";
    /** The step is left out. */
    public static final String SKIPPED = "step.skipped";
    /** A density and a temperature were measured. */
    public static final String MEASURED = "step.measured";
    /** The empty vessel was weighed. */
    public static final String WEIGHED_VESSEL = "step.weighed-vessel";
    /** A rest goes on until another day, which was typed as year-month-day. */
    public static final String POSTPONED = "step.postponed";
    /** What a stage left was measured. */
    public static final String CAME = "stage.came";
    /** A way to go on was chosen. */
    public static final String WAY = "way.chosen";
    /** A timer began. */
    public static final String TIMER = "timer.started";
    /** A timer was switched off. */
    public static final String TIMER_OFF = "timer.stopped";
    /** The maker noted something. */
    public static final String NOTE = "note";
    /** An earlier entry does not count. */
    public static final String UNDO = "undo";

    static Logged ofStep(String step, @Nullable String typed, double grams, double asked, long seen) {
        return new Logged(step, typed, grams, asked, seen, null, 0.0);
    }

    static Logged text(String step, String typed, @Nullable String second, double number, long seen) {
        return new Logged(step, typed, 0.0, 0.0, seen, second, number);
    }
}
