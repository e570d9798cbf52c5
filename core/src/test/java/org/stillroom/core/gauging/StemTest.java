package org.stillroom.core.gauging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.gauging.Stem.Glass;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;

class StemTest {
    private static final Stem FAHRENHEIT = new Stem(VolumeBasis.AT_60F.temperature(), Glass.SODA_LIME);
    private static final Stem FIFTEEN = new Stem(VolumeBasis.AT_15C.temperature(), Glass.SODA_LIME);

    private static Mixture liqueur(double strength, double sugar) {
        return new Mixture(
                MadeUp.sweetened(new AlcoholByVolume(strength, VolumeBasis.AT_20C), new MassConcentration(sugar))
                        .toGrams());
    }

    /** What two scales of one temperature say of a liquid is known from each other: Baumé is 145 − 145 / SG, proof twice % vol. */
    @ParameterizedTest
    @Tag("property")
    @CsvSource({"27, 165, 12", "27, 165, 20", "18, 320, 28", "40, 0, 15.6"})
    void whatAnyStemShowsIsWhatTheUsualOneWouldShow(double strength, double sugar, double celsius) {
        Mixture liquid = liqueur(strength, sugar);
        Temperature at = new Temperature(celsius);
        double gravity = 145.0 / (145.0 - Shown.BAUME.of(liquid, at));
        assertThat(FAHRENHEIT.restated(Shown.GRAVITY, gravity, at))
                .isCloseTo(Shown.GRAVITY.of(liquid, at), within(1e-12));
        if (sugar == 0.0) {
            double half = 0.5 * Shown.PROOF.of(liquid, at);
            assertThat(FAHRENHEIT.restated(Shown.SPIRIT_20C, half, at))
                    .isCloseTo(Shown.SPIRIT_20C.of(liquid, at), within(1e-9));
        }
    }

    /** Water weighs 999.01 kg/m³ at 60 °F, 999.10 at 15 °C, 998.20 at 20 °C (CRC Handbook, from memory). */
    @Test
    @Tag("published")
    void inWaterOfItsOwnTemperatureAStemShowsOneAndTheUsualOneMore() {
        assertThat(FAHRENHEIT.restated(Shown.GRAVITY, 1.0, FAHRENHEIT.markedFor()))
                .isCloseTo(999.01 / 998.20 / (1.0 + 25e-6 * 4.444), within(2e-5));
        assertThat(FIFTEEN.restated(Shown.GRAVITY, 1.0, FIFTEEN.markedFor()))
                .isCloseTo(999.10 / 998.20 / (1.0 + 25e-6 * 5.0), within(2e-5));
    }

    /** Syrup of 50 % mass weighs 1232.0 kg/m³ at 15 °C and 1229.6 at 20 °C (ICUMSA, from memory). */
    @Test
    void aScaleOfSyrupForAnotherTemperatureIsReadByTheSyrupOfThatTemperature() {
        double usual = FIFTEEN.restated(Shown.SACCHAROMETER, 50.0, FIFTEEN.markedFor());
        assertThat(usual).isGreaterThan(50.2).isLessThan(50.7);
        assertThat(FIFTEEN.restated(Shown.SACCHAROMETER, 0.0, FIFTEEN.markedFor()))
                .isGreaterThan(0.1);
    }

    @Test
    void borosilicateSwellsLess() {
        Stem hard = new Stem(Temperature.TWENTY_CELSIUS, Glass.BOROSILICATE);
        assertThat(hard.restated(Shown.GRAVITY, 1.05, Temperature.TWENTY_CELSIUS))
                .isCloseTo(1.05, within(1e-12));
        assertThat(hard.restated(Shown.GRAVITY, 1.05, new Temperature(30.0)))
                .as("the usual glass displaces 15.1e-6 per °C more, and so seems to float in denser liquid")
                .isCloseTo(1.05 * (1.0 + 151e-6), within(1e-7));
        assertThat(Stem.usual(Shown.GRAVITY).restated(Shown.GRAVITY, 1.05, new Temperature(30.0)))
                .isEqualTo(1.05);
        assertThat(hard.carries(Shown.BAUME)).isFalse();
        assertThat(FAHRENHEIT.carries(Shown.PROOF)).isTrue();
    }
}
