package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.liquid.StrengthFromDensity.Measured;
import org.stillroom.core.liquid.StrengthFromDensity.Weighed;
import org.stillroom.core.liquid.StrengthFromDensity.Weighing;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Proof;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;

class StrengthFromDensityTest {
    private static final MassConcentration UNSWEETENED = new MassConcentration(0);

    private static Measured of(double density, double celsius, double sugar) {
        return StrengthFromDensity.of(
                new Density(density), new Temperature(celsius), new MassConcentration(sugar), Workings.NONE);
    }

    @Test
    @Tag("property")
    void thereAndBackIsTheSameStrength() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            Contents liquid = Contents.of(Substance.ETHANOL, 20 + 380 * random.nextDouble())
                    .with(Substance.WATER, 300 + 600 * random.nextDouble())
                    .with(Substance.SUCROSE, random.nextInt(4) == 0 ? 0 : 300 * random.nextDouble());
            Temperature temperature = new Temperature(40 * random.nextDouble());
            Figures figures = Liquid.figures(liquid, temperature);
            Measured back = of(figures.value(Figure.DENSITY), temperature.celsius(), figures.value(Figure.SUGAR));
            assertThat(back.strength().percent())
                    .as("seed %d", seed)
                    .isCloseTo(figures.value(Figure.STRENGTH), within(1e-9));
            assertThat(back.litre().total())
                    .isCloseTo(1000 * liquid.total() / figures.value(Figure.VOLUME_20C), within(1e-7));
        }
    }

    /** Worked with the international table: 948.05 kg/m³ at 20 °C is 40 % vol. Source: OIML R 22, Table. */
    @Test
    @Tag("published")
    void theTableOfFortyPercentIsReadBackwards() {
        Measured measured = of(948.05, 20, 0);
        assertThat(measured.strength().percent()).isCloseTo(40.0, within(0.005));
        assertThat(measured.doubt()).isCloseTo(0.02, within(1e-12));
    }

    @Test
    void sugarHidesAlcoholFromTheDensity() {
        Measured sweet = of(1082.2479179308177, 20, 299.99942284984553);
        assertThat(sweet.strength().percent()).isCloseTo(25.0, within(1e-4));
        assertThat(sweet.doubt()).isBetween(1.0, 2.0);
        assertThat(of(1082.2479179308177, 20, 310).strength().percent())
                .isGreaterThan(sweet.strength().percent() + 2);
    }

    /** Source: 27 CFR 30.23, 30.61 and the Bureau's interpolation example, Table 1; tolerance 0.08 proof, glass from memory. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "193, 72, 190.2",
        "192, 72, 189.1",
        "192, 73, 188.9",
        "193, 75, 189.5",
        "80, 68, 76.4",
        "81, 68, 77.4",
        "80, 69, 76.0"
    })
    void trueProofOfAReadingIsThatOfTheGaugingTable(double reading, double fahrenheit, double printed) {
        Measured measured = StrengthFromDensity.ofHydrometer(
                new Proof(reading), Temperature.fahrenheit(fahrenheit), UNSWEETENED, Workings.NONE);
        assertThat(Liquid.figures(measured.litre(), Temperature.TWENTY_CELSIUS).value(Figure.PROOF_US))
                .isCloseTo(printed, within(0.08));
    }

    @Test
    void aHydrometerAtItsOwnTemperatureIsRight() {
        for (VolumeBasis basis : VolumeBasis.values()) {
            Measured measured = StrengthFromDensity.ofHydrometer(
                    new AlcoholByVolume(43, basis), basis.temperature(), UNSWEETENED, Workings.NONE);
            Figures figures = Liquid.figures(measured.litre(), Temperature.TWENTY_CELSIUS);
            double found = switch (basis) {
                case AT_20C -> figures.value(Figure.STRENGTH);
                case AT_15C -> figures.value(Figure.STRENGTH_15C);
                case AT_60F -> figures.value(Figure.PROOF_US) / 2;
            };
            assertThat(found).isCloseTo(43, within(1e-9));
        }
    }

    @Test
    void aWeightInAirIsPutRightForTheAirItPushesAside() {
        Volume litre = new Volume(1000);
        Measured vacuum = weighed(new Weighing(new Mass(948.045), litre, Weighed.IN_VACUUM));
        // 948.045 g in vacuum show as (948.045 − 1.2) / (1 − 0.0012/8) on the scale.
        Measured air = weighed(new Weighing(new Mass(946.98704805), litre, Weighed.IN_AIR));
        assertThat(air.strength().percent()).isCloseTo(vacuum.strength().percent(), within(1e-6));
        assertThat(vacuum.strength().percent()).isCloseTo(40.0, within(0.001));
        assertThatThrownBy(() -> weighed(new Weighing(new Mass(1), new Volume(0), Weighed.IN_AIR)))
                .hasMessage("a weighed volume lies above 0 mL, not 0.0");
    }

    private static Measured weighed(Weighing weighing) {
        return StrengthFromDensity.ofWeighing(weighing, Temperature.TWENTY_CELSIUS, UNSWEETENED, Workings.NONE);
    }

    @Test
    void impossibleDensitiesAreRefusedWithTheRange() {
        assertThatThrownBy(() -> of(1100, 20, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "with 0.0 g/L of sugar a liquid weighs from 789.24 (no water) to 998.20 kg/m³ (no alcohol) at"
                                + " 20.0 °C, not 1100.00; check the reading, the temperature and the sugar.");
        assertThatThrownBy(() -> of(700, 5, 100)).hasMessageContaining("not 700.00");
        assertThatThrownBy(() -> of(1500, 20, 1900))
                .hasMessage("a litre cannot hold 1900.0 g of sugar; check the sugar.");
        assertThatThrownBy(() -> of(950, 45, 0)).hasMessageContaining("from −20 to 40 °C");
        assertThat(of(998.20123, 20, 0).strength().percent()).isZero();
    }

    @Test
    void theStepsLeadFromReadingToStrength() {
        Workings.Written written = new Workings.Written();
        Measured measured =
                StrengthFromDensity.ofHydrometer(new Proof(80), Temperature.fahrenheit(68), UNSWEETENED, written);
        assertThat(written.steps().stream().map(Workings.Step::what))
                .containsExactly(
                        "density that the reading stands for",
                        "density less the growth of the glass",
                        "density",
                        "ethanol in its ethanol and water",
                        "strength");
        assertThat(written.steps().get(4).value()).isEqualTo(measured.strength().percent());
    }
}
