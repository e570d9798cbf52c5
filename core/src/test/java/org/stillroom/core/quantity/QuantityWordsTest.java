package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityWordsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0, 0",
        "0, 2, 0.00",
        "223.6, 1, 223.6",
        "223.65, 1, 223.7",
        "0.145, 2, 0.15",
        "1.005, 2, 1.01",
        "999.995, 2, 1000.00",
        "9.96, 1, 10.0",
        "0.04, 1, 0.0",
        "0.05, 1, 0.1",
        "0.96, 0, 1",
        "0.5, 0, 1",
        "-0.145, 2, −0.15",
        "-0.001, 2, 0.00",
        "-1234567.25, 1, −1234567.3",
        "1e21, 0, 1000000000000000000000",
        "1e-9, 3, 0.000",
        "12, 3, 12.000",
        "1.5e-5, 5, 0.00002"
    })
    void aNumberHasJustItsPlaces(double value, int places, String written) {
        assertThat(QuantityWords.fixed(value, places)).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "28, 28",
        "-4.5, −4.5",
        "0.001, 0.001",
        "1e-7, 0.0000001",
        "1e22, 10000000000000000000000",
        "12345678.9, 12345678.9"
    })
    void aNumberIsWrittenWithoutAnExponent(double value, String written) {
        assertThat(QuantityWords.plain(value)).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "0.09999999999999998, 0.100",
        "0.1, 0.100",
        "1.6, 1.60",
        "41.2, 41.2",
        "563, 563",
        "0.003, 0.00300"
    })
    void figuresAreAboutThree(double value, String written) {
        assertThat(QuantityWords.figures(value)).isEqualTo(written);
    }

    @Test
    void placesOutsideTheirRangeAreRefused() {
        assertThatThrownBy(() -> QuantityWords.fixed(1, -1)).hasMessageContaining("0 to 12");
        assertThatThrownBy(() -> QuantityWords.fixed(1, 13)).hasMessageContaining("0 to 12");
    }

    @Test
    void metricAmountsKeepGramsAndMillilitresToTenThousand() {
        assertThat(QuantityWords.metric(new Mass(223.64))).isEqualTo("223.6 g");
        assertThat(QuantityWords.metric(new Mass(0))).isEqualTo("0.0 g");
        assertThat(QuantityWords.metric(new Mass(0.0351))).isEqualTo("0.035 g");
        assertThat(QuantityWords.metric(new Mass(0.9996))).isEqualTo("1.00 g");
        assertThat(QuantityWords.metric(new Mass(4.125))).isEqualTo("4.13 g");
        assertThat(QuantityWords.metric(new Volume(9.996))).isEqualTo("10.0 mL");
        assertThat(QuantityWords.metric(new Volume(9999.9))).isEqualTo("9999.9 mL");
        assertThat(QuantityWords.metric(new Volume(9999.96))).isEqualTo("10.000 L");
        assertThat(QuantityWords.metric(new Mass(12345.6))).isEqualTo("12.346 kg");
        assertThat(QuantityWords.metric(new Drops(1))).isEqualTo("1 drop");
        assertThat(QuantityWords.metric(new Drops(14.62))).isEqualTo("14.6 drops");
    }

    @Test
    void americanVolumesAreOuncesWithTheNearestKitchenMeasure() {
        double ounce = Volume.MILLILITRES_PER_US_OUNCE;
        assertThat(QuantityWords.us(new Volume(12 * ounce))).isEqualTo("12.00 fl oz (1 1/2 cups)");
        assertThat(QuantityWords.us(new Volume(8 * ounce))).isEqualTo("8.00 fl oz (1 cup)");
        assertThat(QuantityWords.us(new Volume(8 * ounce / 3))).isEqualTo("2.67 fl oz (1/3 cup)");
        assertThat(QuantityWords.us(new Volume(7.56 * ounce))).isEqualTo("7.56 fl oz (about 1 cup)");
        assertThat(QuantityWords.us(new Volume(0.75 * ounce))).isEqualTo("0.750 fl oz (1 1/2 tbsp)");
        assertThat(QuantityWords.us(new Volume(ounce / 12))).isEqualTo("0.083 fl oz (1/2 tsp)");
        assertThat(QuantityWords.us(new Volume(0.1))).isEqualTo("0.003 fl oz");
        assertThat(QuantityWords.us(new Drops(15))).isEqualTo("15 drops");
    }

    /** Sixteen ounces to the pound. Source: NIST Handbook 44, appendix C, from memory. */
    @Tag("published")
    @Test
    void americanMassesArePoundsAndOunces() {
        assertThat(QuantityWords.us(new Mass(223.6))).isEqualTo("7.89 oz wt");
        assertThat(QuantityWords.us(new Mass(453.59237))).isEqualTo("1 lb 0.00 oz wt");
        assertThat(QuantityWords.us(new Mass(453.5))).isEqualTo("1 lb 0.00 oz wt");
        assertThat(QuantityWords.us(new Mass(1000))).isEqualTo("2 lb 3.27 oz wt");
    }
}
