package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.recipe.Loss;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Severity;

class PlannerTest {
    private static final Percentage STORY = Percentage.withPercentage(0.3);

    private static double grams(Plan plan, String name) {
        return plan.lines().stream()
                .filter(line -> line.name().equals(name))
                .mapToDouble(PlannedLine::grams)
                .sum();
    }

    private static double strength(Plan plan) {
        return 100
                * plan.liquid().grams(Substance.ETHANOL)
                / (EthanolWater.at(Temperature.TWENTY_CELSIUS).ethanol() / 1000 * plan.millilitres());
    }

    private static double sugar(Plan plan) {
        return 1000 * plan.liquid().sugars() / plan.millilitres();
    }

    /** Own arithmetic of the task with the same formulas, not a published value. */
    @Test
    void honeyLiqueurTakesTheAmountsOfTheWorkedStory() {
        Plan plan = new Kitchen()
                .volume("1.5 L")
                .strength("32 %")
                .sugar("180 g/L")
                .spirit("strong spirit", "70 %", null, null)
                .free("honey", "strong spirit")
                .dose("glycerol", "8 g/L")
                .free("water")
                .plan();
        assertThat(plan.reached()).isTrue();
        assertThat(grams(plan, "honey")).isCloseTo(360, STORY);
        assertThat(grams(plan, "strong spirit")).isCloseTo(607, STORY);
        assertThat(plan.lines().get(1).millilitres().orElseThrow()).isCloseTo(686, STORY);
        assertThat(grams(plan, "glycerol")).isCloseTo(12, STORY);
        assertThat(grams(plan, "water")).isCloseTo(576, STORY);
        assertThat(plan.liquid().total() / plan.millilitres()).isCloseTo(1.037, within(0.0006));
    }

    /** Own arithmetic of the task with the same formulas, not a published value. */
    @Test
    void oneBottleACupOfSugarAndAMarkAreEnough() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .amount("vodka 40 %", "750 ml")
                .amount("sugar", "1 cup")
                .makeUp("water")
                .plan();
        assertThat(plan.reached()).isTrue();
        assertThat(strength(plan)).isCloseTo(30.0, within(1e-9));
        assertThat(sugar(plan)).isCloseTo(200, STORY);
    }

    /** Own arithmetic of the task with the same formulas, not a published value. */
    @Test
    void crystalsReachHigherThanSyrup() {
        Plan crystals = new Kitchen()
                .volume("1 L")
                .strength("38 %")
                .sugar("200 g/L")
                .free("vodka 40 %", "sugar", "water")
                .plan();
        assertThat(crystals.reached()).isFalse();
        assertThat(strength(crystals)).isCloseTo(35.0, within(0.05));
        Plan syrup = new Kitchen()
                .volume("1 L")
                .strength("38 %")
                .sugar("200 g/L")
                .free("vodka 40 %", "simple syrup 2:1", "water")
                .plan();
        assertThat(strength(syrup)).isCloseTo(31.1, within(0.05));
    }

    @Test
    void aStageIsPlannedFirstAndItsLossIsGone() {
        Making essence = Making.alone(new Kitchen()
                .contains("oil", Kind.ESSENTIAL_OIL, Map.of())
                .volume("100 ml")
                .amount("oil", "5 g")
                .makeUp("spirit 96 %")
                .loss(new Loss.Part(0.1))
                .recipe());
        Plan plan = new Kitchen()
                .volume("2 L")
                .strength("28 %")
                .sugar("150 g/L")
                .stage("essence", Kind.ESSENCE, "essence.yaml")
                .dose("essence", "10 ml/L")
                .free("spirit 96 %", "sugar", "water")
                .plan(Map.of("essence.yaml", essence));
        assertThat(plan.reached()).isTrue();
        assertThat(plan.stages()).hasSize(1);
        assertThat(plan.stages().get(0).yieldMillilitres()).isCloseTo(90, within(1e-6));
        assertThat(1000 * plan.liquid().grams(Substance.OIL) / plan.millilitres())
                .isCloseTo(0.5, within(1e-6));
        assertThat(plan.findings()).noneMatch(f -> f.severity() == Severity.STOP);
    }

    @Test
    void whatIsAtHandLimitsTheVolumeAndNotTheComposition() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("28 %")
                .sugar("180 g/L")
                .spirit("cask spirit", "60 %", "300 ml", null)
                .free("cask spirit", "sugar", "water")
                .plan();
        assertThat(plan.reached()).isFalse();
        assertThat(strength(plan)).isCloseTo(28, within(1e-6));
        assertThat(plan.millilitres()).isCloseTo(300 * 60 / 28.0, within(1e-3));
        assertThat(plan.findings())
                .anySatisfy(finding -> assertThat(finding.message()).contains("the most you can make is 642 mL"));
    }
}
