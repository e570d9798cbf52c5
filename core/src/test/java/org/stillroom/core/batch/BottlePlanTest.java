package org.stillroom.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.batch.BottlePlan.Size;
import org.stillroom.core.quantity.SeededDraws;

class BottlePlanTest {
    @Test
    void whatIsLeftGoesIntoALastOneThatIsShort() {
        BottlePlan plan = BottlePlan.of(1900.0, List.of(new Size(500, 6)));
        assertThat(plan.full()).containsExactly(new Event.Fill(3, 500));
        assertThat(plan.last()).isEqualTo(new BottlePlan.Last(500, 400));
        assertThat(plan.unfilled()).isZero();
    }

    @Test
    void sizesAreCombinedSoThatMostIsInFullBottles() {
        BottlePlan plan = BottlePlan.of(1900.0, List.of(new Size(700, 2), new Size(500, 6), new Size(100, 1)));
        assertThat(plan.full()).containsExactly(new Event.Fill(2, 700), new Event.Fill(1, 500));
        assertThat(plan.last()).isNull();
    }

    @Test
    void whatNoBottleTakesIsSaid() {
        BottlePlan plan = BottlePlan.of(1900.0, List.of(new Size(500, 2)));
        assertThat(plan.unfilled()).isCloseTo(900.0, within(1e-9));
        assertThat(plan.last()).isNull();
    }

    @Test
    void dregsAreNoBottle() {
        assertThat(BottlePlan.of(1003.0, List.of(new Size(500, 9))).last()).isNull();
    }

    @Test
    void aLittleTooLittleMakesOneShortAndNotManySmallOnes() {
        BottlePlan plan = BottlePlan.of(999.9, List.of(new Size(350, 2), new Size(100, 1000)));
        assertThat(plan.full()).containsExactly(new Event.Fill(2, 350), new Event.Fill(2, 100));
        assertThat(plan.last()).isNotNull().satisfies(last -> {
            assertThat(last.size()).isEqualTo(100.0);
            assertThat(last.millilitres()).isCloseTo(99.9, within(1e-9));
        });
        assertThat(BottlePlan.of(997.0, List.of(new Size(350, 2), new Size(100, 1000)))
                        .last())
                .as("3 mL are more than a fiftieth of 100 and less than one of 350")
                .isEqualTo(new BottlePlan.Last(350, 347));
        assertThat(BottlePlan.of(985.0, List.of(new Size(350, 2), new Size(100, 1000)))
                        .full())
                .as("950 mL in full ones")
                .containsExactly(new Event.Fill(1, 350), new Event.Fill(6, 100));
        assertThat(BottlePlan.of(1004.0, List.of(new Size(500, 2), new Size(67, 1000)))
                        .full())
                .as("4 mL stay in the vessel")
                .containsExactly(new Event.Fill(2, 500));
    }

    /** Against all combinations, tried one by one. */
    @ParameterizedTest
    @Tag("property")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void noCombinationHoldsMoreInFullBottlesOrNeedsFewer(long seed) {
        SeededDraws draws = new SeededDraws(seed);
        double volume = 5000.0 * draws.unit();
        List<Size> sizes = List.of(
                new Size(50 + (int) (700 * draws.unit()), (int) (8 * draws.unit())),
                new Size(50 + (int) (700 * draws.unit()), (int) (8 * draws.unit())),
                new Size(50 + (int) (700 * draws.unit()), (int) (8 * draws.unit())));
        double most = 0.0;
        int fewest = Integer.MAX_VALUE;
        for (int a = 0; a <= sizes.get(0).count(); a++) {
            for (int b = 0; b <= sizes.get(1).count(); b++) {
                for (int c = 0; c <= sizes.get(2).count(); c++) {
                    int[] counts = {a, b, c};
                    double holds = 0.0;
                    double largest = 0.0;
                    for (int i = 0; i < counts.length; i++) {
                        holds += (double) counts[i] * sizes.get(i).millilitres();
                        largest = counts[i] > 0 ? Math.max(largest, sizes.get(i).millilitres()) : largest;
                    }
                    boolean nearlyAll = holds > volume - 5.0 && holds <= volume + 0.02 * largest;
                    fewest = nearlyAll ? Math.min(fewest, a + b + c) : fewest;
                    most = holds <= volume ? Math.max(most, holds) : most;
                }
            }
        }
        BottlePlan plan = BottlePlan.of(volume, sizes);
        double full = plan.full().stream()
                .mapToDouble(fill -> fill.count() * fill.millilitres())
                .sum();
        BottlePlan.Last last = plan.last();
        if (fewest == Integer.MAX_VALUE) {
            assertThat(full).as("seed %d", seed).isEqualTo(most);
        } else {
            int bottles = plan.full().stream().mapToInt(Event.Fill::count).sum() + (last == null ? 0 : 1);
            assertThat(bottles).as("seed %d", seed).isEqualTo(fewest);
            assertThat(plan.unfilled()).as("seed %d", seed).isLessThan(5.0);
        }
    }
}
