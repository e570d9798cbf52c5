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
        assertThat(BottlePlan.of(985.0, List.of(new Size(350, 2), new Size(100, 1000))))
                .as("five bottles, and not six full ones of 100 beside one of 350 and a short one")
                .isEqualTo(new BottlePlan(
                        List.of(new Event.Fill(2, 350), new Event.Fill(2, 100)), new BottlePlan.Last(100, 85), 0.0));
        assertThat(BottlePlan.of(1004.0, List.of(new Size(500, 2), new Size(67, 1000)))
                        .full())
                .as("4 mL stay in the vessel")
                .containsExactly(new Event.Fill(2, 500));
    }

    /** 1880 mL: four of 350 and five of 100, nine in all; filling most in full ones would take twelve. */
    @Test
    void whereOneMustBeShortFewestBottlesCount() {
        assertThat(BottlePlan.of(1880.0, List.of(new Size(350, 4), new Size(100, 20))))
                .isEqualTo(new BottlePlan(
                        List.of(new Event.Fill(4, 350), new Event.Fill(4, 100)), new BottlePlan.Last(100, 80), 0.0));
        assertThat(BottlePlan.of(1710.0, List.of(new Size(350, 4), new Size(100, 20)))
                        .last())
                .as("a bottle of 100 with 10 mL in it is worse than one of 350 with 260")
                .isEqualTo(new BottlePlan.Last(350, 260));
        assertThat(BottlePlan.of(450.0, List.of(new Size(500, 1), new Size(470, 1)))
                        .last())
                .as("of as many bottles those with least air")
                .isEqualTo(new BottlePlan.Last(470, 450));
    }

    /** Against all combinations, tried one by one: full ones first, else fewest and then least air, else as much as can be. */
    @ParameterizedTest
    @Tag("property")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void noOtherCombinationIsBetter(long seed) {
        SeededDraws draws = new SeededDraws(seed);
        double volume = 5000.0 * draws.unit();
        List<Size> sizes = List.of(
                new Size(50 + (int) (700 * draws.unit()), (int) (8 * draws.unit())),
                new Size(50 + (int) (700 * draws.unit()), (int) (8 * draws.unit())),
                new Size(50 + (int) (700 * draws.unit()), (int) (8 * draws.unit())));
        double most = 0.0;
        int fewestFull = Integer.MAX_VALUE;
        int fewestShort = Integer.MAX_VALUE;
        double leastAir = Double.POSITIVE_INFINITY;
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
                    int bottles = a + b + c;
                    boolean nearlyAll = holds > volume - 5.0 && holds <= volume + 0.02 * largest;
                    fewestFull = nearlyAll ? Math.min(fewestFull, bottles) : fewestFull;
                    most = holds <= volume ? Math.max(most, holds) : most;
                    if (holds >= volume
                            && (bottles < fewestShort || (bottles == fewestShort && holds - volume < leastAir))) {
                        fewestShort = bottles;
                        leastAir = holds - volume;
                    }
                }
            }
        }
        BottlePlan plan = BottlePlan.of(volume, sizes);
        double full = plan.full().stream()
                .mapToDouble(fill -> fill.count() * fill.millilitres())
                .sum();
        BottlePlan.Last last = plan.last();
        int bottles = plan.full().stream().mapToInt(Event.Fill::count).sum() + (last == null ? 0 : 1);
        if (fewestFull < Integer.MAX_VALUE) {
            assertThat(bottles).as("seed %d", seed).isEqualTo(fewestFull);
            assertThat(plan.unfilled()).as("seed %d", seed).isLessThan(5.0);
        } else if (fewestShort < Integer.MAX_VALUE) {
            assertThat(bottles).as("seed %d", seed).isEqualTo(fewestShort);
            assertThat(last).as("seed %d", seed).isNotNull().satisfies(one -> {
                assertThat(full + one.millilitres()).isCloseTo(volume, within(1e-9));
                assertThat(one.millilitres()).isPositive();
            });
            assertThat(last == null ? 0.0 : last.size() - last.millilitres())
                    .as("seed %d", seed)
                    .isCloseTo(leastAir, within(1e-9));
        } else {
            assertThat(full).as("seed %d", seed).isEqualTo(most);
            assertThat(plan.unfilled()).as("seed %d", seed).isCloseTo(volume - most, within(1e-9));
        }
    }
}
