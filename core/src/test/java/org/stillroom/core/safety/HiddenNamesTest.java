package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Poisons, grades and origins that hide in a German name or in a note. */
class HiddenNamesTest {
    private static Bench with(String name, Kind kind) {
        return new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                .holding(name, kind, Substance.WATER, 90.0, 10.0);
    }

    @ParameterizedTest
    @CsvSource({
        "Sassafrasöl, ESSENTIAL_OIL",
        "Fenchelholzöl, ESSENTIAL_OIL",
        "Sassafraswurzel, DRIED_PLANT",
        "Sassafrasrinde, DRIED_PLANT",
        "Wurmsamenöl, ESSENTIAL_OIL",
        "Costusöl, ESSENTIAL_OIL",
        "Kostuswurzelöl, ESSENTIAL_OIL",
        "Ocoteaöl, ESSENTIAL_OIL",
        "Zigarre, DRIED_PLANT",
        "grüne Kartoffel, FRESH_PLANT",
        "Lavendelöl Kosmetik, ESSENTIAL_OIL",
        "Kosmetisches Basiswasser, SPIRIT",
    })
    void whatStopsInEnglishStopsInGerman(String name, Kind kind) {
        Bench drink = kind == Kind.ESSENTIAL_OIL
                ? new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0).grams(name, kind, 0.1)
                : kind == Kind.SPIRIT ? new Bench().strong(name, kind, 90.0, 500.0) : with(name, kind);
        assertThat(drink.safety().findings()).as(name).anyMatch(Rules::isNotForDrinking);
    }

    @ParameterizedTest
    @ValueSource(strings = {"moonshine", "homemade grappa", "Selbstgebrannter", "spirit of unknown origin"})
    void spiritThatNobodyAnswersForIsAsked(String name) {
        assertThat(new Bench().strong(name, Kind.SPIRIT, 50.0, 500.0).findings("wrong-alcohol"))
                .extracting(Finding::severity)
                .contains(Severity.CAUTION);
    }

    @Test
    void oilsInADrinkWithoutAlcoholAreNotForEveryone() {
        Bench syrup = new Bench()
                .holding("water", Kind.WATER, Substance.WATER, 100.0, 900.0)
                .grams("eucalyptus oil", Kind.ESSENTIAL_OIL, 0.2);
        assertThat(syrup.findings("who-should-not"))
                .singleElement()
                .extracting(Finding::message)
                .asString()
                .contains("children", "pregnancy", "epilepsy", "pets");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fragrance grade",
                "cosmetic quality, for soap",
                "Not for internal use",
                "Kosmetikqualität",
                "10 % in DPG",
                "nur zur äußerlichen Anwendung"
            })
    void theGradeOfAnOilIsReadFromItsNoteToo(String note) {
        assertThat(noted(note)).anyMatch(Rules::isNotForDrinking);
    }

    @ParameterizedTest
    @ValueSource(strings = {"food grade", "bought as flavouring, no cosmetic grade", "keep cold"})
    void aNoteThatSaysNoSuchGradeStopsNothing(String note) {
        assertThat(noted(note)).noneMatch(Rules::isNotForDrinking);
    }

    private static List<Finding> noted(String note) {
        return new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                .grams("rose oil", Kind.ESSENTIAL_OIL, 0.01)
                .note(note)
                .safety()
                .findings();
    }
}
