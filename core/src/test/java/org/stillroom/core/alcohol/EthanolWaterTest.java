package org.stillroom.core.alcohol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.alcohol.EthanolWater.Isotherm;
import org.stillroom.core.quantity.Temperature;

class EthanolWaterTest {
    @Test
    @Tag("property")
    void everyStrengthIsFoundAgainFromItsDensity() {
        for (double celsius = -20; celsius <= 40; celsius += 4) {
            Isotherm isotherm = EthanolWater.at(new Temperature(celsius));
            for (double p = 0; p <= 1; p += 0.01) {
                if (celsius > 4 || p > 0.1) {
                    assertThat(isotherm.fractionOfDensity(isotherm.density(p))).isCloseTo(p, within(1e-9));
                }
                assertThat(isotherm.fractionOfPercentByVolume(isotherm.percentByVolume(p)))
                        .isCloseTo(p, within(1e-12));
            }
        }
    }

    @Test
    @Tag("property")
    void theSlopeIsThatOfTheDensity() {
        for (double celsius : new double[] {-20, 0, 20, 33}) {
            Isotherm isotherm = EthanolWater.at(new Temperature(celsius));
            for (double p = 0.01; p < 1; p += 0.07) {
                double slope = (isotherm.density(p + 1e-5) - isotherm.density(p - 1e-5)) / 2e-5;
                assertThat(isotherm.slope(p)).isCloseTo(slope, within(1e-3));
            }
        }
    }

    /** Worked from the formula apart from this code, in another language. */
    @Test
    @Tag("frozen")
    void otherTemperaturesThanTwentyHoldToo() {
        assertThat(EthanolWater.at(new Temperature(0)).density(0.332996)).isCloseTo(960.629, within(0.002));
        assertThat(EthanolWater.at(new Temperature(40)).density(0.856646)).isCloseTo(811.411, within(0.002));
        assertThat(EthanolWater.at(new Temperature(10)).water()).isCloseTo(999.695, within(0.0005));
        assertThat(EthanolWater.at(new Temperature(30)).ethanol()).isCloseTo(780.648, within(0.0005));
    }

    @Test
    void outsideTheFormulaNothingIsSaid() {
        assertThatThrownBy(() -> EthanolWater.at(new Temperature(-20.1))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EthanolWater.at(new Temperature(40.1)))
                .hasMessage("the density of ethanol with water is known from −20 to 40 °C, not at 40.1 °C");
        assertThatThrownBy(() -> EthanolWater.at(Temperature.TWENTY_CELSIUS).fractionOfDensity(999))
                .hasMessageContaining("not 999.0");
        assertThatThrownBy(() -> EthanolWater.at(Temperature.TWENTY_CELSIUS).fractionOfDensity(789))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Source: measured maximum of n at 22 % mass of water, 20 °C (European Physical Journal E, 2009). */
    @Test
    @Tag("published")
    void refractionIsGreatestWhereItWasMeasuredToBe() {
        double at = 0;
        for (double p = 0; p <= 1; p += 0.001) {
            at = EthanolRefraction.index(p) > EthanolRefraction.index(at) ? p : at;
        }
        assertThat(at).isCloseTo(0.78, within(0.03));
    }

    /** Source: CRC Handbook, organic compounds: ethanol n 1.3611 at 20 °C; the solutions table says 1.3614. */
    @Test
    @Tag("published")
    void pureEthanolRefractsAsInAnotherTable() {
        assertThat(EthanolRefraction.index(1)).isCloseTo(1.3611, within(0.0004));
    }

    /** CRC Handbook, Concentrative properties: the curve was fitted to it, so that this shows residuals and proves nothing. */
    @Test
    void theRefractionCurveFollowsTheTableItWasFittedTo() {
        double worst = 0;
        for (var row : org.stillroom.core.published.Published.rows("aqueous_solutions_20c.csv")) {
            if (row.text("substance").equals("ethanol")) {
                double n = EthanolRefraction.index(row.number("percent_mass") / 100);
                worst = Math.max(worst, Math.abs(n - row.number("index")));
            }
        }
        assertThat(worst).isLessThan(0.00011);
        assertThat(EthanolRefraction.index(0.99)).isBetween(1.3614, 1.3630);
        assertThat(EthanolRefraction.index(0)).isEqualTo(1.33299);
    }
}
