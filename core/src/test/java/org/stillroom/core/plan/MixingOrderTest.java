package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Kind;

class MixingOrderTest {
    private static Plan plan() {
        return new Kitchen()
                .volume("1 L")
                .strength("28 %")
                .sugar("180 g/L")
                .contains("bay oil", Kind.ESSENTIAL_OIL, Map.of())
                .free("water", "sugar", "spirit 96 %")
                .dose("bay oil", "0.1 g/L")
                .plan();
    }

    @Test
    void everyLineIsUsedOnce() {
        List<Integer> used = MixingOrder.of(plan()).stream()
                .flatMap(step -> step.lines().stream())
                .toList();
        assertThat(used).containsExactlyInAnyOrder(0, 1, 2, 3);
    }

    @Test
    void oilsGoIntoTheSpiritAndCrystalsIntoTheWater() {
        List<MixingStep> steps = MixingOrder.of(plan());
        assertThat(steps.get(1).lines()).containsExactly(2);
        assertThat(steps.get(2).lines()).containsExactly(3);
        assertThat(steps.get(3).lines()).containsExactly(1, 0);
        assertThat(steps.get(3).what()).contains("Let it cool");
        assertThat(steps.get(4).what()).contains("before you measure");
    }

    @Test
    void theMarkComesLast() {
        List<MixingStep> steps = MixingOrder.of(new Kitchen()
                .volume("1 L")
                .makeUp("water")
                .amount("vodka 40 %", "700 ml")
                .amount("sugar", "200 g")
                .plan());
        assertThat(steps.get(steps.size() - 1).lines()).containsExactly(0);
    }
}
