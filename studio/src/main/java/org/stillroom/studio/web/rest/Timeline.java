package org.stillroom.studio.web.rest;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.stillroom.studio.usecase.batch.Waiting;

/** Days as a line from left to right: where each wait lies on it, in parts of its width such as "12.5%". */
public final class Timeline {
    private static final int LONGEST_PAST = 60;
    private static final int LEAST_AHEAD = 14;
    /** What waits for longer runs out of the drawing, so that what is soon can be told apart. */
    private static final int MOST_AHEAD = 90;
    /** So narrow a bar can still be seen, per cent. */
    private static final double NARROWEST = 1.0;
    /** The end of a bar that goes on beyond the drawing, per cent. */
    private static final double BEYOND = 105.0;
    /** Nearer to an end than this, per cent, words begin or end at their place. */
    private static final double NEAR = 20.0;

    private final LocalDate first;
    private final LocalDate last;
    private final LocalDate today;

    Timeline(List<Waiting> waits, LocalDate today) {
        this.today = today;
        LocalDate begin = today.minusDays(LEAST_AHEAD / 2);
        LocalDate end = today.plusDays(LEAST_AHEAD);
        for (Waiting waiting : waits) {
            begin = waiting.from().isBefore(begin) ? waiting.from() : begin;
            end = waiting.until().isAfter(end) ? waiting.until() : end;
        }
        LocalDate earliest = today.minusDays(LONGEST_PAST);
        this.first = begin.isBefore(earliest) ? earliest : begin;
        LocalDate far = today.plusDays(MOST_AHEAD);
        LocalDate soonest =
                waits.stream().map(Waiting::until).min(LocalDate::compareTo).orElse(far);
        LocalDate horizon = soonest.isAfter(far) ? soonest : far;
        this.last = end.isAfter(horizon) ? horizon : end;
    }

    /** A wait as it is drawn; what began before the drawing begins at its edge. */
    public record Bar(String x, String width) {}

    /** Returns the place of a day, per cent. */
    private double at(LocalDate day) {
        double days = 1.0 + ChronoUnit.DAYS.between(first, last);
        return Math.max(0.0, Math.min(100.0, 100.0 * ChronoUnit.DAYS.between(first, day) / days));
    }

    private static String percent(double part) {
        return Math.round(10.0 * part) / 10.0 + "%";
    }

    public Bar bar(Waiting waiting) {
        double from = Math.min(at(waiting.from()), 100.0 - NARROWEST);
        double edge =
                waiting.until().isAfter(last) ? BEYOND : at(waiting.until().plusDays(1));
        double to = Math.max(from + NARROWEST, edge);
        return new Bar(percent(from), percent(to - from));
    }

    /** Returns where today is. */
    public String now() {
        return percent(at(today));
    }

    /** Returns how the word for today hangs at its place, so that it stays in the drawing. */
    public String nowAnchor() {
        double at = at(today);
        return at < NEAR ? "start" : at > 100.0 - NEAR ? "end" : "middle";
    }

    public LocalDate first() {
        return first;
    }

    public LocalDate last() {
        return last;
    }
}
