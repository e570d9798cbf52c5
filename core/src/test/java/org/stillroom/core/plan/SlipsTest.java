package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.recipe.Purpose;
import org.stillroom.core.reference.Finding;

class SlipsTest {
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
        "thyme oil, 0.3 g, 0",
        "thyme oil, 3 g, 1"
    })
    void theBoundFollowsWhatTheOilIsMadeOf(String oil, String amount, int asked) {
        assertThat(slips(oil, amount, "vodka 40 %")).hasSize(asked);
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
