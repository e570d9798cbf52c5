package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
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
}
