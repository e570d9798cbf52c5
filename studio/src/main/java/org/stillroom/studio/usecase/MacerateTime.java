package org.stillroom.studio.usecase;

import java.util.Comparator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.SealedJar;
import org.stillroom.core.extraction.Steeping;
import org.stillroom.core.extraction.SteepingFit;
import org.stillroom.core.liquid.Bounded;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.studio.usecase.Macerate.Asked;
import org.stillroom.studio.usecase.Macerate.Way;

/** When to taste a macerate, by the way in which it is drawn. */
final class MacerateTime {
    /** A siphon holds half a litre and takes two charges; common practice, no source. */
    private static final double SIPHON = 500.0;

    private static final int CHARGES = 2;

    private MacerateTime() {}

    /** Returns the day on which so much has come, a part of 1; null under pressure, or where the maker's samples leave it open. */
    static @Nullable Bounded days(Asked asked, double part) {
        if (asked.way() == Way.SIPHON) {
            return null;
        }
        SteepingFit own = asked.samples();
        Steeping steeping = own == null ? slowest(asked) : own.steeping();
        return steeping == null ? null : steeping.daysTo(part);
    }

    /**
     * Returns what a warm bath comes to, or null where there is none.
     *
     * @throws Impossible when it is too warm for a sealed jar
     */
    static Macerate.@Nullable Bath bath(Asked asked, Contents liquid) {
        if (asked.way() != Way.BATH) {
            return null;
        }
        Bounded taste = days(asked, Macerate.TASTE_FROM);
        Bounded done = days(asked, Macerate.LITTLE_LEFT);
        Estimate pressure = Impossible.unless(
                "temperature", "Warm it less, such as 50C.", () -> SealedJar.pressure(liquid, asked.celsius()));
        return new Macerate.Bath(hours(taste), hours(done), pressure);
    }

    /**
     * Refuses a jar or a siphon that would boil; a bath has a bound of its own.
     *
     * @throws Impossible when it is as warm as its spirit boils, or warmer
     */
    static void requireBelowBoiling(Asked asked) {
        Contents spirit = Stream.concat(
                        Stream.of(asked.strength()), asked.again().stream().map(Macerate.Again::strength))
                .map(MadeUp::spirit)
                .min(Comparator.comparingDouble(SealedJar::boilsAt))
                .orElseThrow();
        double boils = SealedJar.boilsAt(spirit);
        if (asked.way() != Way.BATH && asked.celsius() >= boils) {
            throw new Impossible(
                    "temperature",
                    "spirit of "
                            + QuantityWords.fixed(
                                    Essentials.of(spirit.toGrams()).strength(), 1)
                            + " % vol boils at " + QuantityWords.fixed(boils, 1) + " °C: at "
                            + QuantityWords.plain(asked.celsius())
                            + " °C the room fills with vapour that a flame or a spark sets alight, and a closed vessel bursts.",
                    "Leave it at room temperature, or ask for a warm bath without flame of 50C.");
        }
    }

    private static @Nullable Bounded hours(@Nullable Bounded days) {
        return days == null ? null : days.times(24.0);
    }

    /** Returns the fillings of a siphon, or null where none is asked. */
    static Macerate.@Nullable Siphon siphon(Asked asked) {
        if (asked.way() != Way.SIPHON) {
            return null;
        }
        double plants = asked.charges().stream().mapToDouble(Charge::grams).sum();
        int fillings = (int) Math.ceil((asked.solvent() + plants) / SIPHON - 1e-9);
        return new Macerate.Siphon(fillings, CHARGES * fillings);
    }

    private static Steeping slowest(Asked asked) {
        Steeping slowest = Steeping.of(asked.charges().get(0).plant().sort(), asked.celsius());
        for (Charge charge : asked.charges()) {
            Steeping each = Steeping.of(charge.plant().sort(), asked.celsius());
            slowest = each.perDay() < slowest.perDay() ? each : slowest;
        }
        return slowest;
    }
}
