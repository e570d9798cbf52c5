package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Bounded;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.studio.usecase.Macerate.Asked;
import org.stillroom.studio.usecase.Macerate.Way;

/** What stronger and weaker spirit and warmth would change of a macerate, as far as anything is known of it. */
final class MacerateOthers {
    private static final double[] STRENGTHS = {40.0, 60.0, 80.0, 96.0};

    /** What lies so near is the same spirit, % vol. Own judgement. */
    private static final double SAME = 5.0;

    private static final double[] WARMER = {10.0, 20.0};

    /** Warmer than this, °C, it is a bath, which is asked about by itself. Own judgement. */
    private static final double WARMEST = 45.0;

    private MacerateOthers() {}

    /** Returns what comes with spirits of other strengths; what cannot be made is left out. */
    static List<Macerate.OtherSpirit> spirits(Asked asked) {
        double own = Essentials.of(MadeUp.spirit(asked.strength()).toGrams()).strength();
        List<Macerate.OtherSpirit> others = new ArrayList<>();
        for (double strength : STRENGTHS) {
            Macerate.@Nullable OtherSpirit other = Math.abs(strength - own) > SAME ? spirit(asked, strength) : null;
            if (other != null) {
                others.add(other);
            }
        }
        return others;
    }

    private static Macerate.@Nullable OtherSpirit spirit(Asked asked, double strength) {
        try {
            Asked other = asked.with(AlcoholByVolume.at20(strength));
            Essentials comes = Essentials.of(MacerateCourse.of(other, MacerateCourse.Known.AS_KNOWN)
                    .comes()
                    .toGrams());
            return new Macerate.OtherSpirit(strength, comes.millilitres(), comes.strength());
        } catch (Impossible notWithThis) {
            return null;
        }
    }

    /** Returns the days in warmer places; nothing for a bath, a siphon and what the maker's own samples tell. */
    static List<Macerate.Warmer> warmer(Asked asked) {
        List<Macerate.Warmer> others = new ArrayList<>();
        for (double more : WARMER) {
            double celsius = asked.celsius() + more;
            if (asked.way() == Way.JAR && asked.samples() == null && celsius <= WARMEST) {
                Asked warm = asked.at(celsius);
                @Nullable Bounded taste = MacerateTime.days(warm, Macerate.TASTE_FROM);
                @Nullable Bounded done = MacerateTime.days(warm, Macerate.LITTLE_LEFT);
                if (taste != null && done != null) {
                    others.add(new Macerate.Warmer(celsius, taste.value(), done.value()));
                }
            }
        }
        return others;
    }

    static Finding told() {
        return new Finding(
                "other-spirit",
                Severity.NOTE,
                "strength",
                "",
                "not known",
                "Stronger spirit draws more of oils and resins, weaker more of bitter, acid, sugar and colour; how much of each, and how much faster, is in no table here.",
                "",
                "Set up a small jar with another spirit beside it, and taste both. Keep warm spirit from every flame.",
                null,
                Source.EXTRACTION_PRACTICE);
    }
}
