package org.stillroom.core.batch;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * When the alcohol of a liquid came into its batch: the mean, weighted by volume of ethanol at 20 °C, and the latest.
 *
 * <p>Ethanol weighs, since only what ages of the spirit is spoken of: sugar and water that are added make nothing younger. Of a stated
 * age the youngest counts (Regulation (EU) 2019/787, Article 13(6), from memory).
 *
 * @param mean seconds since 1970, weighted by ethanol
 * @param youngest when the last of it came in
 */
public record Births(double mean, Instant youngest) {
    static Births at(Instant moment) {
        return new Births(seconds(moment), moment);
    }

    private static double seconds(Instant moment) {
        return moment.getEpochSecond() + 1e-9 * moment.getNano();
    }

    /** Returns the births of two liquids together, by the grams of ethanol in each; null where neither has any. */
    static @Nullable Births together(
            @Nullable Births one, double ethanolOfOne, @Nullable Births other, double ethanolOfOther) {
        if (one == null || !(ethanolOfOne > 0.0)) {
            return ethanolOfOther > 0.0 ? other : one;
        }
        if (other == null || !(ethanolOfOther > 0.0)) {
            return one;
        }
        double mean = (one.mean * ethanolOfOne + other.mean * ethanolOfOther) / (ethanolOfOne + ethanolOfOther);
        return new Births(mean, one.youngest.isAfter(other.youngest) ? one.youngest : other.youngest);
    }

    /** Returns the mean age, days. */
    public double meanDays(Instant now) {
        return (seconds(now) - mean) / 86_400.0;
    }

    /** Returns the age of the youngest part, days. */
    public double youngestDays(Instant now) {
        return Duration.between(youngest, now).toMillis() / 86_400_000.0;
    }
}
