package org.stillroom.studio.usecase;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.Clarified;
import org.stillroom.core.clarity.Cream;
import org.stillroom.core.clarity.OtherHazes;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Tells what a haze that is not oil may be, whether cream keeps, and what clarifying takes and leaves. */
public final class TellHaze {
    private TellHaze() {}

    /**
     * What is told.
     *
     * @param seen signs that are true of it
     * @param likely hazes that they point to, the most likely first
     * @param cream whether cream keeps in it, or null where that was not asked
     * @param clarified a way to clarify worked out, or null where none was asked
     * @param findings what to know
     */
    public record Found(
            Set<String> seen,
            List<OtherHazes.Haze> likely,
            @Nullable Cream cream,
            @Nullable Clarified clarified,
            List<Finding> findings) {
        public Found {
            seen = new LinkedHashSet<>(seen);
            likely = List.copyOf(likely);
            findings = List.copyOf(findings);
        }

        /** Returns whether nothing was asked, so that the questions are due. */
        public boolean isOpen() {
            return seen.isEmpty() && cream == null && clarified == null;
        }
    }

    /** Returns the answer for what is seen, with a cream and a way to clarify where they were asked. */
    public static Found answer(Set<String> seen, @Nullable Cream cream, @Nullable Clarified clarified) {
        return new Found(seen, OtherHazes.likely(seen), cream, clarified, findings(clarified));
    }

    private static List<Finding> findings(@Nullable Clarified clarified) {
        if (clarified == null || !clarified.isTooStrong()) {
            return List.of();
        }
        return List.of(Finding.of(
                "too-strong-to-clarify",
                Severity.CAUTION,
                clarified.way().name(),
                "hardly works",
                "It hardly works above " + (int) clarified.way().dose().worksBelow() + " % vol.",
                "Clarify the juice or the wine before spirit goes in."));
    }

    /** Works a way to clarify out for a volume. */
    public static Clarified clarified(OtherHazes.Way way, Volume volume, @Nullable AlcoholByVolume strength) {
        return Clarified.of(
                way, volume, strength == null ? OptionalDouble.empty() : OptionalDouble.of(strength.percent()));
    }

    /**
     * Returns whether cream keeps in what a recipe makes.
     *
     * @throws Impossible when there is no fat in it
     */
    public static Cream cream(WorkedPlan worked) {
        Contents liquid = worked.figures().contents();
        double fat = liquid.grams(Substance.FAT);
        if (!(fat > 0.0)) {
            throw new Impossible(
                    "recipe",
                    "none of its lines holds fat, so there is no cream to break.",
                    "Ask by --seen what it is.");
        }
        return Cream.of(new Cream.Figures(
                100.0 * fat / liquid.total(),
                worked.figures().value(Figure.STRENGTH),
                worked.figures().value(Figure.ACIDITY)));
    }
}
