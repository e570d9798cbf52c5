package org.stillroom.core.triangle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * What lies within reach, as an outline: the convex hull of places, by the monotone chain (A. M. Andrew, Inf. Process. Lett. 9, 1979).
 *
 * @param spots its corners in order, none of them on the line between its neighbours; a line has two, a single place one
 */
public record Outline(List<Spot> spots) {
    /** Places nearer than this part of the triangle are one. */
    private static final double SAME = 1e-7;

    public Outline {
        spots = List.copyOf(spots);
    }

    /** Returns the hull of all given places. */
    public static Outline around(List<Spot> places) {
        List<Spot> sorted = new ArrayList<>();
        places.stream()
                .sorted(Comparator.comparingDouble(Spot::sugar).thenComparingDouble(Spot::ethanol))
                .filter(spot -> sorted.isEmpty() || isApart(sorted.get(sorted.size() - 1), spot))
                .forEach(sorted::add);
        if (sorted.size() < 3) {
            return new Outline(sorted);
        }
        List<Spot> hull = chain(sorted);
        List<Spot> backwards = new ArrayList<>(sorted);
        Collections.reverse(backwards);
        List<Spot> back = chain(backwards);
        hull.addAll(back.subList(1, back.size() - 1));
        return new Outline(hull);
    }

    private static boolean isApart(Spot one, Spot other) {
        return Math.abs(one.ethanol() - other.ethanol()) + Math.abs(one.sugar() - other.sugar()) > SAME;
    }

    private static List<Spot> chain(List<Spot> sorted) {
        List<Spot> chain = new ArrayList<>();
        for (Spot spot : sorted) {
            while (chain.size() > 1 && !turnsLeft(chain.get(chain.size() - 2), chain.get(chain.size() - 1), spot)) {
                chain.remove(chain.size() - 1);
            }
            chain.add(spot);
        }
        return chain;
    }

    private static boolean turnsLeft(Spot from, Spot over, Spot to) {
        double turn = (over.sugar() - from.sugar()) * (to.ethanol() - from.ethanol())
                - (over.ethanol() - from.ethanol()) * (to.sugar() - from.sugar());
        return turn > SAME * SAME;
    }

    /** Returns the part of this outline that a plate shows. */
    public Outline within(Plate plate) {
        if (spots.size() < 2) {
            return new Outline(spots.stream().filter(plate::shows).toList());
        }
        List<Spot> kept = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            Spot from = spots.get(i);
            Spot to = spots.get((i + 1) % spots.size());
            if (plate.shows(from)) {
                kept.add(from);
            }
            if (plate.shows(from) != plate.shows(to)) {
                kept.add(crossing(from, to, plate.shown()));
            }
        }
        return around(kept);
    }

    private static Spot crossing(Spot from, Spot to, double shown) {
        double start = from.ethanol() + from.sugar();
        double part = (shown - start) / (to.ethanol() + to.sugar() - start);
        double ethanol = from.ethanol() + part * (to.ethanol() - from.ethanol());
        return new Spot(ethanol, shown - ethanol);
    }
}
