package org.stillroom.studio.usecase;

import java.util.List;
import java.util.Set;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.Correction.Added;
import org.stillroom.core.plan.Correction.Addition;
import org.stillroom.planner.marks.Measured;

/** The extracts that went into a batch, so that more of them can keep its flavour. */
public final class PouredFlavours {
    private static final Set<Kind> FLAVOURS =
            Set.of(Kind.ESSENTIAL_OIL, Kind.ESSENCE, Kind.TINCTURE, Kind.MACERATE, Kind.DISTILLATE, Kind.HYDROSOL);

    /** What makes up this part of a batch or more is its base, not a dose of flavour. */
    private static final double BASE = 0.2;

    private PouredFlavours() {}

    /**
     * Returns each that was dosed, with how much of it is there.
     *
     * @param part of what was poured that is still there
     */
    public static List<Added> of(Measured poured, double part) {
        double dose = BASE * poured.liquid().total();
        return poured.lines().stream()
                .filter(line -> line.grams() < dose)
                .filter(line -> FLAVOURS.contains(line.exact().ingredient().kind()))
                .map(line -> new Added(
                        new Addition(line.name(), line.exact().ingredient().perGram(), Double.POSITIVE_INFINITY),
                        part * line.grams()))
                .toList();
    }
}
