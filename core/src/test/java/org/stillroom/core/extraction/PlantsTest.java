package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlantsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dried gentian root | gentian root, dried",
                "Gentiana lutea | gentian root, dried",
                "gentian roots | gentian root, dried",
                "vanilla bean | vanilla beans",
                "vanilla pods | vanilla beans",
                "tonka | tonka beans",
                "Dipteryx odorata | tonka beans",
                "dried woodruff | sweet woodruff, dried",
                "woodruff, fresh | sweet woodruff, fresh",
                "peel of lemon | lemon peel",
                "fresh lemon peel | lemon peel",
                "dried lemon peel | lemon peel, dried",
                "plums, fresh | plum",
                "dried plums | prunes",
                "dried cinnamon | cinnamon",
                "Fresh strawberries | strawberry",
                "peppermint leaves, dried | null",
                "juniper berries | juniper berries, dried",
                "Sauerkirschen entsteint | sour cherry",
                "entsteinte Sauerkirschen, gewaschen | sour cherry",
                "pitted sour cherries | sour cherry",
                "stoned cherries | sweet cherry",
                "ripe strawberries, washed and halved | strawberry",
                "ripe strawberries, washed, halved | strawberry",
                "Erdbeeren, gehackt | strawberry",
                "frozen sour cherries | sour cherry",
            },
            nullValues = "null")
    void aNameIsReadInEveryOrderAndForm(String typed, String row) {
        Plant plant = Plants.find(typed);
        assertThat(plant == null ? null : plant.name()).isEqualTo(row);
    }

    /** A word more, or another state, is another plant: none is better than a wrong one. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "fresh gentian root",
                "dried apple",
                "coriander leaves",
                "lemon grass",
                "sweet flag",
                "bitter almond",
                "wood sage",
                "fresh cinnamon",
                "woodruff",
                "dried plum stones",
                "cherry stones",
                "sour cherries, not pitted",
                "unripe strawberries",
                "candied cherries",
                "white gentian root",
                "peel",
                "dried"
            })
    void noPlantPassesForAnother(String typed) {
        assertThat(Plants.find(typed)).isNull();
    }

    @Test
    void nearNamesAreThoseThatShareATellingWord() {
        assertThat(Plants.like("woodruff")).containsExactly("sweet woodruff, fresh", "sweet woodruff, dried");
        assertThat(Plants.like("bitter orange peel").get(0)).isEqualTo("bitter orange peel, dried");
        assertThat(Plants.like("dried root of moon")).isEmpty();
    }

    @Test
    void everyRowAnswersToItsOwnNames() {
        for (Plant plant : Plants.list()) {
            assertThat(Plants.find(plant.name())).isEqualTo(plant);
            plant.aliases()
                    .forEach(alias -> assertThat(Plants.find(alias)).as(alias).isEqualTo(plant));
        }
    }

    @Test
    void aPlantOfNoTableIsTakenByItsWordsAndItsWater() {
        assertThat(PlantSort.guess("yuzu", 0.88).key()).isEqualTo("fresh_fruit");
        assertThat(PlantSort.guess("yuzu peel", 0.8).key()).isEqualTo("fresh_peel");
        assertThat(PlantSort.guess("nettle leaves", 0.1).key()).isEqualTo("dried_leaf");
        assertThat(PlantSort.guess("galangal", 0.1).key()).isEqualTo("dried_root");
        Plant yuzu = Plant.own("yuzu", Objects.requireNonNull(PlantSort.find("fresh_fruit")), 0.9);
        assertThat(yuzu.sugar() - yuzu.sugarDoubt()).isZero();
        assertThat(yuzu.sugarBy()).isEqualTo(Plant.By.NOBODY);
        assertThat(yuzu.withSugar(0.02).sugarDoubt()).isZero();
    }
}
