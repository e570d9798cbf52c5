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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Force-carbonate at 3 bar and fill ordinary wine bottles. | pressure",
                "Mit Kohlensäure versetzen und in gewöhnliche Weinflaschen füllen. | pressure",
                "Carbonate the bottle with a charger and close it. | pressure",
                "Im Wassersprudler aufsprudeln und in Bügelflaschen füllen. | pressure",
                "Prime each bottle with a teaspoon of sugar and champagne yeast and cap it. | pressure",
                "Jede Flasche mit Sekthefe versetzen, mit Kronkorken verschließen und warm stellen. | pressure",
                "Im Vakuumbeutel zwei Stunden bei 65 °C im Wasserbad garen. | pressure",
                "Two hours at 65 °C with the immersion circulator. | pressure",
                "Run the mason jar through the dishwasher. | pressure",
                "Das Glas in der Spülmaschine mitlaufen lassen. | pressure",
                "Leave the closed jar on the radiator. | pressure",
                "Das verschlossene Glas auf die Heizung stellen. | pressure",
                "Fill the bottle to the brim and cork it. | pressure",
                "Randvoll füllen und verkorken. | pressure",
                "Den Likör in der Flasche bei 75 °C pasteurisieren. | pressure",
                "Add a pinch of yeast to each bottle and close with crown caps. | pressure"
            })
    void whatBuildsPressureIsTold(String step, String verdict) {
        assertThat(verdicts(drink().step(step))).contains(verdict);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Crush the plum stones in a mortar and steep them. | stones",
                "Pflaumensteine im Mörser zerstoßen und ansetzen. | stones",
                "Crush the sloes with their stones in a mortar. | stones",
                "Kirschkerne im Mörser knacken und ansetzen. | stones",
                "Kirschkerne aufklopfen. | stones",
                "Kirschkerne öffnen. | stones",
                "Kirschkerne mit dem Hammer bearbeiten. | stones",
                "Die Zwetschkenkerne knacken. | stones",
                "Split the apricot stones with a nutcracker and add the almonds inside. | stones",
                "Blitz the plums with the stones in. | stones",
                "Remove the stones, then crush the stones and steep them. | stones",
                "Stone the cherries, crack the cherry stones and add them. | stones",
                "Kirschen entsteinen, die Steine zerschlagen und zugeben. | stones",
                "Pflaumenkerne mit dem Nussknacker aufbrechen. | stones",
                "Steep it with crushed plum stones and vanilla. | stones",
                "Stone the plums, add the crushed stones. | stones"
            })
    void whatOpensStonesIsTold(String step, String verdict) {
        assertThat(verdicts(drink().step(step))).contains(verdict);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Das Mazerat in der Kupferbrennblase brennen, den Vorlauf abtrennen und nur den Mittellauf auffangen. | licence",
                "Das Mazerat in der Kupferbrennblase brennen, den Vorlauf abtrennen und nur den Mittellauf auffangen. | methanol",
                "Den Ansatz zu Hause ein zweites Mal brennen. | licence",
                "Im Kleindestilliergerät abtreiben. | licence",
                "Discard the foreshots and the heads, keep the hearts. | licence",
                "Discard the foreshots and the heads, keep the hearts. | methanol",
                "Run it through the air still twice. | licence",
                "Den Vorlauf wegen Methanol wegschütten. | licence",
                "Discard the heads because of methanol. | methanol",
                "Keep the hearts and throw the tails away. | licence",
                "Den Ansatz in der Brennblase destillieren. | licence"
            })
    void distillingIsToldByItsVesselsAndItsCuts(String step, String verdict) {
        assertThat(verdicts(drink().step(step))).contains(verdict);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Melt the sugar to a dark caramel and pour the spirit into the hot pan. | flame",
                "Zucker karamellisieren und den heißen Karamell mit dem Weingeist ablöschen. | flame",
                "Pour the spirit into the boiling syrup. | flame",
                "Dry the spirit-soaked peels in the oven at 60 °C. | flame",
                "Die mit Weingeist getränkten Schalen im Backofen trocknen. | flame",
                "Die alkoholgetränkten Schalen im Backofen trocknen. | flame",
                "Boil the macerate down to half. | flame",
                "Den Auszug auf die Hälfte einkochen. | flame",
                "Den Weinbrand mit Gewürzen erhitzen. | flame",
                "Erwärmen Sie den Ansatz auf 60 Grad. | flame",
                "Simmer the wine and the brandy with spices. | flame",
                "Burn off the alcohol. | flame",
                "Abflammen und servieren. | flame",
                "Im Slowcooker vier Stunden ziehen lassen. | flame",
                "Smoke the jar with a smoking gun. | flame",
                "Heat the macerate in a pan with the sugar. Let it cool. | flame",
                "Bring the brandy to the boil. | flame",
                "Koche den Likör ein. | flame",
                "Heat the brandy with a handful of spices. | flame",
                "Light the burner. | flame",
                "Auf dem Brenner warm halten. | flame",
                "Pour burning rum over the sugar loaf. | flame",
                "Mit dem Pürierstab alles pürieren. | flame",
                "Pour the spirit onto the molten sugar. | flame",
                "Tip the spirit over the sugar the moment it turns amber. | flame",
                "Den gebrannten Zucker noch heiß mit Weingeist lösen. | flame",
                "Das flüssige Karamell sofort mit dem Ansatz auffüllen. | flame",
                "Put the open jar into the oven at 60 °C for two hours. | flame",
                "Das Glas offen in den Backofen bei 50 Grad. | flame",
                "Das verschraubte Glas ins heiße Wasserbad. | pressure",
                "Das Glas zuschrauben und in die Sauna stellen. | pressure",
                "Stand the closed jar in the slow cooker for 4 hours. | pressure",
                "Put it under 3 bar in the keg and shake. | pressure",
                "Im Keg mit 3 bar begasen. | pressure",
                "Make it sparkling with the CO2 gun. | pressure",
                "Cover the pot with an upside-down lid with ice and catch the drops in a bowl. | licence",
                "Im Topf mit umgedrehtem Deckel und Eis das Kondensat auffangen. | licence",
                "Bash the damson stones with a rolling pin and steep. | stones",
                "Wrap the plum stones in a tea towel and hit them with a hammer. | stones",
                "Kirschen mit Kern durch den Fleischwolf drehen. | stones",
                "Apfelkerne im Mörser zerreiben. | stones"
            })
    void whatBurnsBurstsOrPoisonsIsToldInOtherWordsToo(String step, String verdict) {
        assertThat(verdicts(drink().step(step))).contains(verdict);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Cook the elderberries for 20 minutes in water. | heated",
                "Die Holunderbeeren 20 Minuten in Wasser kochen. | heated"
            })
    void elderberriesThatAreCookedAreTold(String step, String verdict) {
        assertThat(verdicts(drink().step(step))).contains(verdict);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Rub the cinnamon bark oil into the jar's rim with bare hands. | skin",
                "Zimtrindenöl mit bloßen Händen verreiben. | skin",
                "In Steingutflaschen füllen. | lead"
            })
    void whatTouchesOilAndOldGlazesIsTold(String step, String verdict) {
        assertThat(verdicts(drink().step(step))).contains(verdict);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Serve with carbonated water.",
                "Mit Sprudel auffüllen.",
                "Top up with carbonated water from a fresh bottle.",
                "Mit kohlensäurehaltigem Wasser auffüllen.",
                "Stir in a pinch of calcium carbonate and filter.",
                "Use fruit in prime condition and sugar.",
                "Crush the ice in a stone mortar.",
                "Crush the juniper berries in a stone mortar.",
                "Stone the plums, throw the stones away and crush the flesh.",
                "Remove the kernels before you crush the fruit.",
                "Kirschen entsteinen und die Kerne wegwerfen.",
                "Cool it on a stone floor and break the ice.",
                "Wacholder im Mörser zerstoßen.",
                "Crush the cardamom in a mortar.",
                "Es darf auf der Zunge etwas brennen.",
                "Cut off the flower heads.",
                "Strain the macerate, boil the fruit with sugar and water, cool and join both.",
                "Pour boiling water over the jar, dry it, and fill in the liqueur.",
                "Boil the water in the kettle, dissolve the sugar, cool it to 20 °C and add it to the spirit.",
                "Mit dem Pürierstab die Himbeeren ohne Alkohol pürieren.",
                "In Steingutflaschen nicht füllen.",
                "Light the room well.",
                "Made with burning passion.",
                "Das Rezept ist von Frau Brenner.",
                "Clean the empty jars in the dishwasher.",
                "Die leeren Flaschen in der Spülmaschine reinigen.",
                "Dry the peel in the oven at 60 °C.",
                "Fill the glass with ice to the brim.",
                "Warm the macerate in a water bath at 40 °C.",
                "Boil sugar and water, let it cool and add the macerate.",
                "Den Sirup aufkochen, abkühlen lassen und zum Weingeist geben.",
                "Den Sirup aufkochen. Den Ansatz filtern.",
                "Simmer sugar and water for five minutes.",
                "Dissolve the sugar in hot water and add it.",
                "Keep the jar away from the radiator.",
                "Squeeze the oranges with your bare hands.",
                "Protect the liqueur from heat and light.",
                "Let the spirit draw the heat from the chilli.",
                "Den Likör auf 20 °C erwärmen und die Dichte messen.",
                "Make a hot syrup, leave it until cold and add the spirit.",
                "Den Vorlauf der Filtration verwerfen.",
                "Halve, pit and crush the plums.",
                "Wash, stone and chop the apricots.",
                "Weigh the bottle filled to the brim with water.",
                "Crush the cloves with your fingers.",
                "Add the yeast, stir and let it stand under an airlock.",
                "Do not cook the elderberries.",
                "Die Holunderbeeren nicht kochen.",
                "Boil the sugar and add the elderberries.",
                "Steep the raw elderberries.",
                "Add wine yeast and close the lid."
            })
    void whatOnlySoundsLikeThoseIsNotTold(String step) {
        assertThat(ofTexts(drink().step(step))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Den Vorlauf wegen Methanol wegschütten.", "Discard the heads because of methanol."})
    void theFirstRunIsOfDistillingAndNotOfDenaturedAlcohol(String step) {
        assertThat(drink().step(step).verdicts("wrong-alcohol-used")).isEmpty();
        assertThat(drink().step(step).verdicts("distilling")).containsExactly("CAUTION licence", "CAUTION methanol");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Serve as shots straight from the freezer.", "Pur direkt aus dem Gefrierfach servieren."})
    void shotsFromTheFreezerAskAtTheirStep(String step) {
        assertThat(drink().step(step).verdicts("methods")).containsExactly("CAUTION cold");
    }

    @Test
    void aStarByItselfIsAnyOneWord() {
        TextWords words = TextWords.of("Crush the plum stones; crush stones");
        assertThat(words.places(TextWords.Phrase.of("crush * * stones"))).hasSize(1);
        assertThat(words.places(TextWords.Phrase.of("crush * stones"))).isEmpty();
    }

    private static Bench elderberries() {
        return drink().grams("elderberries", Kind.FRESH_PLANT, 100.0);
    }

    /** Said to be cooked they are told, and no longer asked about; from memory it never is silent. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cooked for 20 minutes | NOTE heated",
                "20 Minuten gekocht | NOTE heated",
                "auf 85 °C erhitzt | NOTE heated",
                "not cooked | CAUTION heat it",
                "uncooked | CAUTION heat it",
                "un-cooked | CAUTION heat it",
                "ungekocht | CAUTION heat it",
                "raw, to be cooked by the guests | CAUTION heat it",
                "ripe | CAUTION heat it"
            })
    void elderberriesThatAreSaidToBeCookedAreOnlyTold(String note, String told) {
        assertThat(elderberries().note(note).verdicts("raw-elderberry")).containsExactly(told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Cook the elderberries for 20 minutes in water. | NOTE heated",
                "Die Holunderbeeren 20 Minuten in Wasser kochen. | NOTE heated",
                "Do not cook the elderberries. | CAUTION heat it",
                "Boil the sugar and add the elderberries. | CAUTION heat it",
                "Cook the plums. | CAUTION heat it"
            })
    void elderberriesThatAStepCooksAreOnlyTold(String step, String told) {
        assertThat(elderberries().step(step).verdicts("raw-elderberry")).containsExactly(told);
    }

    @Test
    void elderberriesOfAStepAloneAreToldOnce() {
        assertThat(drink().step("Cook the elderberries for 20 minutes.").verdicts("raw-elderberry"))
                .containsExactly("NOTE heated");
        assertThat(drink().step("Add the elderberries.").verdicts("raw-elderberry"))
                .containsExactly("CAUTION heat it");
    }

    @Test
    void cookingClearsNothingElse() {
        assertThat(drink().grams("apricot kernels", Kind.DRIED_PLANT, 10.0)
                        .note("cooked")
                        .verdicts("plant"))
                .containsExactly("CAUTION with care");
    }

    @Test
    void whatAStepSaysInTwoWaysIsToldOnce() {
        assertThat(drink().step("Whizz it in the blender, then flambé it.").verdicts("methods"))
                .containsExactly("CAUTION flame");
    }

    @ParameterizedTest
    @ValueSource(strings = {"sea buckthorn", "Sanddorn", "Sanddornbeeren", "sea buckthorn berries", "ground ivy"})
    void aPlantWhoseNameHoldsThatOfAPoisonousOneIsAnother(String name) {
        assertThat(drink().grams(name, Kind.DRIED_PLANT, 50.0).findings("plant"))
                .isEmpty();
        assertThat(drink().step("Add " + name + ".").findings("plant")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"buckthorn bark,CAUTION", "ivy,STOP", "sea buckthorn and ivy,STOP", "Efeu,STOP"})
    void thePoisonousOneIsStillTold(String name, Severity severity) {
        assertThat(drink().grams(name, Kind.DRIED_PLANT, 50.0).findings("plant"))
                .extracting(Finding::severity)
                .containsExactly(severity);
    }

    @ParameterizedTest
    @ValueSource(strings = {"wild garlic", "Bärlauch", "spruce tips", "fir tips", "spruce resin", "woodruff"})
    void aLookAlikeIsToldOnce(String name) {
        assertThat(drink().grams(name, Kind.DRIED_PLANT, 50.0).findings("look-alike"))
                .hasSize(1);
    }

    /** Cornus is no Prunus; by its stones nothing is known of it. */
    @ParameterizedTest
    @ValueSource(strings = {"cornelian cherries", "Kornelkirschen", "Cornus mas"})
    void aCornelianCherryIsNoCherry(String name) {
        assertThat(drink().grams(name, Kind.DRIED_PLANT, 50.0).findings("stones-and-kernels"))
                .isEmpty();
        assertThat(drink().grams("cherries and " + name, Kind.DRIED_PLANT, 50.0).findings("stones-and-kernels"))
                .isNotEmpty();
    }
}
