package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.acid.AcidSolution.Form;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Volume;

class AcidByVolumeTest {
    @Test
    void aLitreHoldsWhatWasAsked() {
        AcidByVolume made =
                AcidByVolume.of(Acid.CITRIC, new MassConcentration(104.02), new Volume(500), Form.CITRIC_MONOHYDRATE);
        assertThat(made.strength().fraction()).isCloseTo(0.10, within(2e-5));
        assertThat(made.density()).isCloseTo(1040.2, within(0.2));
        assertThat(made.made().acid().grams()).isCloseTo(52.01, within(1e-9));
        assertThat(made.made().asWeighed().grams() + made.made().water().grams())
                .isCloseTo(made.density() / 2, within(1e-9));
    }

    @Test
    void moreAcidThanALitreHoldsIsRefused() {
        assertThatThrownBy(
                        () -> AcidByVolume.of(Acid.MALIC, new MassConcentration(2000), new Volume(500), Form.ANHYDROUS))
                .hasMessageContaining("there is no room for water");
    }
}
