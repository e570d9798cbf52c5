package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;

class SealedJarTest {
    private static final Contents SPIRIT = MadeUp.spirit(AlcoholByVolume.at20(60.0));

    private static double pressure(Contents liquid, double celsius) {
        return SealedJar.pressure(liquid, celsius).value();
    }

    @Test
    void howMuchOfTheJarIsEmptyIsItsDoubt() {
        assertThat(SealedJar.pressure(SPIRIT, 60.0).doubt()).isBetween(0.05, 0.3);
        assertThat(SealedJar.pressure(SPIRIT, 20.0).doubt()).isCloseTo(0.0, within(1e-9));
    }

    @Test
    @Tag("property")
    void nothingPressesAtTheWarmthAtWhichItWasClosedAndMoreTheWarmer() {
        assertThat(pressure(SPIRIT, 20.0)).isCloseTo(0.0, within(1e-9));
        assertThat(pressure(SPIRIT, 60.0)).isGreaterThan(pressure(SPIRIT, 50.0));
        assertThat(pressure(SPIRIT, 50.0)).isGreaterThan(pressure(MadeUp.spirit(AlcoholByVolume.at20(20.0)), 50.0));
    }

    /** Water at 60 °C presses with 19.9 kPa, at 20 °C with 2.3 kPa (steam tables, from memory); air of a fifth grows by warmth and room. */
    @Test
    void overWaterItIsWhatSteamTablesAndTheGasLawSay() {
        double room = 0.2 - 1.1e-3 * 40.0 * 0.8;
        double air = (101.325 - 2.34) * 333.15 / 293.15 * 0.2 / room;
        assertThat(100.0 * pressure(MadeUp.spirit(AlcoholByVolume.at20(0.0)), 60.0))
                .isCloseTo(air + 19.9 - 101.325, within(0.5));
    }

    @Test
    void nearBoilingNoJarIsSealed() {
        assertThatThrownBy(() -> SealedJar.pressure(SPIRIT, 75.0)).hasMessageContaining("70.0 °C");
    }
}
