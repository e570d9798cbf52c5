package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("property")
class RootTest {
    @Test
    void bothRulesFindTheRootWhereverItLies() {
        for (double root = 0; root <= 1; root += 0.01) {
            double at = root;
            assertThat(Root.of(x -> x * x * x - at * at * at, x -> 3 * x * x)).isCloseTo(at, within(1e-5));
            assertThat(Root.of(x -> Math.expm1(x - at), x -> Math.exp(x - at))).isCloseTo(at, within(1e-15));
            assertThat(Root.of(x -> Math.expm1(5 * (x - at)))).isCloseTo(at, within(1e-15));
        }
    }

    @Test
    void aMisleadingSlopeOnlyMakesItSlower() {
        assertThat(Root.of(x -> x - 0.3, x -> 1e-9)).isCloseTo(0.3, within(1e-15));
        assertThat(Root.of(x -> x < 0.7 ? -1 : 1)).isCloseTo(0.7, within(1e-15));
    }

    @Test
    void aFunctionThatStartsAtItsRootHasItThere() {
        assertThat(Root.of(x -> x)).isZero();
        assertThat(Root.of(x -> x - 1)).isEqualTo(1);
    }
}
