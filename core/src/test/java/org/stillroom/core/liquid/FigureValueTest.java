package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.Temperature;

/** Figures worked apart from this code, by hand or in another language, from the formulas of docs/how-it-works. */
class FigureValueTest {
    private static final Contents FOUR = Contents.of(Substance.ETHANOL, 240)
            .with(Substance.WATER, 560)
            .with(Substance.GLUCOSE, 80)
            .with(Substance.GLYCEROL, 60)
            .with(Substance.CITRIC, 6)
            .with(Substance.MALTOSE, 40);

    private static Figures at(double celsius, Contents contents) {
        return Liquid.figures(contents, new Temperature(celsius));
    }

    private static Figures at20(Contents contents) {
        return at(20, contents);
    }

    private static double freezing(Substance substance, double grams) {
        return at20(Contents.of(Substance.WATER, 100).with(substance, grams)).value(Figure.FREEZING_POINT);
    }

    @Test
    @Tag("frozen")
    void fourSolutesWithoutSucroseSwellAsWorkedApart() {
        assertThat(at(5, FOUR).value(Figure.VOLUME)).isCloseTo(954.0476624807524, within(1e-9));
        assertThat(at(20, FOUR).value(Figure.VOLUME)).isCloseTo(963.2581883985771, within(1e-9));
        assertThat(at(31, FOUR).value(Figure.VOLUME)).isCloseTo(970.4778418886666, within(1e-9));
    }

    @Test
    @Tag("frozen")
    void fatAndOilLieBesideTheWaterAndKeepTheirVolume() {
        Contents cream = FOUR.with(Substance.FAT, 20).with(Substance.OIL, 2);
        assertThat(at(5, cream).value(Figure.VOLUME)).isCloseTo(978.0595201882622, within(1e-9));
        assertThat(at(31, cream).value(Figure.VOLUME)).isCloseTo(994.4896995961765, within(1e-9));
    }

    @Test
    @Tag("frozen")
    void theLiqueurIsTheSameOnEveryBasisAsWorkedApart() {
        Figures figures = at20(Contents.of(Substance.ETHANOL, 197.31)
                .with(Substance.WATER, 584.94)
                .with(Substance.SUCROSE, 300));
        assertThat(figures.value(Figure.SPECIFIC_GRAVITY_60F_60F)).isCloseTo(1.0860804560320725, within(1e-12));
        assertThat(figures.value(Figure.PROOF_US)).isCloseTo(49.88757829458844, within(1e-10));
        assertThat(figures.value(Figure.STRENGTH_15C)).isCloseTo(24.936727153166775, within(1e-10));
        assertThat(figures.value(Figure.PROOF_BRITISH)).isCloseTo(1.75 * figures.value(Figure.STRENGTH), within(1e-12));
        assertThat(figures.value(Figure.STRENGTH_BY_MASS)).isCloseTo(100 * 197.31 / 1082.25, within(1e-12));
    }

    @Test
    void sugarAndAcidAreRestated() {
        Figures figures = at20(FOUR.with(Substance.SUCROSE, 50).with(Substance.LACTIC, 3));
        double litres = figures.value(Figure.VOLUME_20C) / 1000;
        assertThat(figures.value(Figure.SUGAR)).isCloseTo(170 / litres, within(1e-9));
        double invert = 120 + 50 * 360.312 / 342.297;
        assertThat(figures.value(Figure.SUGAR_AS_INVERT)).isCloseTo(invert / litres, within(1e-9));
        assertThat(figures.value(Figure.SUGAR_AS_SUCROSE)).isCloseTo(invert / litres * 342.297 / 360.312, within(1e-9));
        assertThat(figures.value(Figure.ACID)).isCloseTo(9 / litres, within(1e-9));
        assertThat(figures.value(Figure.ACIDITY)).isCloseTo((6 + 3 * 64.0413 / 90.078) / litres, within(1e-4));
    }

    @Test
    void energyGoesByTheFactorsOfTheLaw() {
        Contents all = Contents.of(Substance.WATER, 500)
                .with(Substance.ETHANOL, 100)
                .with(Substance.LACTOSE, 10)
                .with(Substance.GLYCEROL, 10)
                .with(Substance.ACETIC, 10)
                .with(Substance.PROTEIN, 10)
                .with(Substance.FAT, 10)
                .with(Substance.PHOSPHORIC, 10)
                .with(Substance.SALT, 10);
        Figures figures = at20(all);
        double hundreds = figures.value(Figure.VOLUME_20C) / 100;
        assertThat(figures.value(Figure.ENERGY_KJ))
                .isCloseTo((2900 + 170 + 100 + 130 + 170 + 370) / hundreds, within(1e-9));
        assertThat(figures.value(Figure.ENERGY_KCAL))
                .isCloseTo((700 + 40 + 24 + 30 + 40 + 90) / hundreds, within(1e-9));
    }

    @Test
    void depressionsAreThoseOfTheTableStraightBetween() {
        assertThat(freezing(Substance.SALT, 25)).isCloseTo(-16.46, within(0.1));
        // 10 % mass of sucrose: 0.63; 0.25 %: half of what 0.5 % does.
        assertThat(freezing(Substance.SUCROSE, 100.0 / 9)).isCloseTo(-0.63, within(1e-9));
        assertThat(freezing(Substance.SUCROSE, 0.25 / 0.9975)).isCloseTo(-0.015, within(1e-9));
        assertThat(freezing(Substance.OTHER_SOLIDS, 100.0 / 9)).isCloseTo(-0.63, within(1e-9));
        // One mole of malic acid in ten kilograms of water: a tenth of 1.86 °C.
        assertThat(freezing(Substance.MALIC, 1.34087)).isCloseTo(-0.186, within(1e-9));
        assertThat(freezing(Substance.PROTEIN, 5)).isZero();
        assertThat(freezing(Substance.OIL, 5)).isZero();
    }

    @Test
    void fatDoesNotBendTheLineOfARefractometer() {
        Contents syrup = Contents.of(Substance.WATER, 70).with(Substance.SUCROSE, 30);
        assertThat(at20(syrup.with(Substance.FAT, 20)).value(Figure.REFRACTIVE_INDEX))
                .isCloseTo(at20(syrup).value(Figure.REFRACTIVE_INDEX), within(1e-12));
        assertThat(at20(syrup).value(Figure.REFRACTOMETER_BRIX)).isCloseTo(30, within(1e-7));
        assertThat(at20(syrup).value(Figure.HYDROMETER_BRIX)).isCloseTo(30, within(1e-9));
        assertThat(at20(syrup.with(Substance.SUCROSE, 630)).value(Figure.REFRACTIVE_INDEX))
                .isBetween(1.50, 1.54);
        assertThat(at20(Contents.of(Substance.SUCROSE, 1)).has(Figure.REFRACTIVE_INDEX))
                .isFalse();
    }

    @Test
    void theLimitOfSugarGoesByTheSpiritWithoutIt() {
        Contents half = Contents.of(Substance.ETHANOL, 42.4257).with(Substance.WATER, 57.5743);
        assertThat(at20(half).value(Figure.SUGAR_LIMIT)).isCloseTo(471, within(0.01));
        assertThat(at20(half.with(Substance.SUCROSE, 30)).value(Figure.SUGAR_LIMIT))
                .isCloseTo(471, within(0.01));
        assertThat(at20(Contents.of(Substance.ETHANOL, 96).with(Substance.WATER, 4))
                        .has(Figure.SUGAR_LIMIT))
                .isFalse();
        assertThat(at20(Contents.of(Substance.ETHANOL, 1)).has(Figure.SUGAR_LIMIT))
                .isFalse();
    }

    @Test
    void everyFigureHasItsOwnKeyAndSaysItsUnit() {
        Set<String> keys = new HashSet<>();
        for (Figure figure : Figure.values()) {
            assertThat(keys.add(figure.key())).as(figure.key()).isTrue();
            assertThat(figure.key()).matches("[a-z0-9_]+");
            assertThat(figure.label()).isNotBlank();
            assertThat(figure.unit()).isNotBlank();
            assertThat(figure.decimals()).isBetween(0, 5);
            assertThat(at20(FOUR).has(figure))
                    .isEqualTo(figure != Figure.MASS || at20(FOUR).value(figure) == 986);
        }
        assertThat(Figure.REFRACTIVE_INDEX.decimals()).isEqualTo(4);
    }
}
