package org.stillroom.core.acid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.acid.AcidSolution.Form;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassFraction;

class AcidSolutionTest {
    private static final MassFraction FIVE_PERCENT = new MassFraction(0.05);

    /** Common practice, no source: 5 % by mass from 12.5 g of acid needs 237.5 g of water. */
    @Test
    @Tag("published")
    void fivePercentOfAQuarterKilogram() {
        AcidSolution solution = AcidSolution.ofSolution(FIVE_PERCENT, new Mass(250), Form.ANHYDROUS);
        assertThat(solution.acid().grams()).isEqualTo(12.5);
        assertThat(solution.asWeighed().grams()).isEqualTo(12.5);
        assertThat(solution.water().grams()).isEqualTo(237.5);
    }

    @Test
    void monohydrateBringsWaterOfItsOwn() {
        AcidSolution solution = AcidSolution.ofSolution(FIVE_PERCENT, new Mass(250), Form.CITRIC_MONOHYDRATE);
        assertThat(solution.asWeighed().grams()).isCloseTo(13.672, within(0.0005));
        assertThat(solution.water().grams()).isCloseTo(236.328, within(0.0005));
        assertThat(solution.acid().grams()).isEqualTo(12.5);
    }

    @Test
    void acidOnHandSaysHowMuchWater() {
        assertThat(AcidSolution.ofAcid(FIVE_PERCENT, new Mass(12.5), Form.ANHYDROUS)
                        .water()
                        .grams())
                .isCloseTo(237.5, within(1e-9));
        AcidSolution hydrate = AcidSolution.ofAcid(FIVE_PERCENT, new Mass(13.672), Form.CITRIC_MONOHYDRATE);
        assertThat(hydrate.acid().grams()).isCloseTo(12.5, within(0.001));
        assertThat(hydrate.asWeighed().grams()).isCloseTo(13.672, within(1e-12));
    }

    @Test
    void impossibleSolutionsAreRefused() {
        assertThatThrownBy(() -> AcidSolution.ofAcid(new MassFraction(0), new Mass(5), Form.ANHYDROUS))
                .hasMessage("a solution of 0 % takes no acid; give a strength above 0 % by mass");
        assertThatThrownBy(() -> AcidSolution.ofSolution(new MassFraction(0.95), new Mass(10), Form.CITRIC_MONOHYDRATE))
                .hasMessageContaining("at most 91.4 % acid by mass");
    }

    @Test
    void equivalentsGoByTitratedProtons() {
        // Grams of tartaric and lactic acid that titrate like 1 g of citric: 1.1718 and 1.4066, from molar masses.
        assertThat(1 / Acid.TARTARIC.asCitric()).isCloseTo(1.1718, within(0.0001));
        assertThat(1 / Acid.LACTIC.asCitric()).isCloseTo(1.4066, within(0.0001));
        assertThat(Acid.CITRIC.asCitric()).isEqualTo(1.0);
        assertThat(Acid.PHOSPHORIC.gramsPerEquivalent()).isEqualTo(97.995 / 2);
    }
}
