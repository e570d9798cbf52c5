package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.sugar.SucroseWater;

@Tag("property")
class VolumeModelTest {
    private static double[] randomLiquid(Random random) {
        double[] grams = new double[Substance.COUNT];
        grams[Substance.ETHANOL.ordinal()] = 1 + 400 * random.nextDouble();
        grams[Substance.WATER.ordinal()] = 1 + 800 * random.nextDouble();
        for (int i = 2; i < grams.length; i++) {
            grams[i] = random.nextInt(3) == 0 ? 200 * random.nextDouble() : 0;
        }
        return grams;
    }

    @Test
    void volumeIsTheSumOfGramsTimesPartialVolumes() {
        Random random = new Random(1);
        for (int n = 0; n < 2000; n++) {
            double[] grams = randomLiquid(random);
            double[] perGram = new double[Substance.COUNT];
            double volume = VolumeModel.partialVolumes(grams, perGram);
            assertThat(volume).isCloseTo(VolumeModel.atTwenty().millilitres(grams), within(1e-10 * volume));
        }
    }

    @Test
    void partialVolumesAreTheSlopesOfTheVolume() {
        Random random = new Random(2);
        for (int n = 0; n < 300; n++) {
            double[] grams = randomLiquid(random);
            double[] perGram = new double[Substance.COUNT];
            VolumeModel.partialVolumes(grams, perGram);
            for (int i = 0; i < grams.length; i++) {
                double step = 1e-4 * (grams[i] + 1);
                double[] more = grams.clone();
                more[i] += step;
                double[] less = grams.clone();
                less[i] = Math.max(0, less[i] - step);
                double slope = (VolumeModel.atTwenty().millilitres(more)
                                - VolumeModel.atTwenty().millilitres(less))
                        / (more[i] - less[i]);
                assertThat(perGram[i])
                        .as("seed 2, liquid %d, %s", n, Substance.values()[i])
                        .isCloseTo(slope, within(2e-4));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"0", "5", "12.5", "20", "31", "40"})
    void bothBinariesAreExactAtEveryTemperature(double celsius) {
        Temperature temperature = new Temperature(celsius);
        VolumeModel model = VolumeModel.at(temperature);
        double water = EthanolWater.at(temperature).water();
        for (double part = 0.0; part <= 1.0; part += 0.05) {
            double[] spirit = Contents.of(Substance.ETHANOL, 1000 * part)
                    .with(Substance.WATER, 1000 * (1 - part))
                    .toGrams();
            assertThat(1e6 / model.millilitres(spirit))
                    .isCloseTo(EthanolWater.at(temperature).density(part), within(1e-9));
            double[] syrup = Contents.of(Substance.SUCROSE, 1000 * part)
                    .with(Substance.WATER, 1000 * (1 - part))
                    .toGrams();
            assertThat(1e6 / model.millilitres(syrup))
                    .isCloseTo(water + SucroseWater.at(temperature).excess(part), within(1e-9));
        }
    }
}
