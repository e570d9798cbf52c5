package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.alcohol.HeatOfMixing;
import org.stillroom.core.alcohol.HeatOfMixing.EthanolAndWater;
import org.stillroom.core.quantity.Temperature;

class WarmingTest {
    private static final EthanolWater.Isotherm SPIRIT = EthanolWater.at(Temperature.TWENTY_CELSIUS);

    private static Contents spirit(double percent, double grams) {
        double part = SPIRIT.fractionOfPercentByVolume(percent);
        return Contents.of(Substance.ETHANOL, part * grams).with(Substance.WATER, (1 - part) * grams);
    }

    private static Contents waterTo(double percent, Contents spirit) {
        double ethanol = spirit.grams(Substance.ETHANOL);
        double whole = ethanol / SPIRIT.fractionOfPercentByVolume(percent);
        return Contents.of(Substance.WATER, whole - spirit.total());
    }

    /** The same balance worked apart from this code at 20 °C: 96 to 40 % vol warms by 8.7 °C, 70 to 40 by 6.4, 60 to 40 by 4.9. */
    @Test
    void reductionWarmsByAFewDegrees() {
        assertThat(rise(96, 40)).isCloseTo(8.7, within(0.05));
        assertThat(rise(70, 40)).isCloseTo(6.4, within(0.05));
        assertThat(rise(60, 40)).isCloseTo(4.9, within(0.05));
    }

    private static double rise(double from, double to) {
        Contents spirit = spirit(from, 1000);
        return Warming.of(List.of(spirit, waterTo(to, spirit)), Temperature.TWENTY_CELSIUS)
                .value();
    }

    /** From memory: the calorimetric minimum at 25 °C lies near −780 J/mol; the formula may be 5 % off there. */
    @Test
    @Tag("published")
    void theGreatestHeatIsThatOfTheCalorimeter() {
        double least = 0;
        for (double x = 0.01; x < 1; x += 0.01) {
            EthanolAndWater mole = new EthanolAndWater(46.06844 * x, 18.01528 * (1 - x));
            least = Math.min(least, HeatOfMixing.excessJoules(mole, new Temperature(25)));
        }
        assertThat(least).isCloseTo(-780, within(0.05 * 780));
    }

    /** Source: Melinder, ethyl alcohol and water at 20 °C: 40 % mass 3996 J/(kg·K), a row of the table used. */
    @Test
    void heatCapacityFollowsItsTableAndSugarLowersIt() {
        Contents forty = Contents.of(Substance.ETHANOL, 400).with(Substance.WATER, 600);
        assertThat(HeatCapacity.joulesPerKelvin(forty)).isCloseTo(3996.46, within(0.01));
        assertThat(HeatCapacity.joulesPerKelvin(forty.with(Substance.SUCROSE, 100)))
                .isCloseTo(3996.46 + 124, within(0.01));
        assertThat(HeatCapacity.joulesPerKelvin(Contents.NONE)).isZero();
    }

    /** Source: Perry, table 2-153: water 75.4 J/(mol·K) near 20 °C; CRC Handbook, sucrose 425 J/(mol·K), from memory. */
    @Test
    @Tag("published")
    void pureSubstancesHaveTheHeatCapacityOfTheHandbook() {
        assertThat(18.015 * HeatCapacity.joulesPerKelvin(Contents.of(Substance.WATER, 1)))
                .isCloseTo(75.4, within(0.2));
        assertThat(342.3 * HeatCapacity.joulesPerKelvin(Contents.of(Substance.SUCROSE, 1)))
                .isCloseTo(425, within(4.0));
    }

    @Test
    void nothingWarmsNothing() {
        assertThat(Warming.of(List.of(), Temperature.TWENTY_CELSIUS)).isEqualTo(new Estimate(0, 0));
        Contents spirit = spirit(50, 100);
        Estimate same = Warming.of(List.of(spirit, spirit), Temperature.TWENTY_CELSIUS);
        assertThat(same.value()).isCloseTo(0, within(1e-6));
        assertThat(same.doubt()).isCloseTo(0, within(1e-6));
    }
}
