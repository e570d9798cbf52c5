package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.extraction.SteepingFit.Sample;
import org.stillroom.core.extraction.SteepingFit.Shape;
import org.stillroom.core.liquid.Bounded;

class SteepingTest {
    @Test
    void fiveOfAHundredAreLeftAfterThreeTimesTheTimeConstant() {
        Steeping herbs = Steeping.of(PlantSort.of("dried_leaf"), 20);
        assertThat(herbs.daysTo(0.95).value()).isCloseTo(21, within(0.1)); // three weeks, as the rate was derived
        assertThat(herbs.after(herbs.daysTo(0.95).value())).isCloseTo(0.95, within(1e-12));
        assertThat(Steeping.of(PlantSort.of("dried_leaf"), 30).perDay() / herbs.perDay())
                .isBetween(1.3, 1.6);
    }

    @Test
    @Tag("property")
    void samplesGiveBackTheRateThatTheyWereMadeWith() {
        long seed = 20261126L;
        Random random = new Random(seed);
        int inside = 0;
        for (int run = 0; run < 200; run++) {
            double rate = 0.05 + 0.5 * random.nextDouble();
            List<Sample> samples = new ArrayList<>();
            for (double day : new double[] {1, 2, 4, 7, 10, 14, 21}) {
                samples.add(new Sample(day, 80 * -Math.expm1(-rate * day) + random.nextGaussian() * 1.0));
            }
            Steeping fitted = known(samples);
            inside += fitted.slowest() <= rate && rate <= fitted.quickest() ? 1 : 0;
        }
        assertThat(inside / 200.0).as("seed " + seed).isBetween(0.85, 0.97); // 90 % are meant
    }

    /** The end that samples go to lies within its bounds nine times of ten, also where they stop long before it. */
    @Test
    @Tag("property")
    void theEndLiesWithinItsBounds() {
        long seed = 20261127L;
        Random random = new Random(seed);
        int inside = 0;
        for (int run = 0; run < 300; run++) {
            double rate = 0.05 + 0.4 * random.nextDouble();
            List<Sample> samples = new ArrayList<>();
            for (double day : new double[] {1, 2, 3, 5, 7}) {
                samples.add(new Sample(day, 80 * -Math.expm1(-rate * day) + random.nextGaussian() * 1.5));
            }
            Bounded end = SteepingFit.of(samples).end();
            inside += end == null || (end.low() <= 80 && 80 <= end.high()) ? 1 : 0;
        }
        assertThat(inside / 300.0).as("seed " + seed).isBetween(0.85, 0.98);
    }

    private static Steeping known(List<Sample> samples) {
        return Objects.requireNonNull(SteepingFit.of(samples).steeping());
    }

    private static List<Sample> samples(double... dayAndFound) {
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i < dayAndFound.length; i += 2) {
            samples.add(new Sample(dayAndFound[i], dayAndFound[i + 1]));
        }
        return samples;
    }

    @Test
    void exactSamplesAreFittedExactly() {
        List<Sample> samples = new ArrayList<>();
        for (double day : new double[] {1, 3, 7, 14}) {
            samples.add(new Sample(day, 50 * -Math.expm1(-0.2 * day)));
        }
        SteepingFit fit = SteepingFit.of(samples);
        Bounded end = Objects.requireNonNull(fit.end());
        assertThat(known(samples).perDay()).isCloseTo(0.2, within(1e-6));
        assertThat(end.value()).isCloseTo(50, within(1e-4));
        assertThat(fit.shape()).isEqualTo(Shape.LEVELS_OFF);
        assertThat(end.low()).isBetween(45.0, 49.5); // no reading repeats to better than 1 %
        assertThat(end.high()).isBetween(50.5, 56.0);
    }

    @Test
    void whatSamplesLeaveOpenIsOpen() {
        SteepingFit line = SteepingFit.of(samples(1, 10, 2, 20, 3, 30));
        assertThat(line.shape()).isEqualTo(Shape.STRAIGHT);
        assertThat(line.steeping()).isNull();
        assertThat(line.end()).isNull();
        assertThat(SteepingFit.of(samples(1, 10, 3, 40, 7, 200)).shape()).isEqualTo(Shape.STRAIGHT);
        SteepingFit stands = SteepingFit.of(samples(1, 10, 2, 10, 3, 10));
        assertThat(stands.shape()).isEqualTo(Shape.STANDS);
        assertThat(stands.steeping()).isNull();
        assertThat(Objects.requireNonNull(stands.end()).value()).isCloseTo(10, within(1e-9));
        assertThat(Objects.requireNonNull(stands.end()).low()).isBetween(9.0, 9.9);
        SteepingFit bent = SteepingFit.of(samples(1, 10, 2, 19, 3, 26));
        assertThat(bent.shape()).isEqualTo(Shape.END_IN_DOUBT);
        Bounded days = Objects.requireNonNull(bent.steeping()).daysTo(0.95);
        assertThat(days.high()).isInfinite();
        assertThat(days.low()).isPositive();
    }

    @Test
    void noPartIsBelowNothingOrAboveAll() {
        long seed = 4L;
        Random random = new Random(seed);
        for (int run = 0; run < 300; run++) {
            List<Sample> samples = new ArrayList<>();
            for (double day : new double[] {1, 3, 7}) {
                samples.add(new Sample(day, 1 + 99 * random.nextDouble()));
            }
            try {
                SteepingFit fit = SteepingFit.of(samples);
                Steeping steeping = fit.steeping();
                if (steeping != null) {
                    assertThat(steeping.partAfter(7).low()).as("seed " + seed).isNotNegative();
                    assertThat(steeping.partAfter(7).high()).isLessThanOrEqualTo(1.0);
                    assertThat(steeping.daysTo(0.6).low()).isNotNegative();
                }
            } catch (IllegalArgumentException falls) {
                assertThat(falls).hasMessageContaining("an extraction only rises");
            }
        }
    }

    @Test
    void samplesThatFallAreRefusedOrSaid() {
        assertThatThrownBy(() -> SteepingFit.of(samples(1, 50, 3, 40, 7, 20)))
                .hasMessage("the samples fall, from 50 on day 1 to 20 on day 7, and an extraction only rises");
        assertThat(SteepingFit.of(samples(1, 10, 3, 70, 7, 60)).fallen()).isCloseTo(1.0 / 7.0, within(1e-12));
        assertThat(SteepingFit.of(samples(1, 10, 3, 70, 7, 69)).fallen()).isZero();
    }

    @Test
    void twoSamplesTellNoRate() {
        assertThatThrownBy(() -> SteepingFit.of(samples(1, 1, 2, 2))).hasMessageContaining("three samples");
        assertThatThrownBy(() -> SteepingFit.of(samples(1, 1, 2, 2, 2, 3)))
                .hasMessageContaining("three different days");
        assertThatThrownBy(() -> new Sample(0, 1)).hasMessageContaining("0.0 days");
    }
}
