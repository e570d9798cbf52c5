package org.stillroom.core.clarity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShiftFactorsTest {
    private static final double DEVIATION = 0.02;

    @ParameterizedTest
    @ValueSource(doubles = {-5, -3.3, -1.01, -0.5, -0.013, 0, 0.2, 1, 1.77, 4.99, 5})
    void isTheExponential(double deviations) {
        double[] exponents = {0.0, 3.0, 14.0};
        ShiftFactors factors = new ShiftFactors(exponents, DEVIATION);
        factors.at(deviations * DEVIATION);
        for (int i = 0; i < exponents.length; i++) {
            double exact = Math.exp(-exponents[i] * deviations * DEVIATION);
            assertThat(factors.of(i)).isCloseTo(exact, withinPercentage(0.01));
        }
    }

    @Test
    void withoutDoubtNothingShifts() {
        ShiftFactors factors = new ShiftFactors(new double[] {14.0}, 0.0);
        factors.at(0.0);
        assertThat(factors.of(0)).isCloseTo(1.0, within(0.0));
    }

    @Test
    void whatLiesFartherOutCountsAsAtTheEnd() {
        ShiftFactors factors = new ShiftFactors(new double[] {14.0}, DEVIATION);
        factors.at(9.0 * DEVIATION);
        assertThat(factors.of(0)).isCloseTo(Math.exp(-14.0 * 5.0 * DEVIATION), within(1e-12));
    }
}
