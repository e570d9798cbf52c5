package org.stillroom.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.SeededDraws;

class OffsetTest {
    @Test
    void oneBatchTellsNothing() {
        assertThat(Offset.of(List.of(-0.4))).isEmpty();
    }

    /** By hand: mean −0.4; s² = (0.01 + 0 + 0.01) / 2 = 0.01; 2.920 · √(0.01 / 3) = 0.1686. */
    @Test
    void threeBatchesTellAMeanWithItsDoubt() {
        Offset offset = Offset.of(List.of(-0.5, -0.4, -0.3)).orElseThrow();
        assertThat(offset.mean()).isCloseTo(-0.4, within(1e-12));
        assertThat(offset.halfWidth()).isCloseTo(0.1686, within(5e-5));
        assertThat(offset.isClear()).isTrue();
    }

    /** Of 4,000 kitchens without an offset, five batches each, one in ten is to show one: 8.5 to 11.5 % (three standard deviations). */
    @Test
    @Tag("property")
    void theDoubtHoldsInNineOfTen() {
        SeededDraws draws = new SeededDraws(7);
        int clear = 0;
        for (int kitchen = 0; kitchen < 4000; kitchen++) {
            List<Double> differences = new ArrayList<>();
            for (int batch = 0; batch < 5; batch++) {
                differences.add(draws.normal());
            }
            clear += Offset.of(differences).orElseThrow().isClear() ? 1 : 0;
        }
        assertThat(clear / 4000.0).isBetween(0.085, 0.115);
    }
}
