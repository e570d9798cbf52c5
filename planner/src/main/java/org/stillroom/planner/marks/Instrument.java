package org.stillroom.planner.marks;

import java.util.List;

/** Something to measure with, as rounding sees it: the amounts that it can take. */
sealed interface Instrument permits Graduated, SizedSet, Dropper {
    String name();

    /** Returns whether it can take this ingredient at all. */
    boolean canTake(Portion portion);

    /**
     * Returns the amounts next to what the plan takes, smallest first: so many below and so many above, and the amount itself
     * where the instrument shows it.
     */
    List<Take> near(Portion portion, int eachSide);

    /** Returns the amount nearest to what the plan takes. */
    default Take nearest(Portion portion) {
        Take best = null;
        for (Take take : near(portion, 1)) {
            if (best == null || off(take, portion) < off(best, portion)) {
                best = take;
            }
        }
        if (best == null) {
            throw new IllegalStateException(name() + " shows nothing near " + portion.grams() + " g");
        }
        return best;
    }

    private static double off(Take take, Portion portion) {
        return Math.abs(take.grams() - portion.grams());
    }
}
