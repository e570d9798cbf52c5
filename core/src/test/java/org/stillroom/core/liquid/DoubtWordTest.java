package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DoubtWordTest {
    @ParameterizedTest
    @CsvSource({
        "STRENGTH, 0.1, SMALL",
        "STRENGTH, 0.11, FAIR",
        "STRENGTH, 0.31, LARGE",
        "PROOF_US, 0.2, SMALL",
        "PROOF_US, 0.61, LARGE",
        "VOLUME, 3, SMALL",
        "VOLUME, 10, FAIR",
        "VOLUME, 11, LARGE",
        "HYDROMETER_BRIX, 0.3, SMALL",
        "REFRACTIVE_INDEX, 0.001, FAIR",
        "FREEZING_POINT, 2.1, LARGE"
    })
    void theWordFollowsFromTheHalfWidth(Figure figure, double halfWidth, DoubtWord word) {
        assertThat(DoubtWord.of(figure, new Estimate(1000, halfWidth))).isEqualTo(word);
    }

    @ParameterizedTest
    @EnumSource(Figure.class)
    void whatFollowsFromTheGramsHasNone(Figure figure) {
        assertThat(DoubtWord.of(figure, new Estimate(5, 0)).label()).isEqualTo("none");
        assertThat(DoubtWord.of(figure, new Estimate(5, 50))).isEqualTo(DoubtWord.LARGE);
    }

    @Test
    void ofAnAmountItIsThePartThatCounts() {
        assertThat(DoubtWord.ofPart(new Estimate(-10, 0.02)).label()).isEqualTo("small");
        assertThat(DoubtWord.ofPart(new Estimate(0, 0.02)).label()).isEqualTo("large");
    }
}
