package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadMemoryTest {
    private final SpreadMemory memory = new SpreadMemory(2);

    private static Plan plan(String name, String strength, String volume) {
        return new Kitchen()
                .volume(volume)
                .strength(strength)
                .sugar("200 g/L")
                .free(name, "sugar", "water")
                .plan();
    }

    private static List<Taken> taken(Plan plan, double halfWidth) {
        return plan.lines().stream()
                .map(line -> new Taken(line.grams(), halfWidth))
                .toList();
    }

    private Bands asked(Plan plan, double halfWidth) {
        return memory.of(plan, taken(plan, halfWidth), 7, 500);
    }

    private static Bands drawn(Plan plan, double halfWidth) {
        return Spread.of(plan, taken(plan, halfWidth), 7, 500);
    }

    @Test
    void theSameQuestionIsNotDrawnTwice() {
        Bands first = asked(plan("spirit 96 %", "25 %", "1 L"), 1);
        assertThat(asked(plan("spirit 96 %", "25 %", "1 L"), 1)).isSameAs(first);
    }

    @Test
    void whateverChangesIsDrawnAnew() {
        Plan plan = plan("spirit 96 %", "25 %", "1 L");
        asked(plan, 1);
        assertThat(asked(plan, 2)).isEqualTo(drawn(plan, 2)).isNotEqualTo(drawn(plan, 1));
        for (Plan other : List.of(plan("spirit 96 %", "25.001 %", "1 L"), plan("spirit 96 %", "25 %", "1.0001 L"))) {
            assertThat(asked(other, 1)).isEqualTo(drawn(other, 1)).isNotEqualTo(drawn(plan, 1));
        }
        assertThat(memory.of(plan, taken(plan, 1), 8, 500)).isEqualTo(Spread.of(plan, taken(plan, 1), 8, 500));
        assertThat(memory.of(plan, taken(plan, 1), 7, 600)).isEqualTo(Spread.of(plan, taken(plan, 1), 7, 600));
    }

    @Test
    void theOneThatWasNotAskedForLongestGoesFirst() {
        Plan plan = plan("spirit 96 %", "25 %", "1 L");
        Bands first = asked(plan, 1);
        Bands second = asked(plan, 2);
        asked(plan, 1);
        asked(plan, 3);
        assertThat(asked(plan, 1)).isSameAs(first);
        assertThat(asked(plan, 2)).isNotSameAs(second).isEqualTo(second);
    }
}
