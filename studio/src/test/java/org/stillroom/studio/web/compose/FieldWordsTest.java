package org.stillroom.studio.web.compose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** What the fields of a recipe are called. */
class FieldWordsTest {
    private static final Words WORDS = new Words(Language.ENGLISH, UnitSystem.METRIC);

    @ParameterizedTest
    @CsvSource({
        "target.strength, strength",
        "lines.1.use, Line 2: ingredient",
        "lines.2, Line 3",
        "ingredients.0.at hand, Ingredient 1: at hand",
        "ingredients.0.contains.malic, Ingredient 1: contains malic",
        "steps.0, Step 1",
        "steps, the steps",
        "title, name"
    })
    void aFieldIsToldInWords(String field, String words) {
        assertThat(FieldWords.of(field, WORDS)).isEqualTo(words);
    }
}
