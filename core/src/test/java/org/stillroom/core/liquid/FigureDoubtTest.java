package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.Temperature;

/** What the doubt of the volume makes of each figure; 25 % vol and 300 g/L, whose volume is known to 0.2 %. */
class FigureDoubtTest {
    private static final Contents LIQUEUR =
            Contents.of(Substance.ETHANOL, 197.31).with(Substance.WATER, 584.94).with(Substance.SUCROSE, 300);
    private static final Figures FIGURES = Liquid.figures(LIQUEUR, Temperature.TWENTY_CELSIUS);

    private static double doubt(Figure figure) {
        return FIGURES.doubt(figure);
    }

    @Test
    void whatFollowsFromTheGramsAloneIsNotInDoubt() {
        assertThat(doubt(Figure.MASS)).isZero();
        assertThat(doubt(Figure.STRENGTH_BY_MASS)).isZero();
        assertThat(doubt(Figure.SUGAR_BY_MASS)).isZero();
    }

    @Test
    void whatIsPerVolumeIsAsSureAsTheVolume() {
        assertThat(doubt(Figure.VOLUME_20C)).isCloseTo(2.0, within(1e-4));
        assertThat(doubt(Figure.VOLUME)).isCloseTo(2.0, within(1e-4));
        assertThat(doubt(Figure.DENSITY)).isCloseTo(2.1645, within(1e-4));
        assertThat(doubt(Figure.SPECIFIC_GRAVITY_20_20)).isCloseTo(0.0021684, within(1e-6));
        assertThat(doubt(Figure.SPECIFIC_GRAVITY_60F_60F)).isCloseTo(0.0021722, within(1e-6));
        assertThat(doubt(Figure.SUGAR)).isCloseTo(0.6, within(1e-4));
        assertThat(doubt(Figure.SUGAR_AS_INVERT)).isCloseTo(0.63158, within(1e-4));
        assertThat(doubt(Figure.SUGAR_AS_SUCROSE)).isCloseTo(0.6, within(1e-4));
        assertThat(doubt(Figure.ENERGY_KJ)).isCloseTo(2.164, within(1e-3));
        assertThat(doubt(Figure.ENERGY_KCAL)).isCloseTo(0.5162, within(1e-3));
    }

    @Test
    void strengthsAreAsSureAsTheTable() {
        assertThat(doubt(Figure.STRENGTH)).isCloseTo(0.05, within(1e-6));
        assertThat(doubt(Figure.STRENGTH_15C)).isCloseTo(0.05, within(1e-6));
        assertThat(doubt(Figure.PROOF_US)).isCloseTo(0.10, within(1e-6));
        assertThat(doubt(Figure.PROOF_BRITISH)).isCloseTo(Math.hypot(0.0875, 0.1), within(1e-6));
        assertThat(Liquid.figures(Contents.of(Substance.WATER, 1), Temperature.TWENTY_CELSIUS)
                        .doubt(Figure.PROOF_BRITISH))
                .isZero();
    }

    @Test
    void brixIsAsSureAsWhatItIsReadFrom() {
        // 2.1645 kg/m³ over 445.1 kg/m³ per unit of w at 20.3 °Bx.
        assertThat(doubt(Figure.HYDROMETER_BRIX)).isCloseTo(0.486, within(0.001));
        // dn = hypot(0.0005, (n² + 2)² / 6n · L · 0.002), over 0.00187 per °Bx.
        double n = FIGURES.value(Figure.REFRACTIVE_INDEX);
        double sum = (n * n - 1) / (n * n + 2);
        double index = Math.hypot(0.0005, (n * n + 2) * (n * n + 2) / (6 * n) * sum * 0.002);
        assertThat(doubt(Figure.REFRACTIVE_INDEX)).isCloseTo(index, within(1e-8));
        assertThat(doubt(Figure.REFRACTOMETER_BRIX)).isCloseTo(index / 0.0018702, within(0.001));
        assertThat(doubt(Figure.SUGAR_LIMIT)).isCloseTo(0.2 * FIGURES.value(Figure.SUGAR_LIMIT), within(1e-9));
    }

    @Test
    void otherTemperaturesWidenVolumeAndDensityOnly() {
        Contents sweet = Contents.of(Substance.WATER, 800).with(Substance.GLYCEROL, 200);
        Figures warm = Liquid.figures(sweet, new Temperature(30));
        double at20 = warm.doubt(Figure.VOLUME_20C) / warm.value(Figure.VOLUME_20C);
        double here = Math.hypot(at20, 1.5e-4 * 10 * 0.2);
        assertThat(warm.doubt(Figure.VOLUME)).isCloseTo(here * warm.value(Figure.VOLUME), within(1e-9));
        assertThat(warm.doubt(Figure.DENSITY)).isCloseTo(here * warm.value(Figure.DENSITY), within(1e-9));
    }

    @Test
    void eachBinaryIsReadFromItsOwnCurve() {
        assertThat(index(Contents.of(Substance.ETHANOL, 40).with(Substance.WATER, 60)))
                .isEqualTo(0.0001);
        assertThat(index(Contents.of(Substance.SUCROSE, 40).with(Substance.WATER, 60)))
                .isEqualTo(0.0001);
        assertThat(index(Contents.of(Substance.SUCROSE, 4)
                        .with(Substance.WATER, 60)
                        .with(Substance.FAT, 3)))
                .isEqualTo(0.0001);
        assertThat(index(Contents.of(Substance.GLUCOSE, 40).with(Substance.WATER, 60)))
                .isGreaterThan(0.0005);
        assertThat(index(Contents.of(Substance.SALT, 1).with(Substance.WATER, 99)))
                .isCloseTo(0.0005, within(1e-4));
        double thumb = index(Contents.of(Substance.MALIC, 20).with(Substance.WATER, 80));
        double measured = index(Contents.of(Substance.CITRIC, 20).with(Substance.WATER, 80));
        assertThat(thumb).isGreaterThan(measured + 0.001);
    }

    private static double index(Contents contents) {
        return Liquid.figures(contents, Temperature.TWENTY_CELSIUS).doubt(Figure.REFRACTIVE_INDEX);
    }

    @Test
    void freezingIsSurerForOneSubstanceAndLeastWhereATableEnded() {
        assertThat(freezing(Contents.of(Substance.WATER, 100))).isEqualTo(new Estimate(0, 0));
        assertThat(freezing(Contents.of(Substance.WATER, 80).with(Substance.ETHANOL, 20)))
                .isEqualTo(new Estimate(-10.92, 0.5));
        assertThat(freezing(Contents.of(Substance.WATER, 80)
                                .with(Substance.ETHANOL, 20)
                                .with(Substance.SUCROSE, 20))
                        .doubt())
                .isEqualTo(2);
        assertThat(freezing(Contents.of(Substance.WATER, 20).with(Substance.ETHANOL, 80)))
                .isEqualTo(new Estimate(-49.52, 5));
        assertThat(Liquid.figures(Contents.of(Substance.ETHANOL, 1), Temperature.TWENTY_CELSIUS)
                        .has(Figure.FREEZING_POINT))
                .isFalse();
    }

    private static Estimate freezing(Contents contents) {
        Figures figures = Liquid.figures(contents, Temperature.TWENTY_CELSIUS);
        return new Estimate(figures.value(Figure.FREEZING_POINT), figures.doubt(Figure.FREEZING_POINT));
    }
}
