package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.core.plan.Kitchen.grams;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.recipe.Loss;
import org.stillroom.core.recipe.Making;

/** What holds for every plan, and stages. */
@Tag("property")
class PlanLawsTest {
    private static final List<String> NAMES = List.of("vodka 40 %", "spirit 96 %", "honey", "citric acid", "water");

    private static Kitchen kitchen(Random random, int millilitres) {
        return new Kitchen()
                .volume(millilitres + " ml")
                .strength(15 + random.nextInt(15) + " %")
                .sugar(50 + random.nextInt(150) + " g/L")
                .acidity(random.nextInt(6) + " g/L");
    }

    @Test
    void theOrderOfTheLinesDoesNotMatter() {
        for (long seed = 0; seed < 20; seed++) {
            Plan plan = kitchen(new Random(seed), 700)
                    .free(NAMES.toArray(new String[0]))
                    .plan();
            List<String> shuffled = new ArrayList<>(NAMES);
            Collections.shuffle(shuffled, new Random(seed));
            Plan other = kitchen(new Random(seed), 700)
                    .free(shuffled.toArray(new String[0]))
                    .plan();
            assertThat(plan.reached()).as("seed %d", seed).isTrue();
            for (String name : NAMES) {
                assertThat(grams(other, name)).as("seed %d: %s", seed, name).isCloseTo(grams(plan, name), within(1e-6));
            }
        }
    }

    @Test
    void twiceTheRecipeTakesTwiceTheGrams() {
        for (long seed = 0; seed < 20; seed++) {
            Plan once = kitchen(new Random(seed), 700)
                    .free(NAMES.toArray(new String[0]))
                    .plan();
            Plan twice = kitchen(new Random(seed), 1400)
                    .free(NAMES.toArray(new String[0]))
                    .plan();
            for (String name : NAMES) {
                assertThat(grams(twice, name))
                        .as("seed %d: %s", seed, name)
                        .isCloseTo(2 * grams(once, name), within(1e-6));
            }
        }
    }

    @Test
    void aLimitThatDoesNotBindChangesNothing() {
        for (long seed = 0; seed < 20; seed++) {
            Plan open = kitchen(new Random(seed), 700)
                    .spirit("own spirit", "70 %", null, null)
                    .free("own spirit", "sugar", "citric acid", "water")
                    .plan();
            double taken = grams(open, "own spirit");
            Plan limited = kitchen(new Random(seed), 700)
                    .spirit("own spirit", "70 %", Math.ceil(taken + 1) + " g", null)
                    .free("own spirit", "sugar", "citric acid", "water")
                    .plan();
            assertThat(limited.reached()).as("seed %d", seed).isTrue();
            assertThat(grams(limited, "own spirit")).as("seed %d", seed).isCloseTo(taken, within(1e-6));
            Plan binding = kitchen(new Random(seed), 700)
                    .spirit("own spirit", "70 %", Math.floor(taken - 5) + " g", null)
                    .free("own spirit", "sugar", "citric acid", "water")
                    .plan();
            assertThat(binding.reached()).as("seed %d", seed).isFalse();
        }
    }

    @Test
    void bottlesAreFilledTogether() {
        Plan plan = new Kitchen()
                .bottles("3 x 350 ml")
                .strength("20 %")
                .free("vodka 40 %", "water")
                .plan();
        assertThat(plan.millilitres()).isCloseTo(1050, within(1e-6));
        assertThat(plan.lines().get(0).millilitres().orElseThrow()).isCloseTo(525, within(1e-6));
    }

    @Test
    void aDoseGrowsWithTheVolumeWhateverItsUnit() {
        Plan plan = new Kitchen()
                .volume("2 L")
                .bought("bay oil", Kind.ESSENTIAL_OIL, "25 mg", null, null, null)
                .free("vodka 40 %")
                .dose("bay oil", "8 drops/L")
                .dose("water", "10 ml/L")
                .dose("citric acid", "3 g/L")
                .plan();
        assertThat(plan.millilitres()).isCloseTo(2000, within(1e-6));
        assertThat(grams(plan, "bay oil")).isCloseTo(0.4, within(1e-9));
        assertThat(plan.lines().get(2).millilitres().orElseThrow()).isCloseTo(20, within(1e-6));
        assertThat(grams(plan, "citric acid")).isCloseTo(6, within(1e-9));
    }

    private static final Offset<Double> CLOSE = within(1e-6);

    private static Plan.StagePlan stage(Loss loss) {
        Making macerate = Making.alone(new Kitchen()
                .contains("balm", Kind.FRESH_PLANT, Map.of(Substance.WATER, "80 %"))
                .bought("dry balm", Kind.DRIED_PLANT, null, null, null, null)
                .amount("vodka 40 %", "1 L")
                .amount("balm", "60 g")
                .amount("dry balm", "40 g")
                .loss(loss)
                .recipe());
        Plan plan = new Kitchen()
                .stage("macerate", Kind.MACERATE, "macerate.yaml")
                .all("macerate")
                .plan(Map.of("macerate.yaml", macerate));
        assertThat(plan.stages()).hasSize(1);
        Plan.StagePlan stage = plan.stages().get(0);
        assertThat(stage.ingredient()).isEqualTo("macerate");
        // all of what the stage leaves goes in
        assertThat(grams(plan, "macerate")).isCloseTo(stage.yieldGrams(), CLOSE);
        assertThat(plan.millilitres()).isCloseTo(stage.yieldMillilitres(), CLOSE);
        assertThat(plan.lines().get(0).millilitres().orElseThrow()).isCloseTo(stage.yieldMillilitres(), CLOSE);
        return stage;
    }

    @Test
    void aStageLosesAPartAnAmountOrWhatTheMarcHolds() {
        Plan.StagePlan part = stage(new Loss.Part(0.25));
        double all = part.plan().millilitres();
        double grams = part.plan().liquid().total();
        assertThat(part.yieldMillilitres()).isCloseTo(0.75 * all, CLOSE);
        assertThat(part.yieldGrams()).isCloseTo(0.75 * grams, CLOSE);
        Plan.StagePlan volume =
                stage(new Loss.Fixed(Kitchen.typed(Kitchen.TEXT.volume("30 ml")).value()));
        assertThat(volume.yieldMillilitres()).isCloseTo(all - 30, CLOSE);
        Plan.StagePlan mass =
                stage(new Loss.Fixed(Kitchen.typed(Kitchen.TEXT.mass("30 g")).value()));
        assertThat(mass.yieldGrams()).isCloseTo(grams - 30, CLOSE);
        Plan.StagePlan marc = stage(new Loss.HeldByMarc(1.5));
        assertThat(marc.yieldMillilitres()).isCloseTo(all - 150, CLOSE);
    }

    @Test
    void aStageThatWasMeasuredHasTheStrengthThatWasMeasured() {
        Making macerate = Making.alone(new Kitchen().amount("vodka 40 %", "1 L").recipe());
        Ingredient measured = new Ingredient(
                "macerate",
                Kind.MACERATE,
                Kitchen.typed(Kitchen.TEXT.strength("36 %")),
                null,
                null,
                null,
                null,
                null,
                null,
                Kitchen.typed(Kitchen.TEXT.amount("900 ml")),
                null,
                Map.of(),
                null,
                null,
                null,
                "macerate.yaml",
                null);
        Plan plan = new Kitchen()
                .ingredient(measured)
                .strength("18 %")
                .all("macerate")
                .free("water")
                .plan(Map.of("macerate.yaml", macerate));
        assertThat(plan.reached()).isTrue();
        assertThat(plan.lines().get(0).millilitres().orElseThrow()).isCloseTo(900, CLOSE);
        assertThat(plan.millilitres()).isCloseTo(1800, CLOSE);
    }

    @Test
    void aSpiritMeasuresMoreInAWarmRoomAndCrystalsHaveNoVolume() {
        Plan plan = new Kitchen()
                .amount("vodka 40 %", "1 L")
                .amount("sugar", "200 g")
                .bought("balm", Kind.DRIED_PLANT, null, null, null, null)
                .amount("balm", "5 g")
                .plan();
        PlannedLine vodka = plan.lines().get(0);
        assertThat(vodka.millilitres().orElseThrow()).isCloseTo(1000, CLOSE);
        assertThat(vodka.millilitresAt(Temperature.TWENTY_CELSIUS).orElseThrow())
                .isCloseTo(1000, CLOSE);
        // 40 % vol is 33.3 % by mass; 30 % by mass: 0.95382 g/mL at 20 °C, 0.94741 at 30; 35 %: 0.94494, 0.93794
        // (International Critical Tables, from memory); between them 1.0072 times the volume
        assertThat(vodka.millilitresAt(new Temperature(30)).orElseThrow()).isCloseTo(1007.2, within(0.2));
        assertThat(plan.lines().get(1).millilitres()).isEmpty();
        assertThat(plan.lines().get(1).millilitresAt(new Temperature(30))).isEmpty();
        // a US cup of crystals weighs about 200 g (common practice, no source)
        assertThat(plan.lines().get(1).measurable().orElseThrow()).isCloseTo(236.6, within(0.5));
        assertThat(plan.lines().get(2).measurable()).isEmpty();
    }
}
