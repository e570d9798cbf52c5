package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.stillroom.core.plan.Kitchen.finding;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Why a target cannot be reached and what would help, word for word, where the edges are plain from the recipe. */
class ShortfallTest {
    private static void says(List<Finding> findings, String rule, String message, String remedy) {
        Finding finding = finding(findings, rule);
        assertThat(finding.message()).isEqualTo(message);
        assertThat(finding.remedy()).isEqualTo(remedy);
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.verdict()).isEqualTo("cannot be reached");
    }

    @Test
    void vodkaReachesNoMoreThanItsOwnStrength() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("45 %")
                .free("vodka 40 %", "water")
                .plan();
        assertThat(plan.reached()).isFalse();
        assertThat(finding(plan.findings(), "strength-out-of-reach").where()).isEqualTo("target, strength");
        says(
                plan.findings(),
                "strength-out-of-reach",
                "With vodka 40 % and keeping to 1000.0 mL, the most you reach is 40.0 % vol, and 45.0 % vol is asked for.",
                "Ask for at most 40.0 % vol or use vodka 40 % of at least 45.0 % vol; one of them is enough.");
    }

    @Test
    void aSpiritAloneReachesNoLessThanItsStrength() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("30..35 %")
                .spirit("grape spirit", "40 %", null, null)
                .free("grape spirit")
                .plan();
        says(
                plan.findings(),
                "strength-out-of-reach",
                "With grape spirit (40 %) and keeping to 1000.0 mL, the least you reach is 40.0 % vol, and 35.0 % vol is asked for.",
                "Ask for at least 40.0 % vol.");
    }

    @Test
    void whatIsAtHandLimitsTheVolume() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("30 %")
                .sugar("0 g/L")
                .spirit("cask spirit", "60 %", "250 ml", null)
                .free("cask spirit", "water")
                .plan();
        // 60 % vol weighs 909.11 kg/m³ at 20 °C (OIML R 22 table, from memory): 500 mL of it are 455 g
        says(
                plan.findings(),
                "volume-out-of-reach",
                "With cask spirit (60 %) and keeping to 30.00 % vol and 0.0 g/L sugar as dissolved, the most you can make is "
                        + "500 mL, and 1000 mL is asked for.",
                "Ask for at most 500 mL, ask for at most 15.0 % vol or have at least 455 g (500 mL) of cask spirit;"
                        + " one of them is enough.");
    }

    @Test
    void aFixedAmountIsToBeMoreOrLess() {
        Kitchen tooLittle = new Kitchen()
                .volume("1 L")
                .strength("25 %")
                .amount("vodka 40 %", "500 ml")
                .free("water");
        assertThat(finding(tooLittle.plan().findings(), "strength-out-of-reach").remedy())
                .contains("ask for at most 20.0 % vol")
                .contains("take at least 593 g (625 mL) of vodka 40 %");
        Kitchen tooMuch = new Kitchen()
                .volume("1 L")
                .strength("25 %")
                .amount("vodka 40 %", "750 ml")
                .free("water");
        assertThat(finding(tooMuch.plan().findings(), "strength-out-of-reach").remedy())
                .contains("ask for at least 30.0 % vol")
                .contains("take at most 592 g (625 mL) of vodka 40 %");
    }

    @Test
    void aDoseIsToBeMoreOrLess() {
        Kitchen tooMuch =
                new Kitchen().volume("1 L").acidity("4 g/L").free("water").dose("citric acid", "5 g/L");
        says(
                tooMuch.plan().findings(),
                "acidity-out-of-reach",
                "With these lines and keeping to 1000.0 mL, the least you reach is 5.0 g/L as citric, and 4.0 g/L as citric is "
                        + "asked for.",
                "Ask for at least 5.0 g/L as citric or take at most 4.00 g of citric acid per litre; one of them is enough.");
        Kitchen tooLittle =
                new Kitchen().volume("1 L").acidity("12 g/L").free("water").dose("citric acid", "5 g/L");
        says(
                tooLittle.plan().findings(),
                "acidity-out-of-reach",
                "With these lines and keeping to 1000.0 mL, the most you reach is 5.0 g/L as citric, and 12.0 g/L as citric is "
                        + "asked for.",
                "Ask for at most 5.0 g/L as citric or take at least 12 g of citric acid per litre; one of them is enough.");
    }

    @Test
    void sugarIsNamedWithItsBasis() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .sugarAs(SugarBasis.AS_INVERT)
                .sugar("100 g/L")
                .amount("sugar", "50 g")
                .free("water")
                .plan();
        Finding finding = finding(plan.findings(), "sugar-out-of-reach");
        // 50 g of sucrose count as 52.63 g of invert sugar: 360.312 / 342.297 by molar masses
        assertThat(finding.message())
                .isEqualTo(
                        "With sugar and keeping to 1000.0 mL, the most you reach is 52.6 g/L, and 100.0 g/L is asked for.");
        assertThat(finding.remedy())
                .isEqualTo("Ask for at most 526 mL, ask for at most 52.6 g/L sugar or take at least 96 g of sugar;"
                        + " one of them is enough.");
    }

    @Test
    void whereTwoThingsStandInTheWayNoSingleChangeHelps() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("20 %")
                .sugar("100..120 g/L")
                .free("water")
                .plan();
        says(
                plan.findings(),
                "target-out-of-reach",
                "With these lines 1000.0 mL, 20.00 % vol and 100.0 to 120.0 g/L sugar as dissolved cannot be reached together; "
                        + "the nearest is 1000.0 mL, 0.00 % vol and 0.0 g/L sugar as dissolved.",
                "No single change of a target, a strength or an amount does it: change two, or free a line.");
    }

    @Test
    void dosesThatFillMoreThanALitreLeaveNothingToMake() {
        Kitchen kitchen = new Kitchen()
                .volume("1 L")
                .strength("30 %")
                .ingredient(Ingredient.named("lemon oil", Kind.ESSENTIAL_OIL))
                .dose("lemon oil", "2000 g/L")
                .free("spirit 96 %", "water");
        assertThat(kitchen.refused())
                .extracting(Finding::message)
                .containsExactly("Nothing can be made so: what is dosed per litre fills more than a litre by itself.");
    }

    @Test
    void whatIsBesideTheTargetByLessThanAMeasureShowsIsTaken() {
        Kitchen kitchen = new Kitchen().strength("40.04 %").amount("vodka 40 %", "1 kg");
        Plan plan = kitchen.plan();
        assertThat(plan.reached()).isTrue();
        Finding finding = finding(plan.findings(), "beside-the-target");
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding.message())
                .isEqualTo(
                        "The amounts leave no play: the plan comes to 40.00 % vol, where 40.04 % vol was asked for.");
        assertThat(finding.remedy()).isEqualTo("Make one line free if it is to land exactly.");
        assertThat(new Kitchen()
                        .strength("39.96 %")
                        .amount("vodka 40 %", "1 kg")
                        .plan()
                        .reached())
                .isTrue();
        assertThat(new Kitchen()
                        .strength("40.06 %")
                        .amount("vodka 40 %", "1 kg")
                        .plan()
                        .reached())
                .isFalse();
        assertThat(new Kitchen()
                        .strength("39.94 %")
                        .amount("vodka 40 %", "1 kg")
                        .plan()
                        .reached())
                .isFalse();
    }

    private static Plan fixedVolume(String volume) {
        return new Kitchen().volume(volume).amount("vodka 40 %", "1 L").plan();
    }

    private static Plan fixedSugar(String sugar) {
        return new Kitchen()
                .sugar(sugar)
                .contains("sweet water", Kind.SYRUP, java.util.Map.of(Substance.SUCROSE, "100 g/L"))
                .amount("sweet water", "1 L")
                .plan();
    }

    private static Plan fixedAcidity(String acidity) {
        return new Kitchen()
                .acidity(acidity)
                .contains("sour water", Kind.OTHER, java.util.Map.of(Substance.CITRIC, "5 g/L"))
                .amount("sour water", "1 L")
                .plan();
    }

    @Test
    void aThousandthOfTheVolumeHalfAGramOfSugarAndATwentiethOfAcidAreNotSeen() {
        assertThat(fixedVolume("1000.9 ml").reached()).isTrue();
        assertThat(fixedVolume("1001.1 ml").reached()).isFalse();
        assertThat(fixedSugar("100.4 g/L").reached()).isTrue();
        assertThat(fixedSugar("100.6 g/L").reached()).isFalse();
        assertThat(fixedAcidity("5.04 g/L").reached()).isTrue();
        assertThat(fixedAcidity("5.06 g/L").reached()).isFalse();
    }

    @Test
    void listsAreJoinedAsInASentence() {
        assertThat(Shortfall.joined(List.of(), "and")).isEmpty();
        assertThat(Shortfall.joined(List.of("a"), "and")).isEqualTo("a");
        assertThat(Shortfall.joined(List.of("a", "b"), "and")).isEqualTo("a and b");
        assertThat(Shortfall.joined(List.of("a", "b", "c"), "or")).isEqualTo("a, b or c");
    }

    @Test
    void aBoundIsRoundedToTheSafeSide() {
        assertThat(Words.bound(30, 35.12, 1)).isEqualTo("35.2");
        assertThat(Words.bound(40, 35.18, 1)).isEqualTo("35.1");
        assertThat(Words.bound(45, 40.0 - 5e-6, 1)).isEqualTo("40.0");
        assertThat(Words.bound(35, 40.0 + 5e-6, 1)).isEqualTo("40.0");
        assertThat(Words.bound(300, 455.4, 0)).isEqualTo("456");
    }

    @Test
    void gramsAreWrittenAsFineAsAScaleShowsThem() {
        assertThat(Words.grams(100)).isEqualTo("100 g");
        assertThat(Words.grams(99.96)).isEqualTo("100.0 g");
        assertThat(Words.grams(1)).isEqualTo("1.0 g");
        assertThat(Words.grams(0.9994)).isEqualTo("999 mg");
    }
}
