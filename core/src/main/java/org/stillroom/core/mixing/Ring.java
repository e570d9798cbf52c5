package org.stillroom.core.mixing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.OilPart;
import org.stillroom.core.tasting.OdourThreshold;

/**
 * The oil that gathers, on top or at the bottom, once a haze has cleared by standing: what is lost when it is drawn off or filtered. Shaken
 * in, it comes back as the haze that it was.
 *
 * @param grams of it from a litre of liquid
 * @param millilitres of it from a litre of liquid
 * @param part of all the oil that is in it, 0 to 1
 * @param parts its constituents, the most first
 * @param odour what goes with it by the thresholds of smell, or null where no threshold is known
 */
public record Ring(
        double grams,
        double millilitres,
        double part,
        List<Part> parts,
        @Nullable Odour odour) {
    /** µg in a gram. */
    private static final double MICROGRAMS = 1e6;

    public Ring {
        parts = List.copyOf(parts);
    }

    /**
     * One constituent of it.
     *
     * @param grams from a litre of liquid
     * @param share of the ring's mass, 0 to 1
     * @param lost part of this constituent that is in the ring, 0 to 1
     */
    public record Part(String name, double grams, double share, double lost) {}

    /**
     * What goes with it of the sum of contents over thresholds.
     *
     * @param lost part of that sum, 0 to 1
     * @param known part of the oil's mass of which thresholds are known, 0 to 1; the rest is not counted
     */
    public record Odour(double lost, double known) {}

    /** Returns the ring of a liquid, or null where no oil separates. */
    public static @Nullable Ring of(Clarity clarity) {
        double[] separated = clarity.oils().separatedParts(clarity.medium());
        double grams = 0.0;
        double millilitres = 0.0;
        for (int i = 0; i < separated.length; i++) {
            grams += separated[i];
            millilitres += separated[i] / clarity.oils().parts().get(i).gramsPerMillilitre();
        }
        if (!(grams > 0.0)) {
            return null;
        }
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < separated.length; i++) {
            if (separated[i] > 0.0) {
                parts.add(new Part(
                        clarity.oils().parts().get(i).name(),
                        separated[i],
                        separated[i] / grams,
                        separated[i] / clarity.oils().gramsPerLitre(i)));
            }
        }
        parts.sort(Comparator.comparingDouble((Part part) -> part.grams()).reversed());
        return new Ring(grams, millilitres, grams / clarity.oils().gramsPerLitre(), parts, odour(clarity, separated));
    }

    private static @Nullable Odour odour(Clarity clarity, double[] separated) {
        double all = 0.0;
        double gone = 0.0;
        double known = 0.0;
        for (int i = 0; i < separated.length; i++) {
            OilPart part = clarity.oils().parts().get(i);
            OdourThreshold threshold =
                    OdourThreshold.of(part.key(), clarity.medium().strength());
            if (threshold != null) {
                double activity = MICROGRAMS / threshold.middle();
                all += activity * clarity.oils().gramsPerLitre(i);
                gone += activity * separated[i];
                known += clarity.oils().gramsPerLitre(i);
            }
        }
        return all > 0.0 ? new Odour(gone / all, known / clarity.oils().gramsPerLitre()) : null;
    }
}
