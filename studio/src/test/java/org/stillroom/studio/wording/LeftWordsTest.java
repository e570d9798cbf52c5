package org.stillroom.studio.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ageing;

/** Everything that keeps in its own way has its words. */
class LeftWordsTest {
    @Test
    void howEverythingKeepsIsSaidInBothLanguages() {
        for (Language language : List.of(Language.ENGLISH, Language.GERMAN)) {
            Words words = new Words(language, UnitSystem.METRIC);
            for (String key : Ageing.all().keySet()) {
                assertThat(words.say("left.keep." + key)).as(key).isNotBlank();
            }
        }
    }
}
