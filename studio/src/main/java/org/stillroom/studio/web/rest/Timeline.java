package org.stillroom.studio.web.rest;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.stillroom.studio.usecase.batch.Waiting;

/** Days as a line from left to right: where each wait lies on it, in the drawing's own units. */
public final class Timeline {
    /** Width of the drawing. */
    public static final double WIDTH = 640.0;

    /** Height of a row; its words stand above its bar. */
    public static final double ROW = 64.0;

    private static final double TOP = 44.0;
    private static final int LONGEST_PAST = 60;
    private static final int LEAST_AHEAD = 14;
    private static final int TICKS = 4;

    private final LocalDate first;
    private final double days;
    private final LocalDate today;
    private final List<Waiting> waits;

    Timeline(List<Waiting> waits, LocalDate today) {
        this.waits = List.copyOf(waits);
        this.today = today;
        LocalDate begin = today.minusDays(LEAST_AHEAD / 2);
        LocalDate end = today.plusDays(LEAST_AHEAD);
        for (Waiting waiting : waits) {
            begin = waiting.from().isBefore(begin) ? waiting.from() : begin;
            end = waiting.until().isAfter(end) ? waiting.until() : end;
        }
        LocalDate earliest = today.minusDays(LONGEST_PAST);
        this.first = begin.isBefore(earliest) ? earliest : begin;
        this.days = 1.0 + ChronoUnit.DAYS.between(first, end);
    }

    /** A wait as it is drawn; what began before the drawing begins at its edge. */
    public record Bar(Waiting waiting, double x, double width, double y, boolean due) {}

    /** A day that is named. */
    public record Tick(LocalDate day, double x) {}

    private double x(LocalDate day) {
        double at = ChronoUnit.DAYS.between(first, day) / days;
        return Math.round(10.0 * WIDTH * Math.max(0.0, Math.min(1.0, at))) / 10.0;
    }

    public List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        double y = TOP;
        for (Waiting waiting : waits) {
            double from = x(waiting.from());
            double to = Math.max(from + 6.0, x(waiting.until().plusDays(1)));
            bars.add(new Bar(
                    waiting,
                    from,
                    Math.min(WIDTH, to) - from,
                    y,
                    !waiting.until().isAfter(today)));
            y += ROW;
        }
        return bars;
    }

    /** Returns where today is. */
    public double now() {
        return x(today);
    }

    public double height() {
        return TOP + waits.size() * ROW;
    }

    public List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        for (int i = 1; i < TICKS; i++) {
            LocalDate day = first.plusDays(Math.round(i * days / TICKS));
            ticks.add(new Tick(day, x(day)));
        }
        return ticks;
    }
}
