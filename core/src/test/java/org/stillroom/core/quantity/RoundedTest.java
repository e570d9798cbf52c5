package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RoundedTest {
    @Test
    void whatBinaryFractionsLeaveIsGoneAndWhatIsMeantStays() {
        assertThat(Rounded.toNinth(299.99999999999994)).isEqualTo(300.0);
        assertThat(Rounded.toNinth(0.1 + 0.2)).isEqualTo(0.3);
        assertThat(Rounded.toNinth(299.99999999)).isLessThan(300.0);
        assertThat(Rounded.toNinth(Double.POSITIVE_INFINITY)).isInfinite();
    }
}
