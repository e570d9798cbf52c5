package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.ModelDoubt;
import org.stillroom.core.quantity.SeededDraws;
import org.stillroom.core.quantity.Typed;

@Tag("property")
class SpreadTest {
    private static final long SEED = 20;

    private static Ingredient vodka(double tolerance) {
        return new Ingredient(
                "vodka",
                Kind.SPIRIT,
                Kitchen.typed(Kitchen.TEXT.strength("40 %")),
                new Typed<>(tolerance + " %", tolerance),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                Map.of(),
                null,
                null,
                null,
                null,
                null);
    }

    private static List<Taken> taken(Plan plan, double... halfWidths) {
        List<Taken> taken = new ArrayList<>();
        for (int i = 0; i < plan.lines().size(); i++) {
            taken.add(new Taken(plan.lines().get(i).grams(), halfWidths[i]));
        }
        return taken;
    }

    private static Bands bands(Plan plan, double... halfWidths) {
        return Spread.of(plan, taken(plan, halfWidths), SEED, Spread.DRAWS);
    }

    @Test
    void aUniformLabelErrorAloneGivesNineTenthsOfItsWidth() {
        Plan plan = new Kitchen().ingredient(vodka(1.0)).amount("vodka", "1 kg").plan();
        Band strength = bands(plan, 0).strength();
        assertThat(strength.low()).isCloseTo(39.1, within(0.04));
        assertThat(strength.high()).isCloseTo(40.9, within(0.04));
        assertThat(strength.mostFrom()).isEqualTo("the label of vodka");
    }

    @Test
    void onTheMarkTheSugarMovesOnlyTheSugar() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .ingredient(vodka(0.0))
                .amount("vodka", "750 ml")
                .amount("sugar", "200 g")
                .makeUp("water")
                .plan();
        Band strength = bands(plan, 0, 10, 0).strength();
        assertThat(strength.high() - strength.low()).isLessThan(1e-6);
        Band sugar = bands(plan, 0, 10, 0).sugar();
        assertThat(sugar.low()).isCloseTo(191, within(0.3));
        assertThat(sugar.high()).isCloseTo(209, within(0.3));
        assertThat(sugar.mostFrom()).isEqualTo("the measure of sugar");
    }

    @Test
    void theSameSeedGivesTheSameBand() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("25 %")
                .sugar("200 g/L")
                .ingredient(vodka(0.3))
                .free("vodka", "sugar", "water")
                .plan();
        List<Taken> taken = taken(plan, 1, 1, 1);
        assertThat(Spread.of(plan, taken, 7, 500)).isEqualTo(Spread.of(plan, taken, 7, 500));
        assertThat(Spread.of(plan, taken, 7, 500)).isNotEqualTo(Spread.of(plan, taken, 8, 500));
    }

    @Test
    void normalDrawsHaveMeanZeroAndVarianceOne() {
        SeededDraws random = new SeededDraws(SEED);
        double[] drawn = new double[200_000];
        Arrays.setAll(drawn, i -> random.normal());
        double mean = Arrays.stream(drawn).average().orElseThrow();
        double variance = Arrays.stream(drawn).map(x -> x * x).average().orElseThrow();
        assertThat(mean).isCloseTo(0, within(0.01));
        assertThat(variance).isCloseTo(1, within(0.015));
        assertThat(Arrays.stream(drawn).filter(x -> Math.abs(x) < 1.6448536).count() / 200_000.0)
                .isCloseTo(0.9, within(0.004));
    }

    /** Half-widths a and b, each uniform: variances a²/3 and b²/3 (JCGM 100:2008, 4.3.7). */
    @Test
    void theLargestPartOfTheVarianceIsNamedWithItsShare() {
        Plan plan = new Kitchen()
                .ingredient(vodka(0.0))
                .amount("vodka", "1 kg")
                .amount("water", "1 kg")
                .plan();
        Band volume = bands(plan, 30, 10).volume();
        assertThat(volume.mostFrom()).isEqualTo("the measure of vodka");
        // the volume moves by about a/0.95 and b/1.0: 31.6² of 31.6² + 10²; partial volumes and the model change it a
        // little
        assertThat(volume.partOfMost()).isCloseTo(0.907, within(0.02));
        assertThat(bands(plan, 10, 30).volume().mostFrom()).isEqualTo("the measure of water");
    }

    @Test
    void aLiquidOfOneLineHasTheStrengthOfItsLabelAlone() {
        Plan plan = new Kitchen().ingredient(vodka(1.0)).amount("vodka", "1 kg").plan();
        Bands bands = bands(plan, 50);
        // the label's variance is 1²/3, the model's (0.02/1.645)²: contracts of the volume model without sugar
        assertThat(bands.strength().partOfMost()).isCloseTo(0.99956, within(0.0002));
        // 950 to 1050 g over 0.948 g/mL, nine tenths of the width
        assertThat(bands.volume().low()).isCloseTo((1000 - 45) / 0.94805, within(3.0));
        assertThat(bands.volume().high()).isCloseTo((1000 + 45) / 0.94805, within(3.0));
        assertThat(bands.volume().mostFrom()).isEqualTo("the measure of vodka");
    }

    @Test
    void withoutAnyErrorButTheModelsItIsTheModelThatIsNamed() {
        Plan plan = new Kitchen()
                .ingredient(vodka(0.0))
                .amount("vodka", "1 kg")
                .amount("sugar", "200 g")
                .amount("citric acid", "5 g")
                .plan();
        Bands bands = bands(plan, 0, 0, 0);
        ModelDoubt doubt = ModelDoubt.of(plan.liquid().toGrams(), plan.millilitres());
        double strength = 0.5 * (bands.strength().low() + bands.strength().high());
        assertThat(bands.strength().mostFrom()).isEqualTo("the volume model");
        assertThat(bands.strength().partOfMost()).isEqualTo(1.0);
        assertThat(bands.strength().high() - strength).isCloseTo(doubt.strengthHalfWidth(), withinPercentage(4));
        double wide = doubt.relativeVolumeHalfWidth();
        assertThat(bands.volume().high())
                .isCloseTo(plan.millilitres() * (1 + wide), withinPercentage(100 * 0.04 * wide));
        assertThat(bands.volume().low())
                .isCloseTo(plan.millilitres() * (1 - wide), withinPercentage(100 * 0.04 * wide));
        double sugar = 200_000 / plan.millilitres();
        assertThat(bands.sugar().low()).isCloseTo(sugar / (1 + wide), withinPercentage(100 * 0.04 * wide));
        assertThat(bands.sugar().high()).isCloseTo(sugar / (1 - wide), withinPercentage(100 * 0.04 * wide));
        double acidity = 5000 / plan.millilitres();
        assertThat(bands.acidity().low()).isCloseTo(acidity / (1 + wide), withinPercentage(100 * 0.04 * wide));
        assertThat(bands.acidity().high()).isCloseTo(acidity / (1 - wide), withinPercentage(100 * 0.04 * wide));
    }

    @Test
    void aFigureThatCannotErrHasNothingItComesFrom() {
        Plan plan = new Kitchen().ingredient(vodka(1.0)).amount("vodka", "1 kg").plan();
        assertThat(bands(plan, 1).sugar()).isEqualTo(new Band(0, 0, "", 0));
    }

    @Test
    void theMarkMovesTheVolumeAndWithItTheStrength() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .ingredient(vodka(0.0))
                .amount("vodka", "750 ml")
                .makeUp("water")
                .plan();
        Bands bands = bands(plan, 0, 10);
        assertThat(bands.volume().low()).isCloseTo(991, within(0.3));
        assertThat(bands.volume().high()).isCloseTo(1009, within(0.3));
        assertThat(bands.volume().mostFrom()).isEqualTo("the mark");
        assertThat(bands.strength().low()).isCloseTo(300 / 10.09, within(0.01));
        assertThat(bands.strength().high()).isCloseTo(300 / 9.91, within(0.01));
    }

    @Test
    void noMoreIsTakenFromALineThanWasPoured() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .ingredient(vodka(0.0))
                .amount("vodka", "995 ml")
                .makeUp("water")
                .plan();
        // the mark may stand at 980, but the vodka alone is 995 mL
        assertThat(bands(plan, 0, 20).volume().low()).isCloseTo(995, within(0.01));
        assertThat(bands(plan, 0, 20).strength().high()).isCloseTo(40, within(0.001));
    }

    @Test
    void aMeasureDoesNotFallBelowNothing() {
        Plan plan = new Kitchen()
                .ingredient(vodka(0.0))
                .amount("vodka", "1 kg")
                .amount("sugar", "1 g")
                .plan();
        Band sugar = bands(plan, 0, 10).sugar();
        assertThat(sugar.low()).isZero();
        assertThat(sugar.high()).isCloseTo(10_000 / (1000 / 0.94805), within(0.3));
    }

    /** Between the values at rank 0.05 (n − 1) and the next, as the spread of the same draws by hand. */
    @Test
    void thePercentilesAreThoseOfTheSortedDraws() {
        Plan plan = new Kitchen().ingredient(vodka(0.0)).amount("vodka", "1 kg").plan();
        int draws = 110;
        SeededDraws random = new SeededDraws(5);
        double[] volumes = new double[draws];
        double relative =
                ModelDoubt.of(plan.liquid().toGrams(), plan.millilitres()).relativeVolumeHalfWidth();
        for (int i = 0; i < draws; i++) {
            random.between();
            double grams = 1000 + 100 * random.between();
            volumes[i] = grams / 1000 * plan.millilitres() * (1 + random.normal() / 1.6448536269514722 * relative);
        }
        Arrays.sort(volumes);
        Band volume = Spread.of(plan, taken(plan, 100), 5, draws).volume();
        // 0.05 × 109 = 5.45 and 0.95 × 109 = 103.55
        assertThat(volume.low()).isCloseTo(volumes[5] + 0.45 * (volumes[6] - volumes[5]), within(1e-6));
        assertThat(volume.high()).isCloseTo(volumes[103] + 0.55 * (volumes[104] - volumes[103]), within(1e-6));
    }

    @Test
    void fewDrawsAndMissingLinesAreRefused() {
        Plan plan = new Kitchen().ingredient(vodka(0.0)).amount("vodka", "1 kg").plan();
        List<Taken> taken = taken(plan, 1);
        assertThat(Spread.of(plan, taken, 1, 100)).isNotNull();
        assertThatThrownBy(() -> Spread.of(plan, taken, 1, 99))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "a spread needs at least 100 draws and what is taken of each line, not 99 draws and 1 of 1 lines");
        assertThatThrownBy(() -> Spread.of(plan, List.of(), 1, 100)).isInstanceOf(IllegalArgumentException.class);
    }
}
