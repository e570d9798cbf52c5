package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;

class LiquidTest {
    private static final Contents LIQUEUR =
            Contents.of(Substance.ETHANOL, 300).with(Substance.WATER, 600).with(Substance.SUCROSE, 200);

    static Figures at20(Contents contents) {
        return Liquid.figures(contents, Temperature.TWENTY_CELSIUS);
    }

    static List<String> rules(Figures figures) {
        return figures.findings().stream().map(Finding::rule).toList();
    }

    @Test
    void nothingHasAMassAndAVolumeAndNoOtherFigure() {
        assertThat(at20(Contents.NONE).all()).containsOnlyKeys(Figure.MASS, Figure.VOLUME, Figure.VOLUME_20C);
        assertThatThrownBy(() -> at20(Contents.NONE).value(Figure.STRENGTH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("this liquid has no strength");
    }

    @Test
    void aSpiritIsOffTheScaleOfASaccharometer() {
        Figures spirit = at20(Contents.of(Substance.ETHANOL, 333).with(Substance.WATER, 667));
        assertThat(spirit.has(Figure.HYDROMETER_BRIX)).isFalse();
        assertThat(spirit.value(Figure.REFRACTOMETER_BRIX)).isBetween(14.0, 16.0);
    }

    @Test
    void everyFigureOfALiqueurExistsAndIsANumber() {
        Figures figures = at20(LIQUEUR);
        assertThat(figures.all()).containsOnlyKeys(Figure.values());
        figures.all().forEach((figure, estimate) -> {
            assertThat(estimate.value()).as(figure.key()).isFinite();
            assertThat(estimate.doubt()).as(figure.key()).isNotNegative().isFinite();
        });
    }

    @Test
    void theWorkingsEndInTheFiguresThemselves() {
        Workings.Written written = new Workings.Written();
        Figures figures = Liquid.figures(LIQUEUR, new Temperature(12), written);
        for (Figure figure : figures.all().keySet()) {
            assertThat(written.steps()).as(figure.key()).anySatisfy(step -> {
                assertThat(step.what()).isEqualTo(figure.label());
                assertThat(step.value()).isEqualTo(figures.value(figure));
            });
        }
        assertThat(written.steps().stream().map(Workings.Step::what))
                .contains("volume of the ethanol with the water", "volume that sucrose adds in its own water");
    }

    @Test
    void essentialsAreTheSameFigures() {
        Contents contents = LIQUEUR.with(Substance.MALIC, 4).with(Substance.GLUCOSE, 30);
        Essentials essentials = Essentials.of(contents.toGrams());
        Figures figures = at20(contents);
        assertThat(essentials.millilitres()).isEqualTo(figures.value(Figure.VOLUME_20C));
        assertThat(essentials.density()).isEqualTo(figures.value(Figure.DENSITY));
        assertThat(essentials.strength()).isCloseTo(figures.value(Figure.STRENGTH), within(1e-12));
        assertThat(essentials.sugar()).isCloseTo(figures.value(Figure.SUGAR), within(1e-9));
        assertThat(essentials.acidity()).isCloseTo(figures.value(Figure.ACIDITY), within(1e-12));
    }

    @Test
    void findingsNameTheSubstanceWhoseValueIsHeld() {
        Figures honeyed = at20(Contents.of(Substance.WATER, 20)
                .with(Substance.FRUCTOSE, 40)
                .with(Substance.GLUCOSE, 20)
                .with(Substance.TARTARIC, 3));
        assertThat(honeyed.findings()).anySatisfy(finding -> {
            assertThat(finding.rule()).isEqualTo("density-fit-ended");
            assertThat(finding.where()).isEqualTo("fructose");
            assertThat(finding.message()).contains("up to 48 % mass; here it is 66.7 %");
        });
        assertThat(rules(honeyed)).contains("density-rule-of-thumb", "freezing-table-ended");
    }

    @Test
    void unknownDoubtAndCrashingSugarAreSaid() {
        Figures strongAndSweet = at20(
                Contents.of(Substance.ETHANOL, 420).with(Substance.WATER, 320).with(Substance.SUCROSE, 320));
        assertThat(rules(strongAndSweet)).contains("strength-doubt-unknown", "sugar-crash");
        assertThat(strongAndSweet.doubt(Figure.STRENGTH)).isGreaterThanOrEqualTo(0.5);
        assertThat(rules(at20(LIQUEUR))).isEmpty();
    }

    @Test
    void outsideTheAlcoholFormulaTheAnswerIsRefused() {
        assertThatThrownBy(() -> Liquid.figures(LIQUEUR, new Temperature(41)))
                .hasMessageContaining("from −20 to 40 °C, not at 41");
        assertThat(rules(Liquid.figures(LIQUEUR, new Temperature(-18)))).contains("cold-volume");
    }
}
