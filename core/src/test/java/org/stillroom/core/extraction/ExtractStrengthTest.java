package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.extraction.ExtractStrength.Comparison;

/** How strong an extract is beside another. */
class ExtractStrengthTest {
    /** Own arithmetic: 12 mL of 1:5 hold 2.4 g of plant, as 19.2 mL of 1:8 do. */
    @Test
    void theDoseFollowsTheRatio() {
        ExtractStrength weaker = ExtractStrength.byContent(1.0 / 5, 1.0 / 8);
        assertThat(weaker.times()).isCloseTo(0.625, within(1e-12));
        assertThat(weaker.dose(12)).isCloseTo(19.2, within(1e-12));
        assertThat(weaker.byFactor()).isEqualTo(1.0);
    }

    @Test
    void oneComparisonIsInDoubtByWhatCanBeToldApart() {
        ExtractStrength stronger = ExtractStrength.byComparison(List.of(new Comparison(10, 8)));
        assertThat(stronger.times()).isCloseTo(1.25, within(1e-12));
        assertThat(stronger.byFactor()).isCloseTo(1.3, within(1e-12));
    }

    /** Two logarithms 0.2 apart: half their distance times Student's 6.314 for one degree of freedom. */
    @Test
    void comparisonsThatDisagreeWidenTheDoubt() {
        ExtractStrength agreed = ExtractStrength.byComparison(
                List.of(new Comparison(10, 8), new Comparison(10, 8), new Comparison(10, 8), new Comparison(10, 8)));
        assertThat(agreed.times()).isCloseTo(1.25, within(1e-12));
        assertThat(agreed.byFactor()).isCloseTo(Math.pow(1.3, 0.5), within(1e-12));
        ExtractStrength disagreed =
                ExtractStrength.byComparison(List.of(new Comparison(Math.exp(0.2), 1), new Comparison(1, 1)));
        assertThat(disagreed.times()).isCloseTo(Math.exp(0.1), within(1e-12));
        assertThat(disagreed.byFactor()).isCloseTo(Math.exp(6.314 * 0.1), within(1e-9));
    }
}
