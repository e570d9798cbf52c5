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

/** What steps and notes speak of, as makers write it; sentences of our own. */
class TextCautionsTest {
    private static Bench drink() {
        return new Bench().strong("neutral spirit", Kind.SPIRIT, 96.0, 300.0).grams("water", Kind.WATER, 500.0);
    }

    private static List<Finding> ofTexts(Bench drink) {
        return drink.safety().findings().stream()
                .filter(finding -> Knowledge.SHIPPED.textCautions().stream()
                        .anyMatch(row -> row.message().equals(finding.message())))
                .toList();
    }

    private static List<String> verdicts(Bench drink) {
        return ofTexts(drink).stream().map(Finding::verdict).distinct().toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Whizz it in a blender for a minute. | flame",
                "Put it through the food processor. | flame",
                "Heat in a pan | flame",
                "Warm the macerate gently in a saucepan. | flame",
                "Heat on the cooker | flame",
                "Set it on the induction plate. | flame",
                "Warm it on the stove with the sugar. | flame",
                "Flambé | flame",
                "Flambé the peel over the glass. | flame",
                "Set alight and blow out. | flame",
                "Mit dem Stabmixer pürieren. | flame",
                "Im Topf langsam erwärmen. | flame",
                "Auf dem Herd erhitzen. | flame",
                "Not too hot on the stove. | flame",
                "Nicht zu lange auf dem Herd erhitzen. | flame",
                "Not in the jar, in the blender. | flame",
                "Auf der Kochplatte ziehen lassen. | flame",
                "Die Küchenmaschine nehmen. | flame",
                "Den Zucker flambieren. | flame",
                "Seal the jars and simmer them in a water bath | pressure",
                "closed mason jar in a pot of hot water | pressure",
                "Close the lid tightly, then stand it in hot water for two hours. | pressure",
                "Cook it sous vide at 60 °C. | pressure",
                "In a pressure cooker for an hour. | pressure",
                "Das Glas luftdicht ins Wasserbad stellen. | pressure",
                "Verschlossene Flaschen in heißem Wasser ziehen lassen. | pressure",
                "Shake it in a soda syphon. | pressure",
                "Rapid infusion with nitrous. | pressure",
                "Mit dem Sahnesiphon aufschäumen. | pressure",
                "Keep it in a lead crystal decanter. | lead",
                "Decant into the crystal carafe. | lead",
                "Rest it in a ceramic crock. | lead",
                "Leave for a month in a stoneware crock | lead",
                "Use glazed earthenware with a lid. | lead",
                "In der Kristallkaraffe aufheben. | lead",
                "Im Steinguttopf ansetzen. | lead",
                "Boil down in a copper pot. | metal",
                "Collect it in a galvanised bucket. | metal",
                "Im Kupfertopf einkochen. | metal",
                "Im verzinkten Eimer mischen. | metal",
                "Steep in a plastic tub. | plastic",
                "Fill into a PET bottle. | plastic",
                "In einer Plastikflasche schütteln. | plastic",
                "In Kunststoffeimern ansetzen. | plastic",
                "Serve as shots at -18 °C. | cold",
                "Serve at −20 °C. | cold",
                "Serve frozen | cold",
                "Serve straight from the freezer | cold",
                "Eiskalt aus dem Gefrierfach servieren. | cold",
                "Chill it with dry ice. | cold",
                "Mit Trockeneis kühlen. | cold",
                "Freeze the foam with liquid nitrogen. | cold",
                "Distill in a small still | licence",
                "Redistill | licence",
                "Distil the strained macerate. | licence",
                "Run it through a pot still once. | licence",
                "Den Ansatz destillieren. | licence",
                "Put rosemary in olive oil as garnish | botulism",
                "Garlic in oil on the side. | botulism",
                "Rosmarin in Olivenöl legen. | botulism",
                "Crush the cherry stones | stones",
                "Crack the apricot kernels in a cloth. | stones",
                "Die Kirschkerne zerstoßen. | stones",
                "Take waxed supermarket lemons. | peel",
                "Rinse the funnel with denatured spirit and go on. | check",
                "Flaschen mit Isopropanol desinfizieren. | check",
                "Die Flasche mit Brennspiritus reinigen. | check",
                "Clean the jars with acetone. | check",
                "Statt Wodka geht auch Franzbranntwein. | check",
                "Technisches Glycerin verwenden. | not for drinking",
                "Heat to 90 °C in the closed bottle. | pressure",
                "In der verschlossenen Flasche auf 80 °C erhitzen. | pressure",
                "Fill while fermenting and cork. | pressure",
                "In die Bügelflasche füllen und gären lassen. | pressure",
                "Serve burning: light it. | flame",
                "Brennend servieren. | flame",
            })
    void aStepIsReadForWhatItSpeaksOf(String step, String verdict) {
        assertThat(verdicts(drink().step(step))).contains(verdict);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Filter until it is crystal clear.",
                "Warm your hands on the jar.",
                "Dissolve the crystals in the water.",
                "Let sugar crystals grow in a glass bottle.",
                "Simmer sugar and water in a pan for five minutes.",
                "Zucker und Wasser im Topf aufkochen.",
                "No flame near it.",
                "Never put it on the stove.",
                "Keep away from flames.",
                "Do not use plastic.",
                "Use glass instead of plastic.",
                "Kein Plastik verwenden.",
                "Ohne offene Flamme arbeiten.",
                "Use distilled water.",
                "Add the distillate last.",
                "While still warm, stir in the honey.",
                "Let it stand still for a week.",
                "Siphon it off the lees.",
                "Draw it off with a siphon hose.",
                "Serve cool, at 8 °C.",
                "Serve at 18 °C.",
                "Put it into the freezer overnight, then filter.",
                "Sterilise the jars in boiling water and seal them when cold.",
                "Seal the bottles and store them in the dark.",
                "Leave the cherry stones whole and strain within weeks.",
                "Remove the stones from the cherries.",
                "Crush the juniper in a stone mortar.",
                "Use unwaxed lemons.",
                "Seal the cork with wax.",
                "Unbehandelte Zitronen nehmen.",
                "Wipe the thermometer with isopropyl alcohol.",
                "Wipe the worktop with isopropanol.",
                "Es hat einen brennend scharfen Nachgeschmack.",
                "Let it ferment out under an airlock, then bottle it.",
                "Heat the syrup, let it cool, and keep it in a closed bottle.",
                "Stir with a copper-coloured spoon of stainless steel.",
                "Serve with a dried rosemary sprig.",
                "Rub the rim with dried rosemary in olive oil.",
                "A lighter colour is what you want.",
                "Blend it with the syrup and let it rest.",
                "Close the lid and turn the jar daily.",
            })
    void aStepThatOnlySoundsLikeItSaysNothing(String step) {
        assertThat(ofTexts(drink().step(step))).isEmpty();
    }

    @Test
    void notesOfLinesAndOfTheRecipeAreReadAndSayWhere() {
        Bench drink = drink().note("waxed supermarket lemons would do")
                .notes("Crush it in the blender. Lead crystal decanter.");
        assertThat(ofTexts(drink))
                .extracting(finding -> finding.where() + ": " + finding.verdict())
                .containsExactlyInAnyOrder("water: peel", "notes: flame", "notes: lead");
        assertThat(ofTexts(drink().step("Whizz it in a blender.")))
                .extracting(Finding::where)
                .containsExactly("step 1 of your own");
    }

    /** Without anything strong there is no vapour that lights, and nothing that softens plastic. */
    @Test
    void whatOnlySpiritDoesIsNotSaidOfACordial() {
        Bench cordial = new Bench().grams("water", Kind.WATER, 500.0).grams("white sugar", Kind.SUGAR, 300.0);
        assertThat(ofTexts(cordial.step("Heat it in a pan, fill it into a plastic bottle.")))
                .isEmpty();
    }

    @Test
    void theGradeOfGlycerolIsAskedFor() {
        assertThat(new Bench().grams("glycerol", Kind.GLYCEROL, 5.0).verdicts("glycerol-grade"))
                .containsExactly("CAUTION grade not said");
        assertThat(new Bench()
                        .grams("glycerol", Kind.GLYCEROL, 5.0)
                        .note("food grade, E 422")
                        .verdicts("glycerol-grade"))
                .isEmpty();
        assertThat(new Bench().grams("food grade glycerine", Kind.GLYCEROL, 5.0).verdicts("glycerol-grade"))
                .isEmpty();
        Bench technical = new Bench().grams("technical glycerol", Kind.GLYCEROL, 5.0);
        assertThat(technical.findings("not-food-grade")).singleElement().matches(Rules::isNotForDrinking);
    }

    @Test
    void wordsAreHeldApartAsTheyAreWritten() {
        TextWords words = TextWords.of("Bei −18 °C, nicht 18,5 °C; flambé in Großküchen");
        assertThat(words.places(TextWords.Phrase.of("-18"))).hasSize(1);
        assertThat(words.places(TextWords.Phrase.of("18.5"))).as("denied").isEmpty();
        assertThat(words.places(TextWords.Phrase.of("flambe in gross*"))).hasSize(1);
        assertThat(words.places(TextWords.Phrase.of("*küchen"))).hasSize(1);
        assertThat(words.places(TextWords.Phrase.of("c nicht")))
                .as("another clause")
                .isEmpty();
    }

    @Test
    void everyFindingOfTheTableIsOfARuleInForce() {
        for (TextCaution row : Knowledge.SHIPPED.textCautions()) {
            assertThat(Rules.isOne(row.rule())).as(row.rule()).isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Lay a sprig of foxglove into the jar. | plant | Foxglove",
                "Mit einem Zweig Eibe umrühren. | plant | Yew",
                "Zwei Blätter Fingerhut dazugeben. | plant | Foxglove",
                "Garnish with oleander flowers. | plant | Oleander",
                "Lay in two leaves of fox-glove. | plant | Foxglove",
                "Add three drops of wintergreen oil. | not-for-drinking | wintergreen oil",
                "Ten drops of oil of pennyroyal. | not-for-drinking | pennyroyal oil"
            })
    void aStepThatNamesAPoisonousPlantOrOilAsks(String step, String rule, String named) {
        assertThat(drink().step(step).findings(rule)).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.where()).isEqualTo("step 1 of your own");
            assertThat(finding.message()).contains("must not touch the drink", named);
        });
    }

    /** Who warns of a plant does not use it: it is told, and asks for nothing; one sentence that uses it is enough to ask. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Nicht mit Maiglöckchen verwechseln! | NOTE",
                "Bärlauch sieht wie Maiglöckchen aus. | NOTE",
                "Do not confuse it with hemlock. | NOTE",
                "Its leaf looks like foxglove. | NOTE",
                "Nicht mit Maiglöckchen verwechseln. Dann Maiglöckchen zugeben. | CAUTION",
                "Add hemlock; do not confuse it with angelica. | CAUTION"
            })
    void aSentenceThatWarnsOfAPlantIsOnlyTold(String step, Severity severity) {
        assertThat(drink().step(step).findings("plant"))
                .singleElement()
                .extracting(Finding::severity)
                .isEqualTo(severity);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Add a sprig of rosemary.", "Two star anise.", "A drop of lemon oil.", "Ein Blatt Salbei."})
    void aStepThatNamesAHarmlessPlantDoesNot(String step) {
        assertThat(drink().step(step).findings("plant")).isEmpty();
        assertThat(drink().step(step).findings("not-for-drinking")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Dann noch einmal brennen. | licence",
                "Concentrate it in the rotovap. | licence",
                "Use a rotary evaporator at 40 °C. | licence",
                "Im Rotationsverdampfer einengen. | licence",
                "Warm the macerate in the microwave. | flame",
                "Alles kurz in die Mikrowelle stellen. | flame",
                "Straight from the freezer. | cold",
                "Eiskalt aus dem Gefrierfach genießen. | cold"
            })
    void distillingAgainMicrowavesAndFreezersAreKnown(String step, String verdict) {
        assertThat(verdicts(drink().step(step))).contains(verdict);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Microwave the sugar with the water.",
                "Die Beeren aus dem Gefrierfach auftauen.",
                "Take the berries straight from the freezer."
            })
    void syrupInTheMicrowaveAndFrozenFruitAreNothing(String step) {
        assertThat(verdicts(drink().step(step))).isEmpty();
    }
}
