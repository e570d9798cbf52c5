package org.stillroom.planner.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.DOUBLE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.recipe.Making;
import org.stillroom.planner.marks.Kitchen;

class ExplorationsTest {
    private static final List<AlcoholByVolume> STRENGTHS =
            List.of(AlcoholByVolume.at20(40), AlcoholByVolume.at20(50), AlcoholByVolume.at20(96));

    private static Kitchen liqueur() {
        return new Kitchen()
                .volume("1 L")
                .strength("38 %")
                .sugar("200 g/L")
                .free("spirit 96 %", "white sugar", "water");
    }

    @Test
    void eachStrengthHasItsAmountsOrItsReason() {
        Exploration table = Explorations.spirits(Making.alone(liqueur().recipe()), STRENGTHS);
        assertThat(table.changed()).containsExactly("spirit 96 %");
        assertThat(table.rows()).extracting(Exploration.Row::reached).containsExactly(false, true, true);
        assertThat(table.rows().get(0).findings()).isNotEmpty();
        for (Exploration.Row row : table.rows().subList(1, 3)) {
            assertThat(row.result()).extracting(Essentials::strength, DOUBLE).isCloseTo(38.0, within(1e-6));
        }
    }

    @Test
    void theRecipesOwnStrengthGivesTheRecipesOwnPlan() {
        Exploration table = Explorations.spirits(Making.alone(liqueur().recipe()), STRENGTHS);
        assertThat(table.rows().get(2).lines())
                .extracting(PlannedLine::grams)
                .isEqualTo(liqueur().plan().lines().stream()
                        .map(PlannedLine::grams)
                        .toList());
    }

    @Test
    void withoutASpiritToChangeThereIsNoTable() {
        Kitchen kitchen = new Kitchen().amount("vodka 40 %", "500 ml").amount("white sugar", "100 g");
        Exploration table = Explorations.spirits(Making.alone(kitchen.recipe()), STRENGTHS);
        assertThat(table.changed()).isEmpty();
        assertThat(table.rows()).isEmpty();
    }
}
