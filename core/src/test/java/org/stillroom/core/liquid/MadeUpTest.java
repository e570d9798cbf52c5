package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Proof;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;

class MadeUpTest {
    /** 40 % vol weighs 948.05 kg/m³ at 20 °C. Source: OIML R 22, table of densities by strength. */
    @Test
    @Tag("published")
    void aLitreOfSpiritWeighsWhatTheTableSays() {
        assertThat(MadeUp.spirit(AlcoholByVolume.at20(40)).total()).isCloseTo(948.05, within(0.005));
    }

    @Test
    @Tag("property")
    void aSweetenedLitreHasTheStrengthAndTheSugarAsked() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            double strength = 45 * random.nextDouble();
            double sugar = 400 * random.nextDouble();
            Figures litre =
                    LiquidTest.at20(MadeUp.sweetened(AlcoholByVolume.at20(strength), new MassConcentration(sugar)));
            assertThat(litre.value(Figure.VOLUME_20C)).as("seed %d", seed).isCloseTo(1000, within(1e-9));
            assertThat(litre.value(Figure.STRENGTH)).as("seed %d", seed).isCloseTo(strength, within(1e-9));
            assertThat(litre.value(Figure.SUGAR)).as("seed %d", seed).isCloseTo(sugar, within(1e-9));
        }
    }

    @Test
    void strengthsOnOtherScalesAreTheSameSpirit() {
        Figures eighty = LiquidTest.at20(MadeUp.spirit(new Proof(80)));
        assertThat(eighty.value(Figure.PROOF_US)).isCloseTo(80, within(1e-9));
        assertThat(eighty.value(Figure.VOLUME_20C)).isCloseTo(1000, within(1e-9));
    }

    @Test
    void whatLeavesNoRoomIsRefused() {
        assertThatThrownBy(() -> MadeUp.withWater(Contents.of(Substance.SUCROSE, 1600), Volume.litres(0.5)))
                .hasMessageContaining("no room for water")
                .hasMessageContaining("of 500.0 mL already");
        assertThatThrownBy(
                        () -> MadeUp.sweetened(new AlcoholByVolume(40, VolumeBasis.AT_15C), new MassConcentration(10)))
                .hasMessageContaining("wanted at 20 °C, not at 15 °C");
    }
}
