package org.stillroom.core.triangle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Sketch;
import org.stillroom.core.quantity.Span;

/**
 * Takes a recipe's point to another place in the triangle: the amounts that lie there, or at the border of reach nearest to it.
 *
 * <p>What is asked is written in whole steps, so that a field can say it as a person would type it: 0.1 % vol and 1 g/L. Only where reach
 * is too narrow for such a step it is 0.01 % vol and 0.1 g/L.
 */
public final class Drag {
    /** Whole steps per % vol and per g/L. */
    private static final Reading COARSE = new Reading(10.0, 1.0);

    private static final Reading FINE = new Reading(100.0, 10.0);
    private static final double MOST_STRENGTH = 100.0;
    private static final double MOST_SUGAR = 1600.0;

    private Drag() {}

    /**
     * What comes of it.
     *
     * @param asked what to write as the target, in whole steps
     * @param answer the amounts for it
     * @param reading what they come to
     * @param held whether the hand wanted to go farther than the lines can
     */
    public record Moved(Reading asked, Sketch.Answer answer, Reading reading, boolean held) {
        /** Returns where it lies. */
        public Spot spot() {
            return Company.spot(answer.liquid());
        }
    }

    /**
     * Returns the recipe taken to a strength and a sugar.
     *
     * @throws ArithmeticException when the volume does not settle, or the cost has no least
     */
    public static Moved to(Sketch sketch, Reading wanted) {
        Reading inSteps = inWholeSteps(wanted);
        Moved moved = moved(sketch, inSteps, asking(sketch, inSteps).answer(), false);
        return moved.answer().reached() ? moved : atTheBorder(sketch, inSteps);
    }

    private static Moved atTheBorder(Sketch sketch, Reading inSteps) {
        Sketch.Answer nearest = asking(sketch, inSteps).nearestKeepingVolume();
        Reading border = reading(sketch, nearest);
        List<Reading> beside = new ArrayList<>(around(border, COARSE));
        beside.addAll(around(border, FINE));
        for (Reading each : beside) {
            Sketch.Answer answer = asking(sketch, each).answer();
            if (answer.reached()) {
                return moved(sketch, each, answer, true);
            }
        }
        return moved(sketch, beside.get(0), nearest, true);
    }

    private static Sketch asking(Sketch sketch, Reading reading) {
        return sketch.asking(Asked.STRENGTH, Span.exactly(reading.strength()))
                .asking(Asked.SUGAR, Span.exactly(reading.sugar()));
    }

    private static Moved moved(Sketch sketch, Reading asked, Sketch.Answer answer, boolean held) {
        return new Moved(asked, answer, reading(sketch, answer), held);
    }

    private static Reading reading(Sketch sketch, Sketch.Answer answer) {
        return Company.of(answer.liquid(), sketch.sugarBasis()).reading(Company.spot(answer.liquid()));
    }

    /** Returns the whole steps about a place, the nearest first. */
    private static List<Reading> around(Reading border, Reading perUnit) {
        double strength = border.strength() * perUnit.strength();
        double sugar = border.sugar() * perUnit.sugar();
        List<Reading> around = new ArrayList<>();
        for (double up : new double[] {Math.floor(strength), Math.ceil(strength)}) {
            for (double sweeter : new double[] {Math.floor(sugar), Math.ceil(sugar)}) {
                around.add(new Reading(up / perUnit.strength(), sweeter / perUnit.sugar()));
            }
        }
        around.sort(Comparator.comparingDouble(each -> Math.abs(each.strength() * perUnit.strength() - strength)
                + Math.abs(each.sugar() * perUnit.sugar() - sugar)));
        return around;
    }

    private static Reading inWholeSteps(Reading wanted) {
        double strength = Math.max(0.0, Math.min(MOST_STRENGTH, wanted.strength()));
        double sugar = Math.max(0.0, Math.min(MOST_SUGAR, wanted.sugar()));
        return new Reading(
                Math.rint(strength * COARSE.strength()) / COARSE.strength(),
                Math.rint(sugar * COARSE.sugar()) / COARSE.sugar());
    }
}
