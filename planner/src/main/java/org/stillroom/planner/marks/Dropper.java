package org.stillroom.planner.marks;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.reference.Source;

/**
 * Whole drops from a dropper.
 *
 * @param name what the maker calls it
 */
record Dropper(String name) implements Instrument {
    @Override
    public boolean canTake(Portion portion) {
        return !portion.isSolid();
    }

    @Override
    public List<Take> near(Portion portion, int eachSide) {
        double drops = portion.grams() / portion.gramsPerDrop();
        long nearest = Math.round(drops);
        boolean whole = Math.abs(drops - nearest) <= 1e-9 * Math.max(1.0, drops);
        long below = whole ? nearest : (long) Math.floor(drops);
        List<Take> takes = new ArrayList<>();
        for (long count = Math.max(0, below - eachSide + (whole ? 0 : 1)); count <= below + eachSide; count++) {
            takes.add(take(portion, count));
        }
        return takes;
    }

    private Take take(Portion portion, long count) {
        String words = count + (count == 1 ? " drop" : " drops");
        List<Reading.Filling> fillings = List.of();
        Reading reading = Reading.rounded(new Drops(count), (double) count, "drops", name, fillings, words);
        double grams = count * portion.gramsPerDrop();
        double tolerance = portion.dropDoubt() * grams;
        return new Take(reading, grams, tolerance, 0.5 * portion.gramsPerDrop(), false, Source.SURFACE_TENSION);
    }
}
