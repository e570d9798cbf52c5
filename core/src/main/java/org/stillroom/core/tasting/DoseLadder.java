package org.stillroom.core.tasting;

import java.util.ArrayList;
import java.util.List;

/**
 * Doses for a trial, each so many times the one before: taste goes by ratios. Source of the usual factors: doubling for a first look and 1.41
 * for a fine setting, common practice; thresholds are sought by steps of 2 to 3.
 */
public final class DoseLadder {
    /** For a first look. */
    public static final double COARSE = 2.0;
    /** For a fine setting: half steps of 2. */
    public static final double FINE = Math.sqrt(2.0);

    private DoseLadder() {}

    /**
     * Returns doses around one, in its unit: as many below it as above.
     *
     * @param middle the dose that is thought right, above zero
     * @param factor from rung to rung, above 1
     * @param rungs how many, odd, so that the middle is one of them
     */
    public static List<Double> around(double middle, double factor, int rungs) {
        if (!(middle > 0.0 && factor > 1.0 && rungs >= 1 && rungs % 2 == 1)) {
            throw new IllegalArgumentException(
                    "a ladder has a dose above 0, a factor above 1 and an odd number of rungs, not " + middle + ", "
                            + factor + ", " + rungs);
        }
        List<Double> ladder = new ArrayList<>();
        for (int rung = -(rungs / 2); rung <= rungs / 2; rung++) {
            ladder.add(middle * Math.pow(factor, rung));
        }
        return ladder;
    }
}
