package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.core.plan.Kitchen.finding;
import static org.stillroom.core.plan.Kitchen.grams;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.recipe.Aim;
import org.stillroom.core.reference.Finding;

/** Which of several answers a plan takes, and what a gram costs. */
class AimTest {
    private static OptionalDouble cost(Kitchen kitchen) {
        Ingredient ingredient = kitchen.recipe().ingredients().get(0);
        Resolved resolved = Resolution.of(ingredient).resolved();
        return Cost.perGram(Objects.requireNonNull(resolved));
    }

    @Test
    void aGramCostsThePriceOverTheGramsItIsFor() {
        assertThat(cost(new Kitchen().bought("salt", Kind.SALT, null, "3 EUR/kg", null, null))
                        .getAsDouble())
                .isCloseTo(0.003, within(1e-15));
        // water at 20 °C: 998.2 kg/m³
        assertThat(cost(new Kitchen().bought("own water", Kind.WATER, null, "2 EUR/L", null, null))
                        .getAsDouble())
                .isCloseTo(2 / 998.2, within(1e-7));
        assertThat(cost(new Kitchen().bought("salt", Kind.SALT, null, "3 EUR", null, "500 g"))
                        .getAsDouble())
                .isCloseTo(0.006, within(1e-15));
    }

    @Test
    void whatAGramCostsIsNotKnownWithoutPricePackOrDensity() {
        assertThat(cost(new Kitchen().bought("salt", Kind.SALT, null, null, null, null)))
                .isEmpty();
        assertThat(cost(new Kitchen().bought("salt", Kind.SALT, null, "3 EUR", null, null)))
                .isEmpty();
        assertThat(cost(new Kitchen().bought("balm", Kind.DRIED_PLANT, null, "3 EUR/L", null, null)))
                .isEmpty();
    }

    private static Kitchen twoSpirits(String priceOfWeak, @Nullable String priceOfStrong) {
        return new Kitchen()
                .volume("1 L")
                .strength("30 %")
                .spirit("weak spirit", "40 %", null, priceOfWeak)
                .spirit("strong spirit", "80 %", null, priceOfStrong)
                .free("weak spirit", "strong spirit", "water");
    }

    @Test
    void theCheaperAlcoholIsTaken() {
        // per litre of alcohol: 25 against 30, then 35 against 30
        Plan weak = twoSpirits("10 EUR/L", "24 EUR/L").plan();
        assertThat(grams(weak, "strong spirit")).isZero();
        assertThat(weak.lines().get(0).millilitres().orElseThrow()).isCloseTo(750, within(1e-6));
        Plan strong = twoSpirits("14 EUR/L", "24 EUR/L").plan();
        assertThat(grams(strong, "weak spirit")).isZero();
        assertThat(strong.lines().get(1).millilitres().orElseThrow()).isCloseTo(375, within(1e-6));
    }

    @Test
    void withoutEveryPriceThePlainestIsTaken() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("30 %")
                .spirit("weak spirit", "40 %", null, "1 EUR/L")
                .spirit("strong spirit", "80 %", null, null)
                .free("weak spirit", "strong spirit", "water")
                .plan();
        assertThat(grams(plan, "weak spirit")).isZero();
        assertThat(plan.findings()).extracting(Finding::rule).containsExactly("line-not-needed");
    }

    @Test
    void theLeastCostLeavesOutWhatHasNoPriceAndSaysSo() {
        Plan plan = twoSpirits("10 EUR/L", null).aim(Aim.What.LEAST_COST).plan();
        assertThat(grams(plan, "weak spirit")).isZero();
        Finding finding = finding(plan.findings(), "price-not-known");
        assertThat(finding.where()).isEqualTo("strong spirit");
        assertThat(finding.message())
                .isEqualTo("The price of strong spirit is not known; the least cost leaves it out.");
        assertThat(finding.remedy()).isEqualTo("Write its price, such as price: 22 EUR/L.");
    }

    @Test
    void theLeastSpiritIsTheStrongestOne() {
        Plan plan = twoSpirits("1 EUR/L", "90 EUR/L").aim(Aim.What.LEAST_SPIRIT).plan();
        assertThat(grams(plan, "weak spirit")).isZero();
        assertThat(plan.lines().get(1).millilitres().orElseThrow()).isCloseTo(375, within(1e-6));
    }

    @Test
    void theLeastWaterIsTheWeakestSpirit() {
        Plan plan = twoSpirits("90 EUR/L", "1 EUR/L").aim(Aim.What.LEAST_WATER).plan();
        assertThat(grams(plan, "strong spirit")).isZero();
        assertThat(plan.lines().get(0).millilitres().orElseThrow()).isCloseTo(750, within(1e-6));
    }

    @Test
    void whatIsToBeUsedUpGoesInFirst() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("30 %")
                .spirit("weak spirit", "40 %", "200 ml", "90 EUR/L")
                .spirit("strong spirit", "80 %", null, "1 EUR/L")
                .free("weak spirit", "strong spirit", "water")
                .useUp("weak spirit")
                .plan();
        assertThat(plan.lines().get(0).millilitres().orElseThrow()).isCloseTo(200, within(1e-6));
        // the other 220 mL of the 300 mL of alcohol
        assertThat(plan.lines().get(1).millilitres().orElseThrow()).isCloseTo(275, within(1e-6));
    }

    /** 300 mL of alcohol are wanted: by grams the large bottle alone would go in, by parts the small one goes first. */
    @Test
    void ofSeveralThatAreToBeUsedUpTheSmallBottleCountsAsMuchAsTheLarge() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("30 %")
                .spirit("small bottle", "80 %", "100 ml", null)
                .spirit("large bottle", "40 %", "2 L", null)
                .free("small bottle", "large bottle", "water")
                .useUp("small bottle", "large bottle")
                .plan();
        assertThat(plan.lines().get(0).millilitres().orElseThrow()).isCloseTo(100, within(1e-6));
        assertThat(plan.lines().get(1).millilitres().orElseThrow()).isCloseTo(550, within(1e-6));
    }

    @Test
    void aGenericIsUsedUpUnderTheNameOnTheLine() {
        Kitchen kitchen = new Kitchen().volume("1 L").sugar("100 g/L").free("simple syrup 1:1", "sugar", "water");
        Plan syrup = kitchen.useUp("simple syrup 1:1").plan();
        assertThat(grams(syrup, "simple syrup 1:1")).isCloseTo(200, within(1e-6));
        Plan crystals = kitchen.useUp("sugar").plan();
        assertThat(grams(crystals, "sugar")).isCloseTo(100, within(1e-6));
    }

    @Test
    void aRangeIsAimedAtItsMiddleUnlessAnAimWouldHaveItsEnd() {
        Kitchen kitchen = new Kitchen().volume("1 L").strength("20..30 %").free("vodka 40 %", "water");
        assertThat(kitchen.plan().lines().get(0).millilitres().orElseThrow()).isCloseTo(625, within(1e-6));
        Plan least = kitchen.aim(Aim.What.LEAST_SPIRIT).plan();
        assertThat(least.lines().get(0).millilitres().orElseThrow()).isCloseTo(500, within(1e-6));
        Plan most = kitchen.aim(Aim.What.LEAST_WATER).plan();
        assertThat(most.lines().get(0).millilitres().orElseThrow()).isCloseTo(750, within(1e-6));
    }

    @Test
    void aRangeWhoseMiddleIsOutOfReachIsMetWhereItCanBe() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("30..60 %")
                .free("vodka 40 %", "water")
                .plan();
        assertThat(plan.reached()).isTrue();
        assertThat(plan.lines().get(0).millilitres().orElseThrow()).isBetween(750 - 1e-6, 1000 + 1e-6);
    }

    /** Any other amounts that meet the same target cost at least as much. */
    @Test
    @Tag("property")
    void noOtherFeasibleAmountsCostLess() {
        for (long seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            double[] litrePrice = {
                1 + 20 * random.nextDouble(), 1 + 20 * random.nextDouble(), 1 + 20 * random.nextDouble()
            };
            Kitchen kitchen = new Kitchen().volume("1 L").strength("30 %");
            String[] names = {"first", "second", "third"};
            int[] percents = {35 + random.nextInt(10), 50 + random.nextInt(10), 70 + random.nextInt(20)};
            for (int i = 0; i < 3; i++) {
                kitchen.spirit(names[i], percents[i] + " %", null, Math.round(100 * litrePrice[i]) / 100.0 + " EUR/L");
            }
            double least = money(kitchen.free(names).free("water").plan());
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    double part = random.nextDouble();
                    double ofFirst = 1000 * part * 30.0 / percents[i];
                    double ofSecond = 1000 * (1 - part) * 30.0 / percents[j];
                    double other =
                            (ofFirst * Math.round(100 * litrePrice[i]) + ofSecond * Math.round(100 * litrePrice[j]))
                                    / 100000.0;
                    assertThat(least).as("seed %d", seed).isLessThanOrEqualTo(other + 1e-9);
                }
            }
        }
    }

    private static double money(Plan plan) {
        return plan.lines().stream()
                .mapToDouble(
                        line -> line.grams() * Cost.perGram(line.ingredient()).orElse(0))
                .sum();
    }

    @Test
    void sugarInLiquidsCountsOnTheBasisAsked() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .sugarAs(org.stillroom.core.recipe.SugarBasis.AS_INVERT)
                .sugar("100 g/L")
                .free("sugar", "water")
                .plan();
        // one sucrose (342.297 g/mol) makes two hexoses (180.156 g/mol)
        assertThat(grams(plan, "sugar")).isCloseTo(100 * 342.297 / 360.312, within(1e-6));
        Plan glucose = new Kitchen()
                .volume("1 L")
                .sugarAs(org.stillroom.core.recipe.SugarBasis.AS_SUCROSE)
                .sugar("100 g/L")
                .free("glucose", "water")
                .plan();
        assertThat(grams(glucose, "glucose")).isCloseTo(100 * 360.312 / 342.297, within(1e-6));
        assertThat(glucose.liquid().grams(Substance.SUCROSE)).isZero();
    }
}
