package org.stillroom.core.triangle;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Lines of equal strength and of equal sugar on a plate, and the two lines of sight of a liquid.
 *
 * @param company what stands beside the three; the lines are its own
 * @param plate what is shown; lines end at its edge
 */
public record Contours(Company company, Plate plate) {
    private static final double STRENGTH_STEP = 10.0;
    private static final double SUGAR_STEP = 100.0;
    /** From spot to spot along a line of equal strength, g/L, and of equal sugar, % vol. */
    private static final double ALONG_STRENGTH = 50.0;

    private static final double ALONG_SUGAR = 5.0;
    private static final int HALVINGS = 12;

    /**
     * One line.
     *
     * @param value % vol or g/L
     * @param spots from its edge, where the other figure is zero, inwards
     */
    public record Contour(double value, List<Spot> spots) {
        public Contour {
            spots = List.copyOf(spots);
        }

        /** Returns where the line meets its edge. */
        public Spot foot() {
            return spots.get(0);
        }
    }

    /** Returns the lines of 10, 20 … % vol. */
    public List<Contour> strengths() {
        return contours(STRENGTH_STEP, strength -> upTo(ALONG_STRENGTH, sugar -> spot(strength, sugar)));
    }

    /** Returns the lines of 100, 200 … g/L. */
    public List<Contour> sugars() {
        return contours(SUGAR_STEP, sugar -> upTo(ALONG_SUGAR, strength -> spot(strength, sugar)));
    }

    /** Returns the line of a liquid's own strength from the edge without sugar to the liquid. */
    public Contour sightOfStrength(Reading reading) {
        return new Contour(
                reading.strength(), sight(reading.sugar(), ALONG_STRENGTH, sugar -> spot(reading.strength(), sugar)));
    }

    /** Returns the line of a liquid's own sugar from the edge without spirit to the liquid. */
    public Contour sightOfSugar(Reading reading) {
        return new Contour(
                reading.sugar(), sight(reading.strength(), ALONG_SUGAR, strength -> spot(strength, reading.sugar())));
    }

    private @Nullable Spot spot(double strength, double sugar) {
        return company.spot(new Reading(strength, sugar));
    }

    private static List<Contour> contours(double step, DoubleFunction<List<Spot>> line) {
        List<Contour> found = new ArrayList<>();
        for (double value = step; ; value += step) {
            List<Spot> spots = line.apply(value);
            if (spots.size() < 2) {
                return found;
            }
            found.add(new Contour(value, spots));
        }
    }

    /** Follows a line in steps as long as it is shown, and by halving to the very edge. */
    private List<Spot> upTo(double step, DoubleFunction<@Nullable Spot> at) {
        List<Spot> spots = new ArrayList<>();
        double reached = 0.0;
        for (Spot spot = at.apply(0.0); isShown(spot); spot = at.apply(reached + step)) {
            reached = spots.isEmpty() ? 0.0 : reached + step;
            spots.add(spot);
        }
        if (!spots.isEmpty()) {
            addEdge(spots, reached, step, at);
        }
        return spots;
    }

    private void addEdge(List<Spot> spots, double from, double step, DoubleFunction<@Nullable Spot> at) {
        double inside = from;
        double outside = from + step;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (inside + outside);
            if (isShown(at.apply(middle))) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        Spot edge = at.apply(inside);
        if (edge != null && inside > from) {
            spots.add(edge);
        }
    }

    private boolean isShown(@Nullable Spot spot) {
        return spot != null && plate.shows(spot);
    }

    private static List<Spot> sight(double end, double step, DoubleFunction<@Nullable Spot> at) {
        List<Spot> spots = new ArrayList<>();
        for (double value = 0.0; value < end; value += step) {
            add(spots, at.apply(value));
        }
        add(spots, at.apply(end));
        return spots;
    }

    private static void add(List<Spot> spots, @Nullable Spot spot) {
        if (spot != null) {
            spots.add(spot);
        }
    }
}
