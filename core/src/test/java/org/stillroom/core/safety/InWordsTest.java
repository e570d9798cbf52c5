package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What goes in by a step or a note alone is counted nowhere, and that is said; sentences of our own. */
class InWordsTest {
    private static Bench drink() {
        return new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Lay in a sprig of wormwood. | wormwood",
                "Grate in 5 g of tonka beans. | tonka",
                "Hang calamus root into the jar for a day. | calamus",
                "Boil cinchona bark in it. | cinchona",
                "Mit Chininsulfat abschmecken. | quinine",
                "Stir in a pinch of safrole. | safrole",
                "1 g of camphor goes in. | camphor",
                "Mit Wermutkraut ansetzen. | wormwood"
            })
    void whatGoesInByWordsAloneIsSaidNotToBeCounted(String step, String named) {
        assertThat(drink().step(step).findings(InWords.NAME)).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.where()).isEqualTo("step 1 of your own");
            assertThat(finding.message()).contains(named, "no line does");
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Stir in 100 g of honey. | honey",
                "Add a splash of grapefruit juice. | medicines",
                "Steep St John's wort for a week. | medicines",
                "Two handfuls of raw elderberries go in. | raw-elderberry"
            })
    void whatANameCallsForIsSaidOfWordsToo(String step, String rule) {
        assertThat(drink().step(step).findings(rule))
                .isNotEmpty()
                .allMatch(finding -> finding.where().equals("step 1 of your own"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Strain the wormwood out after a day.",
                "Let it rest for a week and filter it.",
                "Shake the jar once a day, keep it in the dark.",
                "Garnish with a leaf of basil."
            })
    void whatALineBringsAndWhatIsServedWithItIsNotSaidAgain(String step) {
        Bench drink = new Bench()
                .strong("wormwood tincture", Kind.TINCTURE, 40.0, 10.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(drink.step(step).findings(InWords.NAME)).isEmpty();
    }

    @Test
    void ofADrinkThatIsSoNotEverythingIsKnown() {
        assertThat(drink().step("Lay in a sprig of wormwood.").safety().tellsUnknown())
                .isTrue();
    }

    @Test
    void whatANoteOnlySpeaksOfIsNotCountedEither() {
        List<Finding> said = drink().notes("Tastes of wormwood.").findings(InWords.NAME);
        assertThat(said).isEmpty();
        assertThat(drink().notes("Wormwood was added for a day.").findings(InWords.NAME))
                .hasSize(1);
    }
}
