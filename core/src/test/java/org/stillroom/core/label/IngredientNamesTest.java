package org.stillroom.core.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.reference.Tables;

class IngredientNamesTest {
    @ParameterizedTest
    @CsvSource({
        "sugar, sugar, Zucker",
        "White Sugar, White Sugar, Zucker",
        "Zucker, sugar, Zucker",
        "brauner Zucker, brown sugar, brauner Zucker",
        "lemon juice, lemon juice, Zitronensaft",
        "Zitronensaft, lemon juice, Zitronensaft",
        "sour cherries, sour cherries, Sauerkirschen",
        "Sauerkirschen, sour cherries, Sauerkirschen",
        "Aepfelsaeure, malic acid, Aepfelsaeure",
        "vodka 37.5 %, vodka 37.5 %, 'Wodka 37,5 % vol'",
        "'Wodka 37,5 % vol', vodka 37.5 % vol, 'Wodka 37,5 % vol'",
        "vodka 40, vodka 40, Wodka 40 % vol",
        "lactic acid 80 %, lactic acid 80 %, Milchsäure 80 %",
        "simple syrup 2:1, simple syrup 2:1, Zuckersirup 2:1",
    })
    void aNameThatIsKnownIsSaidInTheLanguageOfTheLabel(String typed, String english, String german) {
        assertThat(IngredientNames.in("en", typed)).isEqualTo(english);
        assertThat(IngredientNames.in("de", typed)).isEqualTo(german);
        assertThat(IngredientNames.in("fr", typed)).isEqualTo(typed);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Aunt Klara's syrup",
                "moonberry",
                "sugar from the mill",
                "lemon juice concentrate",
                "40 %",
                "sugar 2",
                "Hagebutten vom Hang",
                "vodka 40 % from the cellar",
                ""
            })
    void whatIsNotKnownWholeStaysAsItWasTyped(String typed) {
        assertThat(IngredientNames.in("de", typed)).isEqualTo(typed);
        assertThat(IngredientNames.in("en", typed)).isEqualTo(typed);
    }

    /** What the program offers by name is said in German, by each of its names; a few are the same in both. */
    @Test
    @Tag("property")
    void everyGenericIsKnown() {
        List<String> same = new ArrayList<>();
        for (Generic generic : Generics.list()) {
            List<String> names = new ArrayList<>(generic.otherNames());
            names.add(generic.ingredient().name());
            names.stream()
                    .filter(name -> IngredientNames.in("de", name).equals(name))
                    .forEach(same::add);
        }
        assertThat(same).containsExactlyInAnyOrder("glucose", "fructose", "vitamin c");
    }

    /** Each shown name means itself, there and back. */
    @Test
    @Tag("property")
    void everyShownNameMeansItself() {
        Tables.open("label/ingredient_names.csv").rows().forEach(row -> {
            String english = row.text("english").split(";", -1)[0];
            String german = row.text("german").split(";", -1)[0];
            assertThat(IngredientNames.in("de", english)).isEqualToIgnoringCase(german);
            assertThat(IngredientNames.in("en", german)).isEqualToIgnoringCase(english);
        });
    }
}
