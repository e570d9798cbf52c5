package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PercentileTest {
    private static final long SEED = 5;

    @Test
    void liesBetweenTwoNumbersInProportion() {
        double[] oneToTen = {7, 1, 10, 4, 2, 9, 5, 3, 8, 6};
        assertThat(Percentile.of(oneToTen, 0.25))
                .as("Hyndman and Fan 1996, definition 7: 1 + 0.25 · (10 − 1)")
                .isEqualTo(3.25);
    }

    @Test
    void isWhatOrderingAllOfThemFinds() {
        SeededDraws random = new SeededDraws(SEED);
        for (int round = 0; round < 2_000; round++) {
            int count = 1 + (int) (200 * random.unit());
            int values = 1 + (int) (300 * random.unit()); // few values make many of them equal
            double[] numbers = IntStream.range(0, count)
                    .mapToDouble(i -> (int) (values * random.unit()))
                    .toArray();
            double part = round % 10 == 0 ? round % 20 / 10.0 : random.unit();
            double[] ordered = numbers.clone();
            Arrays.sort(ordered);
            double place = part * (count - 1);
            double low = ordered[(int) Math.floor(place)];
            double high = ordered[(int) Math.ceil(place)];
            assertThat(Percentile.of(numbers, part))
                    .as("round %d", round)
                    .isCloseTo(low + (place - Math.floor(place)) * (high - low), within(1e-9));
            Arrays.sort(numbers);
            assertThat(numbers).as("round %d: none is lost", round).containsExactly(ordered);
        }
    }

    @Test
    void oneNumberIsEveryPercentile() {
        assertThat(Percentile.of(new double[] {3.0}, 0.05)).isEqualTo(3.0);
        assertThat(Percentile.of(new double[] {3.0}, 1.0)).isEqualTo(3.0);
    }
}
