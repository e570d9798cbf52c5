package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Span;

/**
 * The liquids that stand at the border of what a recipe's lines can come to, whatever strength and sugar are asked for.
 *
 * <p>Amounts and doses that are fixed stay, limits of what is at hand hold, and so do the volume and the acidity that are asked. For
 * a given volume strength and sugar are linear in the grams, so what lies farthest in one direction is an answer of {@link Solver};
 * directions are tried until none finds a liquid beyond the ones already found. Between two of them the border bends
 * by less than a thousandth of the triangle. Where the volume is open, or cannot be reached,
 * this is done for several volumes.
 */
public final class Reach {
    /** What counts as one step of each figure when directions are compared: 100 % vol, 1000 g/L. */
    private static final double WHOLE_STRENGTH = 100.0;

    private static final double WHOLE_SUGAR = 1000.0;
    /** A corner nearer than this to the line between two others is none. */
    private static final double APART = 1e-5;

    private static final int MOST_HALVINGS = 6;
    private static final int VOLUMES = 8;
    /** How many times what is fixed a batch of open size is followed, where nothing at hand ends it. */
    private static final double MOST_TIMES = 30.0;

    private final Sketch sketch;
    private final Problem open;
    private final List<Corner> found = new ArrayList<>();

    private Reach(Sketch sketch) {
        this.sketch = sketch;
        this.open = sketch.problem().leavingOpen(Asked.STRENGTH).leavingOpen(Asked.SUGAR);
    }

    /** One liquid at the border: its figures as parts of a whole step, and its amounts. */
    private record Corner(double strength, double sugar, Solution solution) {
        boolean isApartFrom(Corner other) {
            return Math.abs(strength - other.strength) + Math.abs(sugar - other.sugar) > APART;
        }

        /** Returns how far this lies to the left of the way from one corner to another, times the length of that way. */
        double leftOf(Corner from, Corner to) {
            return (to.sugar - from.sugar) * (strength - from.strength)
                    - (to.strength - from.strength) * (sugar - from.sugar);
        }
    }

    /** Returns the liquids at the border, in no order; none when the recipe cannot be made at all. */
    public static List<Contents> border(Sketch sketch) {
        Reach reach = new Reach(sketch);
        Span volume = reach.open.asked().get(Asked.VOLUME);
        if (volume != null) {
            reach.goAround(0.5 * (volume.low() + volume.high()));
        }
        if (reach.found.isEmpty()) {
            reach.goAroundOpenVolumes();
        }
        return reach.found.stream().map(reach::liquid).toList();
    }

    private Contents liquid(Corner corner) {
        Contents liquid = Contents.NONE;
        for (int i = 0; i < sketch.lines().size(); i++) {
            liquid = liquid.plus(
                    sketch.lines().get(i).perGram().times(corner.solution.grams()[i]));
        }
        return liquid;
    }

    private void goAroundOpenVolumes() {
        double least = solved(costing(0.0, 0.0, open.leavingOpen(Asked.VOLUME))).millilitres();
        double most = most(least);
        double first = Math.max(least, most / MOST_TIMES);
        for (int i = 0; i < VOLUMES; i++) {
            goAround(first * Math.pow(most / first, i / (VOLUMES - 1.0)));
        }
    }

    /** Returns the greatest volume to follow: all that is at hand, else many times what is fixed. */
    private double most(double least) {
        double grams = 0.0;
        for (Problem.Line line : open.lines()) {
            grams += line.room();
        }
        return grams < Double.POSITIVE_INFINITY ? least + grams : MOST_TIMES * Math.max(least, 1.0);
    }

    private void goAround(double millilitres) {
        Problem held = open.asking(Asked.VOLUME, Span.exactly(millilitres));
        List<Corner> first = new ArrayList<>();
        for (double[] way : new double[][] {{1, 0}, {0, 1}, {-1, 0}, {0, -1}}) {
            Corner corner = farthest(held, way[0], way[1]);
            if (corner == null) {
                return;
            }
            first.add(corner);
        }
        for (int i = 0; i < first.size(); i++) {
            found.add(first.get(i));
            goBetween(held, first.get(i), first.get((i + 1) % first.size()), 0);
        }
    }

    private void goBetween(Problem held, Corner from, Corner to, int halvings) {
        if (halvings == MOST_HALVINGS || !from.isApartFrom(to)) {
            return;
        }
        Corner beyond = farthest(held, to.sugar - from.sugar, from.strength - to.strength);
        if (beyond != null
                && beyond.leftOf(from, to) > APART * APART
                && beyond.isApartFrom(from)
                && beyond.isApartFrom(to)) {
            goBetween(held, from, beyond, halvings + 1);
            found.add(beyond);
            goBetween(held, beyond, to, halvings + 1);
        }
    }

    /** Returns what lies farthest in one direction, or null when the volume cannot be made. */
    private @Nullable Corner farthest(Problem held, double towardsStrength, double towardsSugar) {
        Solution solution = solved(costing(towardsStrength, towardsSugar, held));
        if (!solution.reached() || solution.millilitres() <= 0.0) {
            return null;
        }
        return new Corner(
                held.figure(Asked.STRENGTH, solution) / WHOLE_STRENGTH,
                held.figure(Asked.SUGAR, solution) / WHOLE_SUGAR,
                solution);
    }

    private static Solution solved(Problem problem) {
        return Solver.solve(problem);
    }

    private static Problem costing(double towardsStrength, double towardsSugar, Problem problem) {
        double[] ofStrength = Objects.requireNonNull(problem.weights().get(Asked.STRENGTH));
        double[] ofSugar = Objects.requireNonNull(problem.weights().get(Asked.SUGAR));
        Problem costing = problem;
        for (int i = 0; i < problem.lines().length; i++) {
            Problem.Line line = problem.lines()[i];
            double gain = 0.0;
            for (int s = 0; s < ofStrength.length; s++) {
                gain += line.perGram()[s]
                        * (towardsStrength * ofStrength[s] / WHOLE_STRENGTH + towardsSugar * ofSugar[s] / WHOLE_SUGAR);
            }
            costing = costing.withLine(i, line.costing(-gain));
        }
        return costing;
    }
}
