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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "with a grated tonka bean | tonka",
                "with a piece of calamus root | calamus",
                "two drops of sage oil in it | sage",
                "a sprig of wormwood | wormwood",
                "plus thirty peach kernels | peach kernel",
                "with a spoon of camphor | camphor",
                "with cinchona bark | cinchona",
                "mit Rainfarn | tansy",
                "with St. John's wort | St John's wort",
                "mit einer Tonkabohne | tonka"
            })
    void theNoteOfALineAndOfAnIngredientIsReadForWhatStandsWithIt(String note, String named) {
        Bench noted = drink().grams("dried lemon balm", Kind.DRIED_PLANT, 4.0).note(note);
        assertThat(noted.findings(InWords.NAME)).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.where()).isEqualTo("dried lemon balm");
            assertThat(finding.message()).contains(named, "no line does");
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Some grated tonka bean goes in as well.",
                "A grated tonka bean goes in.",
                "Steep a tonka bean in it.",
                "Tonka bean, grated, 1 piece.",
                "With tonka.",
                "Put a tonka bean in the jar.",
                "A tonka bean for the bottle.",
                "Drop in a tonka bean",
                "Season with tonka",
                "Take one tonka bean. Grate it and put it in.",
                "Do not forget to add the tonka bean.",
                "Not too much tonka: put in half a bean.",
                "Eine Tonkabohne kommt dazu",
                "Man gibt eine Tonkabohne hinein",
                "Mit Tonkabohne ansetzen",
                "Tonkabohne dazugeben",
                "Lege eine Tonkabohne ein",
                "A tonka bean, 1 g, joins the jar"
            })
    void aNoteSaysInManyWaysThatSomethingGoesIn(String note) {
        assertThat(drink().notes(note).findings(InWords.NAME)).hasSize(1);
        Bench main = drink().drawing("first", drink().notes(note), 10.0);
        assertThat(main.findings(InWords.NAME)).as("of a stage").hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Put vanilla in the jar, no tonka.",
                "Season with vanilla. Never use tonka.",
                "Flavoured with vanilla, tastes like tonka.",
                "Put in vanilla instead of tonka.",
                "Inspired by a liqueur with tonka.",
                "Goes well with tonka ice.",
                "Mit Vanille ansetzen, ohne Tonkabohne.",
                "Mit Vanille, schmeckt nach Tonkabohne.",
                "Tonka is bitter."
            })
    void aNoteThatDeniesAThingOrOnlySpeaksOfItAsksNothing(String note) {
        assertThat(drink().notes(note).findings(InWords.NAME)).isEmpty();
        assertThat(drink().notes(note).findings("plant")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Stir it until it tastes like tonka.",
                "Do not add tonka.",
                "Serve with tonka ice.",
                "Ohne Tonkabohne ansetzen."
            })
    void aStepThatDeniesAThingOrOnlySpeaksOfItAsksNothing(String step) {
        assertThat(drink().step(step).findings(InWords.NAME)).isEmpty();
        assertThat(drink().step(step).findings("plant")).isEmpty();
    }

    @Test
    void whatIsAddedInOneSentenceIsNotHiddenByTheServingOfAnother() {
        assertThat(drink().step("Add a sprig of wormwood for a day. Serve with ice.")
                        .findings(InWords.NAME))
                .hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Add a sprig of rue.", "Weinraute zugeben.", "Lay in rue."})
    void aPlantThatAsksForCareDoesSoInAStepToo(String step) {
        assertThat(drink().step(step).verdicts("plant")).containsExactly("CAUTION with care");
        assertThat(drink().step(step).verdicts("light-on-skin")).containsExactly("CAUTION light");
        Bench line = drink().grams("rue", Kind.DRIED_PLANT, 1.0).step(step);
        assertThat(line.findings("plant")).as("said once, of the line").hasSize(1);
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

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Mit Honig süßen.",
                "Mit Honig abschmecken.",
                "Honig nach Geschmack zugeben.",
                "Waldhonig zugeben.",
                "Akazienhonig zugeben."
            })
    void honeyOfAStepIsNotForInfantsInGermanToo(String step) {
        assertThat(drink().step(step).verdicts("honey")).as(step).containsExactly("NOTE not for infants");
    }

    @ParameterizedTest
    @ValueSource(strings = {"oder Honig", "or honey", "Mit Honig gesüßt."})
    void honeyOfANoteIsNotForInfants(String note) {
        assertThat(drink().note(note).verdicts("honey")).as(note).containsExactly("NOTE not for infants");
        assertThat(drink().notes(note).verdicts("honey")).as(note).containsExactly("NOTE not for infants");
    }
}
