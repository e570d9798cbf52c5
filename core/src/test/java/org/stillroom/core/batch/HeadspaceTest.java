package org.stillroom.core.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;

class HeadspaceTest {
    private static final Contents LIQUEUR =
            MadeUp.sweetened(new AlcoholByVolume(28, VolumeBasis.AT_20C), new MassConcentration(180));

    /**
     * Water: 500 mL at 20 °C take 500 · 0.998203 / density. Densities 0.999700 at 10 °C, 0.995645 at 30 °C, 0.992212 at 40 °C. Source: CRC
     * Handbook of Chemistry and Physics, Standard density of water (from memory); tolerance 0.01 mL.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"10, 0.999700", "30, 0.995645", "40, 0.992212"})
    void waterTakesTheRoomOfItsHandbookDensity(double celsius, double density) {
        Contents water = Contents.of(Substance.WATER, 1.0);
        assertThat(Headspace.taken(water, 500.0, new Temperature(celsius)))
                .isCloseTo(500.0 * 0.998203 / density, within(0.01));
    }

    @Test
    void aBottleThatIsFilledToTheBrimIsFullAtTwentyDegrees() {
        assertThat(Headspace.fullAt(LIQUEUR, 500.0, 500.0).orElseThrow()).isCloseTo(20.0, within(1e-6));
    }

    @Test
    void atTheTemperatureAtWhichItIsFullNothingIsLeft() {
        double celsius = Headspace.fullAt(LIQUEUR, 500.0, 503.0).orElseThrow();
        assertThat(celsius).isBetween(25.0, 40.0);
        assertThat(Headspace.left(LIQUEUR, 500.0, 503.0, new Temperature(celsius)))
                .isCloseTo(0.0, within(1e-6));
        assertThat(Headspace.left(LIQUEUR, 500.0, 503.0, new Temperature(celsius - 1.0)))
                .isPositive();
    }

    @Test
    void withRoomEnoughItIsNotFullAsFarAsTheModelGoes() {
        assertThat(Headspace.fullAt(LIQUEUR, 500.0, 520.0)).isEmpty();
    }

    @Test
    void strongerSpiritExpandsMore() {
        Contents spirit = MadeUp.spirit(new AlcoholByVolume(60, VolumeBasis.AT_20C));
        Temperature warm = new Temperature(35);
        assertThat(Headspace.taken(spirit, 500.0, warm)).isGreaterThan(Headspace.taken(LIQUEUR, 500.0, warm));
    }
}
