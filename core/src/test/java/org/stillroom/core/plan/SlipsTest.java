package org.stillroom.core.plan;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Meant;
import org.stillroom.core.recipe.Purpose;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Scaling;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.tasting.OdourThreshold;

class SlipsTest {
    private static final String CITRONELLOL = "106-22-9";

    private static List<Finding> slips(String oil, String amount, String spirit) {
        Plan plan = new Kitchen()
                .amount(spirit, "1 kg")
                .bought(oil, Kind.ESSENTIAL_OIL, "25 mg", null, null, null)
                .amount(oil, amount)
                .plan();
        return plan.findings().stream()
                .filter(each -> each.rule().startsWith("dose-"))
                .toList();
    }

    @Test
    void millilitresWhereDropsWereMeantAreAsked() {
        Finding asked = slips("clove oil", "4 ml", "vodka 40 %").get(0);
        assertThat(asked.rule()).isEqualTo("dose-implausible");
        assertThat(asked.verdict()).isEqualTo("is this meant?");
        assertThat(asked.remedy()).startsWith("If drops were meant, write 4 drops.");
        assertThat(slips("clove oil", "4 drops", "vodka 40 %")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "lemon oil, 1.5 g, 0",
        "lemon oil, 5 g, 1",
        "anise oil, 2 g, 0",
        "anise oil, 8 g, 1",
        "thyme oil, 0.2 g, 0",
        "thyme oil, 2 g, 1",
        "juniper oil, 0.2 g, 0",
        "peppermint oil, 0.4 g, 0",
        "sweet orange oil, 1 g, 0",
        "sweet orange oil, 10 g, 1",
        "rose oil, 0.01 g, 0",
        "rose oil, 0.11 g, 1",
        "neroli oil, 0.04 g, 0",
        "neroli oil, 0.4 g, 1",
        "cassia oil, 0.04 g, 0",
        "cassia oil, 0.42 g, 1",
        "clove bud oil, 0.05 g, 0",
        "clove bud oil, 0.42 g, 1"
    })
    void theBoundFollowsWhatTheOilIsMadeOf(String oil, String amount, int asked) {
        assertThat(slips(oil, amount, "vodka 40 %")).hasSize(asked);
    }

    /** What the finding says of rose follows from the tables: least part of citronellol, highest threshold of it in water. */
    @Test
    void theQuestionSaysHowFarANoteStandsAboveItsThreshold() {
        Material.Analysis rose =
                requireNonNull(requireNonNull(Materials.find("rose")).analysis());
        double least = requireNonNull(rose.percent().get(CITRONELLOL)).low() / 100.0;
        double over = 1e6
                * least
                / requireNonNull(OdourThreshold.of(CITRONELLOL, 0.0)).high();
        Finding asked = Slips.ofDose("rose oil", null, 1.0).orElseThrow();
        assertThat(asked.message())
                .endsWith("It then holds citronellol at " + Math.round(over) + " times or more the least that is smelt"
                        + " of it in water.");
        double most = Math.sqrt(0.5 * MostOil.TIMES / over);
        assertThat(Slips.ofDose("rose oil", null, 1.001 * most)).isPresent();
        assertThat(Slips.ofDose("rose oil", null, 0.999 * most)).isEmpty();
    }

    /** Of ginger no constituent has a threshold in the table, so that it stays at the bound of its class. */
    @Test
    void anOilWithoutKnownThresholdsStaysAtTheBoundOfItsClass() {
        assertThat(Slips.ofDose("ginger oil", null, 0.49)).isEmpty();
        Finding asked = Slips.ofDose("ginger oil", null, 0.51).orElseThrow();
        assertThat(asked.message()).doesNotContain("smelt");
        assertThat(asked.limit()).isEqualTo("0.50 g/L");
    }

    @Test
    void onlyARecipeThatSaysSoIsAnEssenceWhateverItsStrength() {
        Kitchen essence = new Kitchen()
                .amount("spirit 96 %", "1 kg")
                .bought("clove oil", Kind.ESSENTIAL_OIL, "25 mg", null, null, null)
                .amount("clove oil", "30 g");
        assertThat(essence.plan().findings()).extracting(Finding::rule).contains("dose-implausible");
        assertThat(essence.makes(Purpose.ESSENCE).plan().findings())
                .extracting(Finding::rule)
                .doesNotContain("dose-implausible");
    }

    @Test
    void aDoseOfWhichNothingIsSmeltIsAskedToo() {
        assertThat(slips("caraway oil", "0.001 mg", "vodka 40 %"))
                .extracting(Finding::rule)
                .containsExactly("dose-not-smelt");
    }

    /** The answer holds for that oil and for no more of it: scaling without the doses, or another bottle, asks again. */
    @Test
    void anAnswerHoldsForThatOilAndDoseAlone() {
        Kitchen kitchen = new Kitchen()
                .amount("vodka 40 %", "1 kg")
                .bought("clove oil", Kind.ESSENTIAL_OIL, "25 mg", null, null, null)
                .amount("clove oil", "4 ml");
        Slips.Asked asked = Slips.asked(kitchen.plan()).get(0);
        assertThat(asked.answer().text()).matches("3\\.\\d+ g/L of clove oil");
        Recipe recipe = kitchen.recipe();
        Line meant = recipe.lines().get(1).meaning(asked.answer());
        Recipe answered = recipe.withLines(List.of(recipe.lines().get(0), meant));
        assertThat(askedOf(answered)).isEmpty();
        assertThat(verdicts(answered)).containsExactly("meant, says its maker");
        assertThat(askedOf(Scaling.times(Making.alone(answered), 3.0).recipe())).isEmpty();
        Line half =
                new Kitchen().amount("vodka 40 %", "0.5 kg").recipe().lines().get(0);
        assertThat(askedOf(recipe.withLines(List.of(half, meant)))).hasSize(1);
        Line other = new Line(meant.use(), meant.amount(), null, null, Meant.of(9.0, "anise oil"));
        assertThat(askedOf(recipe.withLines(List.of(recipe.lines().get(0), other))))
                .hasSize(1);
    }

    private static Plan planned(Recipe recipe) {
        return ((Planning.Planned) Planner.plan(Making.alone(recipe))).plan();
    }

    private static List<Slips.Asked> askedOf(Recipe recipe) {
        return Slips.asked(planned(recipe));
    }

    private static List<String> verdicts(Recipe recipe) {
        return planned(recipe).findings().stream()
                .filter(each -> each.rule().equals("dose-implausible"))
                .map(Finding::verdict)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "lemon oil, lemon essence 1:10, true",
        "clove bud oil, clove leaf oil, true",
        "bitter orange oil, sweet orange oil, true",
        "my old thyme oil, Thyme essence, true",
        "mace oil, maca tincture, true",
        "lemon oil, lemon oil, false",
        "lime oil, lemon oil, false",
        "clove bud oil, bay leaf oil, false",
        "anise oil, angelica root oil, false",
        "caraway oil, cardamom oil, false"
    })
    void namesAreAlikeByAWordOrASlipOfALetter(String one, String other, boolean alike) {
        assertThat(LookAlikes.areAlike(one, other)).isEqualTo(alike);
        assertThat(LookAlikes.areAlike(other, one)).isEqualTo(alike);
    }

    @Test
    void bottlesThatBeginAlikeAreNamed() {
        Plan plan = new Kitchen()
                .amount("vodka 40 %", "1 kg")
                .bought("clove bud oil", Kind.ESSENTIAL_OIL, "25 mg", null, null, null)
                .bought("clove leaf oil", Kind.ESSENTIAL_OIL, "25 mg", null, null, null)
                .amount("clove bud oil", "2 drops")
                .amount("clove leaf oil", "1 drops")
                .plan();
        assertThat(plan.findings()).extracting(Finding::rule).contains("look-alike-bottles");
    }
}
