package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Poisons, grades and origins that hide in a German name, in a name that is less used, or in a note. */
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
    @CsvSource({
        "teaberry oil, ESSENTIAL_OIL",
        "gaultheria oil, ESSENTIAL_OIL",
        "Gaultheriaöl, ESSENTIAL_OIL",
        "checkerberry oil, ESSENTIAL_OIL",
        "epazote oil, ESSENTIAL_OIL",
        "Epazoteöl, ESSENTIAL_OIL",
        "white cedar oil, ESSENTIAL_OIL",
        "'Cedar, white oil', ESSENTIAL_OIL",
        "vacha oil, ESSENTIAL_OIL",
        "allyl isothiocyanate, ESSENTIAL_OIL",
        "allyl isothiocyanate, OTHER",
        "Allylsenföl, ESSENTIAL_OIL",
        "Allylisothiocyanat, OTHER",
        "Verbena absolue, ESSENTIAL_OIL",
        "Verbena-Absolue, ESSENTIAL_OIL",
        "soap scent lemon, ESSENTIAL_OIL",
        "Rosenlorbeer, DRIED_PLANT",
        "Rosenlorbeerblätter, DRIED_PLANT",
        "golden chain flowers, DRIED_PLANT",
        "Tomatenblätter, FRESH_PLANT",
        "Mitragyna speciosa, DRIED_PLANT",
        "Catha edulis, DRIED_PLANT",
        "Robinienblätter, DRIED_PLANT",
    })
    void whatIsTheSameByALessUsedNameStopsToo(String name, Kind kind) {
        Bench drink = kind == Kind.ESSENTIAL_OIL
                ? new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0).grams(name, kind, 0.1)
                : with(name, kind);
        assertThat(drink.safety().findings()).as(name).anyMatch(Rules::isNotForDrinking);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cumaru beans", "vacha", "Gartenraute", "Clitoria ternatea", "Schmetterlingserbsenblüten"})
    void whatAsksForCareDoesSoByALessUsedName(String name) {
        assertThat(with(name, Kind.DRIED_PLANT).verdicts("plant")).as(name).containsExactly("CAUTION with care");
    }

    @ParameterizedTest
    @ValueSource(strings = {"rue", "Weinraute", "giant hogweed", "wild parsnip", "fig leaves", "Feigenblätter"})
    void plantsThatMakeSkinBurnInTheSunSaySoAndHoldFurocoumarins(String name) {
        Bench drink = with(name, Kind.DRIED_PLANT);
        assertThat(drink.verdicts("light-on-skin")).as(name).containsExactly("CAUTION light");
        assertThat(drink.amount("furocoumarins").isKnown()).as(name).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rose oil 10 % in jojoba oil",
                "Rose 10 % in Jojobaöl",
                "Neroliöl in Mandelöl",
                "lavender oil in sunflower oil",
                "neroli oil diluted in fractionated coconut oil"
            })
    void anOilThatIsCutWithAFattyOilIsAskedAbout(String name) {
        assertThat(new Bench()
                        .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                        .grams(name, Kind.ESSENTIAL_OIL, 0.01)
                        .verdicts("not-food-grade"))
                .containsExactly("CAUTION cut with oil");
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
                "nur zur äußerlichen Anwendung",
                "do not take orally",
                "nur zum Inhalieren",
                "für die Seifensiederei, kein Aroma",
                "Reinigungsmittel"
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

    private static Bench oil(String name) {
        return new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0).grams(name, Kind.ESSENTIAL_OIL, 0.5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "not for food",
                "nicht für Lebensmittel",
                "nicht lebensmittelecht",
                "Duftöl",
                "Raumduft",
                "Duftöl, nur für die Duftlampe",
                "for the aroma lamp",
                "massage oil",
                "Kosmetik",
                "cosmetic",
                "do not ingest",
                "nicht trinken"
            })
    void whatIsNotForFoodStopsByItsNote(String note) {
        assertThat(oil("orange oil").note(note).verdicts("not-food-grade"))
                .as(note)
                .contains("STOP not for drinking");
    }

    @ParameterizedTest
    @CsvSource({
        "'Orangenöl, nicht lebensmittelecht', ESSENTIAL_OIL",
        "Orangenöl (nicht essbar), ESSENTIAL_OIL",
        "'orange oil, not for food use', ESSENTIAL_OIL",
        "Orangenöl für Duftlampen, ESSENTIAL_OIL",
        "orange oil for diffusers, ESSENTIAL_OIL",
        "rose water cosmetic, HYDROSOL",
        "Rosenwasser (kosmetisch), HYDROSOL",
        "'Orangenöl, technisch', ESSENTIAL_OIL",
        "orange oil industrial, ESSENTIAL_OIL",
        "'citric acid, technical grade', ACID",
    })
    void whatIsNotForFoodStopsByItsName(String name, Kind kind) {
        Bench drink =
                new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0).grams(name, kind, 0.5);
        assertThat(drink.verdicts("not-food-grade")).as(name).contains("STOP not for drinking");
        assertThat(drink.findings("wrong-alcohol")).as(name).isEmpty();
        Ingredient ingredient = Ingredient.named(name, kind);
        assertThat(ByName.stops(ingredient, Grounds.SHIPPED)).as(name).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no food colouring in it, lovely fragrance",
                "food grade, also for the diffuser",
                "Lebensmittelqualität, auch für die Duftlampe"
            })
    void aNoteOfFoodThatOnlySpeaksOfOtherUsesStopsNothing(String note) {
        assertThat(oil("orange oil").note(note).safety().findings()).as(note).noneMatch(Rules::isNotForDrinking);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "methyl salicylate",
                "Methylsalicylat",
                "pinocamphone",
                "Isopinocamphon",
                "ascaridole",
                "apiole",
                "Chenopodiumöl",
                "Sabinaöl",
                "Kampher",
                "Kamferöl",
                "Absinthöl",
                "absinthe oil",
                "cade",
            })
    void aSubstanceAndAnOilByAnotherNameStopAsTheOilDoes(String name) {
        assertThat(oil(name).verdicts("not-for-drinking")).as(name).contains("STOP not for drinking");
    }

    @ParameterizedTest
    @ValueSource(strings = {"myristicin", "Cajeputöl", "Kajeputöl", "Niaouliöl", "anise hyssop oil", "Anisysopöl"})
    void whatItsOilAsksIsAskedByAnotherNameToo(String name) {
        assertThat(oil(name).verdicts("not-for-drinking")).as(name).containsExactly("CAUTION check");
    }

    @Test
    void methylSalicylateIsLikeAspirinHoweverItGoesIn() {
        assertThat(oil("methyl salicylate").verdicts("medicines")).contains("CAUTION medicines");
        Bench essence = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                .carrying("my essence", Kind.ESSENCE, 60.0, "methyl salicylate 10 %", 5.0);
        assertThat(essence.verdicts("not-for-drinking")).contains("STOP not for drinking");
        assertThat(essence.verdicts("medicines")).contains("CAUTION medicines");
        Bench sage = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                .carrying("sage essence", Kind.ESSENCE, 60.0, "camphor 1 %", 5.0);
        assertThat(sage.findings("not-for-drinking"))
                .noneMatch(finding -> finding.message().contains("camphor crystals"));
    }

    /** No table has these parts, so that no figure of another part stands for them. */
    @ParameterizedTest
    @CsvSource({
        "cinnamon leaf oil, cinnamaldehyde",
        "Zimtblattöl, cinnamaldehyde",
        "cinnamon root oil, cinnamaldehyde",
        "lemon leaf oil, citral family",
        "coriander leaf oil, citral family",
        "dill weed oil, carvone",
    })
    void anotherPartOfThePlantHasNoFiguresOfTheKnownOne(String name, String substance) {
        assertThat(oil(name).amount(substance).isKnown()).as(name).isFalse();
    }

    @Test
    void bayRumOilIsOfTheWestIndianBay() {
        assertThat(NamedPlants.of("bay rum oil", Knowledge.SHIPPED.plants()).plants())
                .extracting(Plant::name)
                .containsExactly("West Indian bay");
    }

    @ParameterizedTest
    @CsvSource({
        "Wermuth, thujone",
        "Wermuthkraut, thujone",
        "Génépikraut, thujone",
        "Guaranapulver, caffeine",
        "Guaranasamen, caffeine",
        "Kolanuss, caffeine",
        "Mateblätter, caffeine",
        "mahlab, hydrogen cyanide",
        "Loquat seeds, hydrogen cyanide",
        "Mispelkerne, hydrogen cyanide",
        "vanilla leaf, coumarin",
        "vanilla leaves, coumarin",
        "Trilisa odoratissima, coumarin",
        "anise hyssop, estragole",
        "Anisysop, estragole",
        "wall germander, teucrin A",
    })
    void aPlantByASisterNameHoldsWhatItHolds(String name, String substance) {
        NamedPlants named = NamedPlants.of(name, Knowledge.SHIPPED.plants());
        assertThat(named.plants())
                .as(name)
                .singleElement()
                .satisfies(plant -> assertThat(plant.holds()).contains(substance));
        assertThat(with(name, Kind.DRIED_PLANT).safety().drink().amount(substance))
                .as(name)
                .isNotNull();
    }

    @Test
    void wallGermanderIsNotAskedAsAnotherPlant() {
        assertThat(NamedPlants.of("wall germander", Knowledge.SHIPPED.plants()).unread())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Ginkgoblätter", "ginkgo leaves"})
    void ginkgoAsksForCareInALineAndInAStep(String name) {
        assertThat(with(name, Kind.DRIED_PLANT).verdicts("plant")).containsExactly("CAUTION with care");
        Bench step =
                new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0).step(name + " zugeben.");
        assertThat(step.verdicts("plant")).containsExactly("CAUTION with care");
    }

    @Test
    void bitterLemonBringsTheCautionOfItsQuinine() {
        assertThat(new Bench().grams("bitter lemon", Kind.JUICE, 200.0).verdicts("medicines"))
                .contains("CAUTION medicines");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ascaridole", "Ascaridol", "Sabinylacetat", "apiol", "alantolactone"})
    void theSubstanceForWhichAnOilIsBlockedIsNoBetterByItself(String name) {
        Bench powder = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                .holding(name, Kind.OTHER, Substance.OTHER_SOLIDS, 100.0, 0.5);
        assertThat(powder.safety().findings()).anyMatch(Rules::isNotForDrinking);
    }

    @ParameterizedTest
    @ValueSource(strings = {"parsley powder", "chenopodium seed"})
    void thePlantByItselfIsNoSuchSubstance(String name) {
        Bench powder = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                .holding(name, Kind.OTHER, Substance.OTHER_SOLIDS, 100.0, 0.5);
        assertThat(powder.findings("not-for-drinking")).isEmpty();
    }
}
