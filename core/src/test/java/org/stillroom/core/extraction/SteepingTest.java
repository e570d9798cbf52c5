package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.extraction.Steeping.Sample;

class SteepingTest {
    @Test
    void fiveOfAHundredAreLeftAfterThreeTimesTheTimeConstant() {
        Steeping herbs = Steeping.of(PlantSort.of("dried_leaf"), 20);
        assertThat(herbs.daysTo(0.95)).isCloseTo(21, within(0.1)); // three weeks, as the rate was derived
        assertThat(herbs.after(herbs.daysTo(0.95))).isCloseTo(0.95, within(1e-12));
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
            Steeping fitted = Steeping.fitted(samples);
            double off = Math.max(fitted.perDay() / rate, rate / fitted.perDay());
            inside += off <= fitted.perDayDoubt() ? 1 : 0;
        }
        assertThat(inside / 200.0)
                .as("seed " + seed)
                .isBetween(0.75, 0.97); // 90 % by the linear rule, with a small sample's t left out
    }

    @Test
    void exactSamplesAreFittedExactly() {
        List<Sample> samples = new ArrayList<>();
        for (double day : new double[] {1, 3, 7, 14}) {
            samples.add(new Sample(day, 50 * -Math.expm1(-0.2 * day)));
        }
        Steeping fitted = Steeping.fitted(samples);
        assertThat(fitted.perDay()).isCloseTo(0.2, within(1e-6));
        assertThat(fitted.end()).isCloseTo(50, within(1e-4));
        assertThat(fitted.perDayDoubt()).isCloseTo(1.0, within(1e-3));
    }

    @Test
    void twoSamplesTellNoRate() {
        assertThatThrownBy(() -> Steeping.fitted(List.of(new Sample(1, 1), new Sample(2, 2))))
                .hasMessageContaining("three samples");
        assertThatThrownBy(() -> new Sample(0, 1)).hasMessageContaining("0.0 days");
    }
}
