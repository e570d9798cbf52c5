package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.core.plan.Kitchen.finding;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Loss;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What a plan says beside its amounts, word for word. */
class PlanFindingsTest {
    private static void says(Finding finding, Severity severity, String where, String message, String remedy) {
        assertThat(finding.severity()).isEqualTo(severity);
        assertThat(finding.where()).isEqualTo(where);
        assertThat(finding.message()).isEqualTo(message);
        assertThat(finding.remedy()).isEqualTo(remedy);
    }

    private static List<String> rules(Plan plan) {
        return plan.findings().stream().map(Finding::rule).toList();
    }

    @Test
    void aRecipeWithoutAnyAmountIsPlannedForOneLitre() {
        Plan plan = new Kitchen().strength("20 %").free("vodka 40 %", "water").plan();
        assertThat(plan.millilitres()).isCloseTo(1000, org.assertj.core.api.Assertions.within(1e-9));
        says(
                finding(plan.findings(), "volume-assumed"),
                Severity.NOTE,
                "target, volume",
                "No volume is asked for and no line has an amount of its own: planned for 1 L.",
                "Write how much you want under target: volume, or plan with --makes.");
    }

    @Test
    void anAmountOfItsOwnIsEnoughToPlanFor() {
        Plan plan = new Kitchen()
                .strength("20 %")
                .amount("vodka 40 %", "100 ml")
                .free("water")
                .plan();
        assertThat(rules(plan)).isEmpty();
        assertThat(plan.millilitres()).isCloseTo(200, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void aRecipeWithoutLinesIsRefused() {
        List<Finding> refused = new Kitchen().volume("1 L").refused();
        assertThat(refused).hasSize(1);
        says(refused.get(0), Severity.STOP, "", "The recipe has no lines.", "Write at least one line: what goes in.");
    }

    @Test
    void everyProblemIsSaidTogether() {
        List<Finding> refused = new Kitchen()
                .spirit("cask spirit", "60 %", null, null)
                .all("cask spirit")
                .makeUp("water")
                .free("moon dust")
                .refused();
        assertThat(refused).hasSize(3);
        says(
                finding(refused, "all-of-what"),
                Severity.STOP,
                "line 1, cask spirit",
                "All of cask spirit is asked for, but not said how much there is.",
                "Write at hand with the ingredient, such as at hand: 1096 ml.");
        says(
                finding(refused, "make-up-to-what"),
                Severity.STOP,
                "line 2, water",
                "water is to make up a volume, but no volume is asked for.",
                "Write the volume of the mark under target: volume.");
        says(
                finding(refused, "ingredient-unknown"),
                Severity.STOP,
                "moon dust",
                "No ingredient is called moon dust.",
                "List it under ingredients, or use the name of one that is.");
    }

    @Test
    void anUnknownIngredientAloneIsNotAnEmptyRecipe() {
        assertThat(new Kitchen().volume("1 L").free("moon dust").refused()).hasSize(1);
    }

    @Test
    void anIngredientUsedTwiceIsWorkedOutOnce() {
        List<Finding> findings = new Kitchen()
                .bought("balm", Kind.DRIED_PLANT, null, null, null, null)
                .amount("vodka 40 %", "1 kg")
                .amount("balm", "10 g")
                .amount("balm", "20 g")
                .plan()
                .findings();
        assertThat(finding(findings, "ingredient-assumed").where()).isEqualTo("balm");
    }

    @Test
    void moreThanIsAtHandIsSaidWithWhatIsWanting() {
        Plan plan = new Kitchen()
                .spirit("cask spirit", "60 %", "800 g", null)
                .amount("cask spirit", "1050.5 g")
                .plan();
        says(
                finding(plan.findings(), "more-than-at-hand"),
                Severity.CAUTION,
                "line 1, cask spirit",
                "1050.5 g is asked for, and 800 g is at hand: 251 g are wanting.",
                "Get more of it, or ask for less.");
        assertThat(Kitchen.grams(plan, "cask spirit")).isEqualTo(1050.5);
    }

    @Test
    void aDoseThatComesToMoreThanThereIsIsSaid() {
        Kitchen kitchen = new Kitchen()
                .bought("bay oil", Kind.ESSENTIAL_OIL, null, null, "300 mg", null)
                .free("vodka 40 %")
                .dose("bay oil", "0.25 g/L");
        says(
                finding(kitchen.volume("2 L").plan().findings(), "more-than-at-hand"),
                Severity.CAUTION,
                "line 2, bay oil",
                "0.25 g/L is asked for, and 300 mg is at hand: 200 mg are wanting.",
                "Get more of it, or ask for less.");
        assertThat(rules(kitchen.volume("1.2 L").plan())).isEmpty();
    }

    @Test
    void whatIsToBeUsedUpNeedsAnEnd() {
        Kitchen kitchen =
                new Kitchen().amount("sugar", "100 g").free("vodka 40 %").useUp("vodka 40 %");
        List<Finding> refused = kitchen.refused();
        assertThat(refused).hasSize(1);
        says(
                refused.get(0),
                Severity.STOP,
                "aim",
                "As much vodka 40 % as can be is to be used up, and nothing says how much that is.",
                "Write at hand with vodka 40 %, or a volume under target.");
        assertThat(kitchen.volume("1 L").plan().reached()).isTrue();
    }

    @Test
    void justWhatIsAtHandIsEnough() {
        Plan plan = new Kitchen()
                .spirit("cask spirit", "60 %", "800 g", null)
                .amount("cask spirit", "800 g")
                .plan();
        assertThat(rules(plan)).isEmpty();
    }

    @Test
    void allOfWhatThereIsGoesIn() {
        Plan plan = new Kitchen()
                .spirit("cask spirit", "60 %", "800 g", null)
                .strength("30 %")
                .all("cask spirit")
                .free("water")
                .plan();
        assertThat(Kitchen.grams(plan, "cask spirit")).isEqualTo(800);
        assertThat(plan.reached()).isTrue();
    }

    @Test
    void aVolumeOfGrainsWhoseWeightIsNotKnownIsAskedFor() {
        List<Finding> refused = new Kitchen()
                .bought("balm", Kind.DRIED_PLANT, null, null, null, null)
                .amount("vodka 40 %", "1 kg")
                .amount("balm", "30 ml")
                .refused();
        says(
                finding(refused, "volume-of-solid"),
                Severity.STOP,
                "balm",
                "balm, amount 30 ml: how much a millilitre of it weighs is not known.",
                "Give a mass, or write what a measured volume of it weighs as its density.");
    }

    @Test
    void theSameHoldsForADoseAndForWhatIsAtHand() {
        List<Finding> dose = new Kitchen()
                .volume("1 L")
                .bought("balm", Kind.DRIED_PLANT, null, null, null, null)
                .free("vodka 40 %")
                .dose("balm", "30 ml/L")
                .refused();
        assertThat(finding(dose, "volume-of-solid").message()).startsWith("balm, dose 30 ml/L:");
        List<Finding> atHand = new Kitchen()
                .volume("1 L")
                .bought("balm", Kind.DRIED_PLANT, null, null, "30 ml", null)
                .free("vodka 40 %", "balm")
                .refused();
        assertThat(finding(atHand, "volume-of-solid").message()).startsWith("balm, at hand 30 ml:");
    }

    /** A drop of water from the official dropper weighs 50 mg (European Pharmacopoeia 2.1.1, from memory). */
    @Test
    void aDropThatNobodyWeighedIsThatOfTheOfficialDropper() {
        Plan plan = new Kitchen()
                .amount("vodka 40 %", "1 kg")
                .bought("own water", Kind.WATER, null, null, null, null)
                .amount("own water", "20 drops")
                .plan();
        Finding finding = finding(plan.findings(), "drop-estimated");
        says(
                finding,
                Severity.CAUTION,
                "own water",
                "A drop of own water is taken as 50.0 mg, that of the official dropper.",
                "Weigh 20 to 50 drops of it from your dropper and write what one weighs: drop: 50.0 mg.");
        assertThat(finding.howSure()).isEqualTo("droppers differ: 30 % either way is common");
        assertThat(Kitchen.grams(plan, "own water")).isCloseTo(1.0, org.assertj.core.api.Assertions.within(0.005));
    }

    /** A drop of water weighs 46 mg from this dropper; of lemon oil 46 · 27.5 / 72.75 mg by Tate's law (tension from memory). */
    @Test
    @Tag("property")
    void aDropFollowsTheMakersDropperByItsDropOfWaterUnlessItWasWeighedItself() {
        Measure dropper = new Measure(
                "pipette", MeasureKind.DROPPER, null, null, null, List.of(), new Typed<>("46 mg", new Mass(0.046)));
        Plan plan = new Kitchen()
                .amount("vodka 40 %", "1 kg")
                .bought("lemon oil", Kind.ESSENTIAL_OIL, null, null, null, null)
                .bought("bay oil", Kind.ESSENTIAL_OIL, "25 mg", null, null, null)
                .amount("lemon oil", "10 drops")
                .amount("bay oil", "10 drops")
                .plan(dropper);
        assertThat(Kitchen.grams(plan, "lemon oil"))
                .isCloseTo(0.46 * 27.5 / 72.75, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(Kitchen.grams(plan, "bay oil")).isCloseTo(0.25, org.assertj.core.api.Assertions.within(1e-12));
        Finding finding = finding(plan.findings(), "drop-by-own-dropper");
        says(
                finding,
                Severity.NOTE,
                "lemon oil",
                "A drop of lemon oil is taken as 17.4 mg, by the drop of water from your dropper pipette, 46.0 mg,"
                        + " and the ratio of the surface tensions.",
                "Weigh 20 to 50 drops of it from your dropper and write what one weighs: drop: 17.4 mg.");
        assertThat(finding.howSure()).isEqualTo("a drop lies within 14 % of that in nine cases of ten");
        assertThat(rules(plan)).doesNotContain("drop-estimated");
    }

    @Test
    void aDropOfTheMakersOwnIsTakenByMassOrByVolume() {
        Plan mass = new Kitchen()
                .bought("bay oil", Kind.ESSENTIAL_OIL, "25 mg", null, null, null)
                .amount("vodka 40 %", "1 kg")
                .amount("bay oil", "8 drops")
                .plan();
        assertThat(Kitchen.grams(mass, "bay oil")).isCloseTo(0.2, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(rules(mass)).isEmpty();
        Plan volume = new Kitchen()
                .bought("own water", Kind.WATER, "0.04 ml", null, null, null)
                .amount("vodka 40 %", "1 kg")
                .amount("own water", "10 drops")
                .plan();
        // water at 20 °C: 998.2 kg/m³
        assertThat(Kitchen.grams(volume, "own water")).isCloseTo(0.39928, org.assertj.core.api.Assertions.within(1e-5));
    }

    @Test
    void aLineThatTheTargetTakesNothingOfIsSaid() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("40 %")
                .free("vodka 40 %", "sugar")
                .plan();
        says(
                finding(plan.findings(), "line-not-needed"),
                Severity.NOTE,
                "line 2, sugar",
                "The target takes no sugar.",
                "Leave it out, or name an aim such as use up sugar.");
    }

    @Test
    void aLineUpToTheMarkSaysWhatIsMeasured() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .amount("vodka 40 %", "500 ml")
                .makeUp("water")
                .plan();
        assertThat(rules(plan)).containsExactly("made-up-to-the-mark");
        says(
                plan.findings().get(0),
                Severity.NOTE,
                "line 2, water",
                "The volume is measured, so that it and the alcohol poured fix the strength, whatever the sugar's error.",
                "Fill to the mark only when all is dissolved and at room temperature.");
    }

    @Test
    void aVesselNeedsATenthToStirIn() {
        Plan plan =
                new Kitchen().volume("910 ml").vessel("1 L").free("vodka 40 %").plan();
        Finding finding = finding(plan.findings(), "vessel-too-small");
        says(
                finding,
                Severity.CAUTION,
                "vessel",
                "910 mL do not fit a vessel of 1 L with a tenth of it left free for stirring.",
                "Take a vessel of at least 1011 mL, or make less.");
        assertThat(finding.limit()).isEqualTo("900 mL");
        assertThat(rules(new Kitchen()
                        .volume("899 ml")
                        .vessel("1 L")
                        .free("vodka 40 %")
                        .plan()))
                .isEmpty();
    }

    @Test
    void aStageThatIsRefusedRefusesTheWhole() {
        Making empty = Making.alone(new Kitchen().volume("100 ml").recipe());
        List<Finding> refused = new Kitchen()
                .stage("essence", Kind.ESSENCE, "essence.yaml")
                .volume("1 L")
                .free("essence")
                .refused(Map.of("essence.yaml", empty));
        assertThat(refused).extracting(Finding::rule).containsExactly("recipe-empty");
    }

    @Test
    void aStageThatMissesItsTargetRefusesTheWhole() {
        Making weak = Making.alone(new Kitchen()
                .volume("100 ml")
                .strength("60 %")
                .free("vodka 40 %")
                .recipe());
        List<Finding> refused = new Kitchen()
                .stage("essence", Kind.ESSENCE, "essence.yaml")
                .volume("1 L")
                .free("essence")
                .refused(Map.of("essence.yaml", weak));
        assertThat(refused).extracting(Finding::rule).contains("strength-out-of-reach");
    }

    @Test
    void aStageThatLosesAllIsRefused() {
        Making lost = Making.alone(new Kitchen()
                .amount("vodka 40 %", "100 g")
                .loss(new Loss.Fixed(Kitchen.typed(Kitchen.TEXT.mass("100 g")).value()))
                .recipe());
        List<Finding> refused = new Kitchen()
                .stage("essence", Kind.ESSENCE, "essence.yaml")
                .volume("1 L")
                .free("essence")
                .refused(Map.of("essence.yaml", lost));
        assertThat(refused).hasSize(1);
        says(
                refused.get(0),
                Severity.STOP,
                "test",
                "The loss of test is more than all that it makes.",
                "Make more of it, or correct its loss.");
    }

    /** 500 g of spirit, 400 g of them asked for by another line: 100 g are left for the free one. */
    @Test
    void whatOneLineTakesIsNotAtHandForAnother() {
        Plan plan = new Kitchen()
                .spirit("spirit", "96 %", "500 g", null)
                .volume("1500 ml")
                .strength("40 %")
                .amount("spirit", "400 g")
                .free("spirit", "water")
                .plan();
        assertThat(plan.lines().get(0).grams()).isCloseTo(400.0, within(1e-9));
        assertThat(plan.lines().get(1).grams()).isCloseTo(100.0, within(1e-6));
        assertThat(plan.reached()).isFalse();
    }

    @Test
    void linesThatTogetherTakeTooMuchAreTold() {
        Plan plan = new Kitchen()
                .spirit("spirit", "96 %", "500 g", null)
                .amount("spirit", "300 g")
                .amount("spirit", "300 g")
                .amount("water", "400 g")
                .plan();
        Finding finding = finding(plan.findings(), "more-than-at-hand");
        assertThat(finding.where()).isEqualTo("all lines of spirit");
        assertThat(finding.message()).isEqualTo("600 g is asked for, and 500 g is at hand: 100 g are wanting.");
    }
}
