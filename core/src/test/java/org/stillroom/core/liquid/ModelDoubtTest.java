package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.quantity.Temperature;

class ModelDoubtTest {
    /** Grams whose volume is taken to be a litre: the table alone is asked. */
    private static ModelDoubt at(double strength, double sugar) {
        double[] grams = new double[Substance.COUNT];
        grams[Substance.ETHANOL.ordinal()] = 7.892391233 * strength;
        grams[Substance.WATER.ordinal()] = 500;
        grams[Substance.SUCROSE.ordinal()] = sugar;
        return ModelDoubt.of(grams, 1000);
    }

    @ParameterizedTest
    @CsvSource({
        "10, 0, 0.02",
        "40, 0, 0.02",
        "96, 0, 0.02",
        "10, 200, 0.05",
        "25, 400, 0.05",
        "30, 200, 0.15",
        "40, 200, 0.15",
        "40, 300, 0.30",
        "35, 200, 0.15",
        "40, 250, 0.225",
        "27.5, 200, 0.10",
        "10, 50, 0.035",
        "40, 50, 0.0525"
    })
    void strengthIsAsSureAsTheTableSaysAndStraightBetween(double strength, double sugar, double halfWidth) {
        assertThat(at(strength, sugar).strengthHalfWidth()).isCloseTo(halfWidth, within(1e-6));
        assertThat(at(strength, sugar).known()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"41, 301", "51, 101", "60, 400", "26, 501"})
    void beyondTheTableItIsAtLeastAHalfAndNotKnown(double strength, double sugar) {
        assertThat(at(strength, sugar).known()).isFalse();
        assertThat(at(strength, sugar).strengthHalfWidth()).isGreaterThanOrEqualTo(0.5);
    }

    @Test
    void theEdgesOfTheTableAreKnown() {
        assertThat(at(39.999, 299.9).known()).isTrue();
        assertThat(at(49.999, 99.9).known()).isTrue();
        assertThat(at(24.999, 600).known()).isTrue();
        assertThat(at(45, 200).strengthHalfWidth()).isCloseTo(0.325, within(1e-6));
    }

    @Test
    void volumeAndStrengthSayTheSameFromTwentyFivePercentOn() {
        assertThat(at(40, 200).relativeVolumeHalfWidth()).isCloseTo(0.15 / 40, within(1e-8));
        assertThat(at(0, 200).relativeVolumeHalfWidth()).isCloseTo(0.0002, within(1e-12));
        assertThat(at(12.5, 200).relativeVolumeHalfWidth()).isCloseTo((0.0002 + 0.002) / 2, within(1e-8));
    }

    @Test
    void noLiquidIsDoubtedBelowNoAlcohol() {
        assertThat(at(0, 200).strengthHalfWidth()).isZero();
        assertThat(at(0.01, 200).strengthHalfWidth()).isCloseTo(0.01, within(1e-9));
    }

    @Test
    void solidsOfUnknownVolumeWidenIt() {
        Contents wine = Contents.of(Substance.ETHANOL, 100).with(Substance.WATER, 850);
        double[] plain = wine.with(Substance.SUCROSE, 50).toGrams();
        double[] solids = wine.with(Substance.OTHER_SOLIDS, 50).toGrams();
        ModelDoubt sure = ModelDoubt.of(plain, 1000);
        ModelDoubt unsure = ModelDoubt.of(solids, 1000);
        assertThat(Math.pow(unsure.relativeVolumeHalfWidth(), 2) - Math.pow(sure.relativeVolumeHalfWidth(), 2))
                .isCloseTo(Math.pow(50 * 0.62 * 0.1 / 1000, 2), within(1e-12));
        assertThat(unsure.strengthHalfWidth()).isGreaterThan(sure.strengthHalfWidth());
    }

    @Test
    void fatAndOilAreNotDissolvedSolids() {
        double[] grams = Contents.of(Substance.ETHANOL, 7.892391233 * 40)
                .with(Substance.WATER, 600)
                .with(Substance.FAT, 200)
                .toGrams();
        // Only the table part: fat's own volume is doubted by 3 %.
        assertThat(ModelDoubt.of(grams, 1000).strengthHalfWidth())
                .isCloseTo(Math.hypot(0.02, 40 * 200 / 0.92 * 0.03 / 1000), within(1e-6));
    }

    @Test
    void otherTemperaturesAddTheirDoubt() {
        double[] glycerol =
                Contents.of(Substance.WATER, 800).with(Substance.GLYCEROL, 200).toGrams();
        assertThat(ModelDoubt.ofTemperature(glycerol, Temperature.TWENTY_CELSIUS))
                .isZero();
        assertThat(ModelDoubt.ofTemperature(glycerol, new Temperature(30))).isCloseTo(1.5e-4 * 10 * 0.2, within(1e-12));
        double[] spirit =
                Contents.of(Substance.ETHANOL, 400).with(Substance.WATER, 600).toGrams();
        assertThat(ModelDoubt.ofTemperature(spirit, new Temperature(5))).isZero();
        assertThat(ModelDoubt.ofTemperature(spirit, new Temperature(-20))).isCloseTo(0.002, within(1e-12));
    }
}
