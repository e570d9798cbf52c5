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

    /** Against all combinations, tried one by one. */
    @ParameterizedTest
    @Tag("property")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void noCombinationHoldsMoreInFullBottles(long seed) {
        SeededDraws draws = new SeededDraws(seed);
        double volume = 5000.0 * draws.unit();
        List<Size> sizes = List.of(
                new Size(50 + (int) (700 * draws.unit()), (int) (8 * draws.unit())),
                new Size(50 + (int) (700 * draws.unit()), (int) (8 * draws.unit())),
                new Size(50 + (int) (700 * draws.unit()), (int) (8 * draws.unit())));
        double most = 0.0;
        for (int a = 0; a <= sizes.get(0).count(); a++) {
            for (int b = 0; b <= sizes.get(1).count(); b++) {
                for (int c = 0; c <= sizes.get(2).count(); c++) {
                    double holds = (double) a * sizes.get(0).millilitres()
                            + (double) b * sizes.get(1).millilitres()
                            + (double) c * sizes.get(2).millilitres();
                    most = holds <= volume ? Math.max(most, holds) : most;
                }
            }
        }
        double full = BottlePlan.of(volume, sizes).full().stream()
                .mapToDouble(fill -> fill.count() * fill.millilitres())
                .sum();
        assertThat(full).as("seed %d", seed).isEqualTo(most);
    }
}
