package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.recipe.Purpose;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** Each rule on a drink that it is made for. */
class RulesTest {
    private static Bench with(String name, Kind kind, double grams) {
        return new Bench().grams(name, kind, grams).strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "wintergreen oil", "pennyroyal oil", "rue oil", "camphor oil", "sassafras oil", "tansy oil",
                        "thuja oil",
                "mugwort oil", "hyssop oil", "calamus oil", "bitter almond oil", "mustard oil", "boldo oil", "savin oil"
            })
    void blockedOilsStopTheRecipe(String oil) {
        assertThat(with(oil, Kind.ESSENTIAL_OIL, 0.01).verdicts("not-for-drinking"))
                .contains("STOP not for drinking");
    }

    @Test
    void aStopFromMemorySaysThatItIsFromMemory() {
        assertThat(with("wintergreen oil", Kind.ESSENTIAL_OIL, 0.01).findings("not-for-drinking"))
                .allSatisfy(finding -> {
                    assertThat(finding.status()).isEqualTo("from memory");
                    assertThat(finding.jurisdiction()).isEmpty();
                });
    }

    @ParameterizedTest
    @CsvSource({"camphor, SALT", "white camphor, SALT", "camphor, OTHER", "camphor crystals, OTHER"})
    void aBlockedSubstanceByItselfStopsTheRecipe(String name, Kind kind) {
        Bench bench = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                .holding(name, kind, Substance.OTHER_SOLIDS, 100.0, 0.04);
        assertThat(bench.verdicts("not-for-drinking")).contains("STOP not for drinking");
    }

    @Test
    void anAbsintheBringsThujoneOfWhichNobodyKnowsHowMuch() {
        Bench bought = new Bench().strong("absinthe", Kind.SPIRIT, 68.0, 500.0);
        assertThat(bought.amount("thujone").notKnownFrom()).isNotEmpty();
    }

    @Test
    void bitterAlmondFreeFromPrussicAcidIsNotStopped() {
        Bench freed = with("bitter almond oil FFPA", Kind.ESSENTIAL_OIL, 0.01);
        assertThat(freed.verdicts("not-for-drinking")).isEmpty();
        assertThat(freed.safety().drink().amount("hydrogen cyanide")).isNull();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"foxglove leaf", "yew tips", "white hellebore root", "Japanese star anise", "tobacco", "datura"})
    void poisonousPlantsStopTheRecipe(String plant) {
        assertThat(with(plant, Kind.DRIED_PLANT, 1.0).verdicts("plant")).contains("STOP poisonous");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "denatured alcohol",
                "denat. ethanol",
                "isopropyl alcohol 70",
                "hand sanitiser",
                "methylated spirit",
                "Brennspiritus",
                "meths",
                "industrial alcohol",
                "wood alcohol",
                "cleaning alcohol",
                "disinfectant alcohol",
                "SDA 40B"
            })
    void alcoholThatIsNoneForDrinkingStopsTheRecipe(String name) {
        Bench wrong = new Bench().strong(name, Kind.SPIRIT, 70.0, 500.0);
        assertThat(wrong.verdicts("wrong-alcohol")).containsExactly("STOP not for drinking");
    }

    /** Regulation (EC) 1334/2008, Annex III part A. */
    @ParameterizedTest
    @Tag("published")
    @ValueSource(strings = {"coumarin", "safrole", "thujone", "estragole", "pulegone", "methyl eugenol", "capsaicin"})
    void substancesMustNotBeAddedAsSuchInTheEu(String name) {
        assertThat(with(name, Kind.ESSENTIAL_OIL, 0.001).verdicts("eu-not-as-such"))
                .containsExactly("STOP EU must not be added");
    }

    /** Regulation (EC) 1334/2008, Annex III part A: by each name that it prints, with what stands in brackets behind it and without. */
    @Test
    @Tag("published")
    void everyNameThatTheAnnexPrintsIsOneThatMustNotBeAdded() {
        List<String> printed = Knowledge.SHIPPED.maxima().stream()
                .filter(row -> row.part().endsWith("Part A"))
                .map(Knowledge.EuMaximum::substance)
                .toList();
        assertThat(printed).hasSize(15);
        for (String whole : printed) {
            List<String> names = new ArrayList<>(List.of(whole));
            int bracket = whole.indexOf(" (");
            if (bracket > 0) {
                names.add(whole.substring(0, bracket));
            }
            if (bracket > 0 && !whole.endsWith("(alpha and beta)")) {
                names.add(whole.substring(bracket + 2, whole.length() - 1));
            }
            assertThat(names).allSatisfy(RulesTest::mustNotBeAdded);
        }
    }

    private static void mustNotBeAdded(String name) {
        assertThat(with(name, Kind.ESSENTIAL_OIL, 0.001).verdicts("eu-not-as-such"))
                .as(name)
                .containsExactly("STOP EU must not be added");
        Bench powder = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                .holding(name, Kind.OTHER, Substance.OTHER_SOLIDS, 100.0, 0.05);
        assertThat(powder.verdicts("eu-not-as-such")).as(name).isNotEmpty();
    }

    /** Other names and CAS numbers, from memory. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Kumarin",
                "1,2-Benzopyron",
                "91-64-5",
                "CAS 91-64-5",
                "CAS-Nr. 91-64-5",
                "CAS No.: 91-64-5",
                "coumarin (CAS 91-64-5)",
                "548-04-9",
                "β-asarone",
                "β-Thujon",
                "Agarizinsäure",
                "barbaloin",
                "Blausäure",
                "4-allylanisole",
                "methylchavicol"
            })
    void whatMustNotBeAddedIsReadByItsOtherNamesAndNumbers(String name) {
        mustNotBeAdded(name);
    }

    @Test
    void aNumberThatIsNoneOfThemAndOneBesideAnotherNameStopNothing() {
        assertThat(with("linalool (CAS 78-70-6)", Kind.ESSENTIAL_OIL, 0.001).verdicts("eu-not-as-such"))
                .isEmpty();
        assertThat(with("lavender oil, CAS 8000-28-0", Kind.ESSENTIAL_OIL, 0.001)
                        .verdicts("eu-not-as-such"))
                .isEmpty();
    }

    /** 21 CFR 189.110, 189.130, 189.180. */
    @ParameterizedTest
    @Tag("published")
    @ValueSource(strings = {"calamus root", "tonka bean", "sassafras root bark"})
    void prohibitedInTheUsa(String name) {
        assertThat(with(name, Kind.DRIED_PLANT, 1.0).verdicts("us-prohibited")).containsExactly("STOP US prohibited");
    }

    /** 21 CFR 189.113; its CAS number is 87-29-6. */
    @ParameterizedTest
    @Tag("published")
    @ValueSource(strings = {"cinnamyl anthranilate", "Cinnamylanthranilat", "CAS 87-29-6"})
    void cinnamylAnthranilateIsProhibitedInTheUsa(String name) {
        assertThat(with(name, Kind.ESSENTIAL_OIL, 0.001).findings("us-prohibited"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.STOP);
                    assertThat(finding.message()).contains("21 CFR 189.113");
                });
    }

    @Test
    void safroleIsProhibitedFromMemoryAndSaysSo() {
        assertThat(with("safrole", Kind.ESSENTIAL_OIL, 0.001).findings("us-prohibited"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.source()).isEqualTo(Source.CFR_21_189_180));
    }

    /** Annex IV: calamus of unknown form; quassia and St John's wort in alcoholic drinks alone. */
    @Test
    @Tag("published")
    void restrictedPlantsOfTheEu() {
        assertThat(with("calamus root", Kind.DRIED_PLANT, 1.0).verdicts("eu-restricted-plant"))
                .containsExactly("STOP EU kind not known");
        assertThat(with("St John's wort", Kind.DRIED_PLANT, 1.0).verdicts("eu-restricted-plant"))
                .containsExactly("NOTE EU restricted");
        Bench tea = new Bench().grams("St John's wort", Kind.DRIED_PLANT, 1.0).grams("water", Kind.WATER, 1000.0);
        assertThat(tea.verdicts("eu-restricted-plant")).containsExactly("STOP EU not in this drink");
    }

    /** 21 CFR 172.510 lists simaruba bark for alcoholic drinks alone; what is forbidden is not told as listed beside it. */
    @Test
    @Tag("published")
    void whatIsListedForAlcoholicDrinksAloneStopsOthers() {
        Bench tea = new Bench().grams("simaruba bark", Kind.DRIED_PLANT, 1.0).grams("water", Kind.WATER, 1000.0);
        assertThat(tea.verdicts("us-listed")).containsExactly("STOP US not in this drink");
        assertThat(with("tonka bean", Kind.DRIED_PLANT, 1.0).findings("us-listed"))
                .noneMatch(finding -> finding.where().contains("tonka"));
    }

    /** Annex IV part A names the tetraploid form; 21 CFR 189.110 every calamus. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "calamus root, STOP EU kind not known",
        "'calamus, not tetraploid', STOP EU kind not known",
        "tetraploid calamus, STOP EU banned",
        "Acorus calamus root (tetraploid), STOP EU banned",
        "diploid calamus, CAUTION EU form by its name",
        "triploid calamus root, CAUTION EU form by its name",
        "Acorus americanus, CAUTION EU form by its name",
    })
    void aFormOfCalamusThatIsSaidIsKeptAndClearsNothing(String name, String verdict) {
        Bench drink = with(name, Kind.DRIED_PLANT, 1.0);
        assertThat(drink.verdicts("eu-restricted-plant")).containsExactly(verdict);
        assertThat(drink.verdicts("us-prohibited")).containsExactly("STOP US prohibited");
        assertThat(drink.amount("beta-asarone").perKilogram().most()).isGreaterThan(1.0);
        assertThat(drink.verdicts("eu-maximum")).contains("STOP EU above the limit");
    }

    @ParameterizedTest
    @CsvSource({
        "wormwood, kind not said",
        "dried wormwood herb, kind not said",
        "Artemisia, kind not said",
        "Artemisia spp., kind not said",
        "common wormwood, kind said",
        "Artemisia absinthium, kind said",
        "A. absinthium, kind said",
        "Roman wormwood, kind said",
        "Artemisia pontica, kind said",
        "mugwort, kind said",
        "black genepi, kind said",
        "Artemisia glacialis, kind said",
    })
    void aKindOfWormwoodIsKeptAndOneThatIsNotSaidIsTheWorst(String name, String verdict) {
        Bench drink = with(name, Kind.DRIED_PLANT, 5.0);
        assertThat(drink.verdicts("kind-not-said")).containsExactly("NOTE " + verdict);
        assertThat(drink.findings("eu-maximum"))
                .filteredOn(finding -> finding.message().startsWith("Thujone"))
                .isNotEmpty()
                .noneMatch(finding -> finding.verdict().equals("within the limit"));
        if (verdict.equals("kind not said")) {
            assertThat(drink.amount("thujone").perKilogram().most())
                    .isEqualTo(with("common wormwood", Kind.DRIED_PLANT, 5.0)
                            .amount("thujone")
                            .perKilogram()
                            .most());
        }
    }

    @Test
    void barkOfCinchonaIsNeverWithinWhatTheUsaAllowsOfAllItsAlkaloids() {
        Bench little = with("cinchona bark", Kind.DRIED_PLANT, 0.1);
        assertThat(little.verdicts("us-limit")).containsExactly("CAUTION US not known");
    }

    @Test
    void listedFromMemoryIsToldAsSuch() {
        assertThat(with("angelica root", Kind.DRIED_PLANT, 1.0).findings("us-listed"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo("listed");
                    assertThat(finding.message()).contains("Angelica root", "182.20");
                });
        assertThat(with("rosemary oil", Kind.ESSENTIAL_OIL, 0.1).verdicts("us-listed"))
                .containsExactly("NOTE US listed, from memory");
    }

    @ParameterizedTest
    @ValueSource(strings = {"elder blossom", "elder blossoms", "Holunderblüten", "elder flowers"})
    void blossomsOfElderAreLookAlikesByEachOfTheirNames(String name) {
        assertThat(with(name, Kind.DRIED_PLANT, 5.0).verdicts("look-alike")).containsExactly("CAUTION look-alikes");
    }

    @ParameterizedTest
    @CsvSource({
        "elderberry juice, JUICE",
        "Holundersaft, JUICE",
        "dried elderberries, DRIED_PLANT",
        "Holunderbeeren, DRIED_PLANT"
    })
    void elderberriesAndTheirJuiceAreHeated(String name, Kind kind) {
        assertThat(with(name, kind, 50.0).verdicts("raw-elderberry")).containsExactly("CAUTION heat it");
    }

    @Test
    void lookAlikesStandAtThePlantsLine() {
        Bench elder = new Bench().fresh("elderflowers", 80.0, 50.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(elder.findings("look-alike")).singleElement().satisfies(finding -> {
            assertThat(finding.where()).isEqualTo("elderflowers");
            assertThat(finding.message()).contains("hemlock");
        });
        assertThat(with("star anise", Kind.DRIED_PLANT, 1.0).verdicts("look-alike"))
                .containsExactly("CAUTION look-alikes");
    }

    /** Apricot kernels, 0.4 % hydrogen cyanide at worst: 10 g in a kilogram are 40 mg/kg, above 35. */
    @Test
    void kernelsCountByWeight() {
        Bench kernels = new Bench()
                .grams("apricot kernels", Kind.DRIED_PLANT, 10.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 999.0);
        assertThat(kernels.verdicts("eu-maximum")).containsExactly("STOP EU above the limit at worst");
        assertThat(kernels.verdicts("stones-and-kernels")).containsExactly("CAUTION kernels");
    }

    @Test
    void allergensAreNamed() {
        Bench cream = new Bench()
                .grams("cream", Kind.DAIRY, 300.0)
                .grams("egg yolk", Kind.EGG, 100.0)
                .strong("walnut macerate", Kind.MACERATE, 50.0, 500.0);
        assertThat(cream.verdicts("allergen-milk")).containsExactly("NOTE contains milk");
        assertThat(cream.verdicts("allergen-egg")).containsExactly("NOTE contains eggs");
        assertThat(cream.verdicts("allergen-nuts")).containsExactly("NOTE contains walnut (nuts)");
        assertThat(cream.findings("keeping"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.verdict()).isEqualTo("keep it cold"));
    }

    @Test
    void aWineBringsSulphitesWhateverItsName() {
        Bench wine = new Bench()
                .strong("Riesling", Kind.WINE, 12.0, 300.0)
                .strong("neutral spirit", Kind.SPIRIT, 96.0, 100.0);
        assertThat(wine.verdicts("sulphites")).containsExactly("NOTE sulphites not known");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "distilled lime oil | by its name not expressed",
                "lime oil, steam distilled | by its name not expressed",
                "lime (distilled) | by its name not expressed",
                "bergamot oil FCF | by its name not expressed",
                "bergamot FCF | by its name not expressed",
                "distilled lemon oil | by its name not expressed",
                "lime oil | not known if expressed",
                "lime | not known if expressed",
                "bergamot oil | not known if expressed",
                "expressed lime oil | light",
                "cold-pressed bergamot oil | light",
                "lemon oil | light",
            })
    void lightOnSkinIsOfExpressedOilsAndNotKnownWhereItIsNotSaid(String oil, String verdict) {
        assertThat(with(oil, Kind.ESSENTIAL_OIL, 0.1).verdicts("light-on-skin")).containsExactly("NOTE " + verdict);
    }

    /** SKLM 2011, as read for the intake table: no furocoumarins were found in distilled oils. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "distilled lime oil | false",
                "bergamot oil FCF | false",
                "steam distilled grapefruit oil | false",
                "bitter orange oil, furocoumarin free | false",
                "lime oil | true",
                "bergamot | true",
                "expressed lime oil | true",
                "grapefruit oil | true",
                "bitter orange oil | true",
                "pomelo oil | true",
            })
    void medicinesAreAskedOfUnlessTheOilIsNamedAsFreeOfFurocoumarins(String oil, boolean asked) {
        assertThat(with(oil, Kind.ESSENTIAL_OIL, 0.1).verdicts("medicines"))
                .isEqualTo(asked ? List.of("NOTE medicines") : List.of());
        if (!asked) {
            assertThat(with(oil, Kind.ESSENTIAL_OIL, 0.1).findings("light-on-skin"))
                    .singleElement()
                    .satisfies(finding -> assertThat(finding.message()).contains("medicines", "from memory"));
        }
        assertThat(with(oil, Kind.DRIED_PLANT, 0.1).verdicts("medicines")).containsExactly("NOTE medicines");
    }

    /** The oils of an essence are asked as oils are; of two fruits one may be settled, and what only its name says is asked. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lime essence | distilled lime oil 5 g/L | false",
                "lime essence | destilliertes Limettenöl 5 g/L | false",
                "house essence | bergamot oil FCF 5 g/L, distilled lime oil 2 g/L | false",
                "lime essence | expressed lime oil 5 g/L | true",
                "lime essence | lime oil 5 g/L | true",
                "lime essence | distilled lime oil 5 g/L, grapefruit oil 2 g/L | true",
                "lime and bergamot essence | distilled lime oil 5 g/L | true",
            })
    void oilsOfAnEssenceAreLookedAtAsOils(String name, String aroma, boolean asked) {
        Bench drink = new Bench()
                .carrying(name, Kind.ESSENCE, 80.0, aroma, 10.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 990.0);
        assertThat(drink.verdicts("medicines").stream().distinct().toList())
                .isEqualTo(asked ? List.of("NOTE medicines") : List.of());
        assertThat(drink.verdicts("light-on-skin")).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({"distilled lime essence, false", "lime essence, true", "distilled lime and bergamot oil essence, true"})
    void anEssenceSaysItselfHowItsOilWasMade(String name, boolean asked) {
        Bench drink =
                new Bench().strong(name, Kind.ESSENCE, 80.0, 10.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 990.0);
        assertThat(drink.verdicts("medicines")).isEqualTo(asked ? List.of("NOTE medicines") : List.of());
    }

    @Test
    void bitterOrangeOilIsStillBitterOrange() {
        Bench drink = with("bitter orange oil", Kind.ESSENTIAL_OIL, 0.1);
        assertThat(drink.verdicts("medicines")).containsExactly("NOTE medicines");
        assertThat(drink.verdicts("light-on-skin")).containsExactly("NOTE light");
    }

    @Test
    void stepsAreReadForWhatBurnsOrBursts() {
        Bench made = with("lemon balm", Kind.DRIED_PLANT, 5.0)
                .step("Whizz it in a blender for a minute.")
                .step("Keep it in a lead crystal decanter.");
        assertThat(made.verdicts("methods")).containsExactlyInAnyOrder("CAUTION flame", "CAUTION lead");
    }

    @Test
    void fruitBelowEighteenPercentCanFermentAgain() {
        Bench weak = new Bench()
                .grams("raspberry juice", Kind.JUICE, 500.0)
                .grams("white sugar", Kind.SUGAR, 100.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 300.0);
        assertThat(weak.verdicts("growth")).contains("CAUTION can ferment again");
    }

    /** The row of 40 % vol is 26 °C; 38 % vol takes it, not the milder 29 °C of 30 % vol. */
    @Test
    void theFlashPointIsThatOfTheNextStrongerRow() {
        Bench spirit = new Bench().strong("neutral spirit", Kind.SPIRIT, 38.0, 100.0);
        assertThat(spirit.findings("flash-point"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("about 26 °C"));
    }

    /** 21 CFR 184.1005: acetic acid as an ingredient at most 0.15 % in drinks; 1.5 g/kg pass, a hair more does not. */
    @Test
    @Tag("published")
    void aceticAcidByItselfIsLimitedInTheUs() {
        Bench within = new Bench().grams("acetic acid", Kind.ACID, 1.49).strong("spirit", Kind.SPIRIT, 40.0, 998.51);
        Bench over = new Bench().grams("acetic acid", Kind.ACID, 1.51).strong("spirit", Kind.SPIRIT, 40.0, 998.49);
        assertThat(within.verdicts("us-limit")).isEmpty();
        assertThat(over.verdicts("us-limit")).containsExactly("STOP US above the limit");
    }

    @Test
    void anEssenceIsNotJudgedAsADrink() {
        Bench essence = new Bench()
                .grams("peppermint oil", Kind.ESSENTIAL_OIL, 30.0)
                .strong("neutral spirit", Kind.SPIRIT, 96.0, 800.0);
        assertThat(essence.verdicts("eu-maximum")).contains("STOP EU above the limit");
        assertThat(essence.findings("concentrate"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("every limit for drinks is asked of it"));
        essence.makes(Purpose.ESSENCE);
        assertThat(essence.verdicts("concentrate")).containsExactly("CAUTION not for drinking as it is");
        assertThat(essence.verdicts("eu-maximum")).isEmpty();
    }

    /** A dose ten or a hundred times as large must never be said less of. */
    @ParameterizedTest
    @ValueSource(strings = {"wormwood oil", "peppermint oil", "cinnamon bark oil", "bitter fennel oil", "nutmeg oil"})
    void moreOilNeverLosesALimit(String oil) {
        Set<String> before = Set.of();
        for (double grams = 0.01; grams < 500.0; grams *= 3.0) {
            Set<String> said = new Bench()
                            .grams(oil, Kind.ESSENTIAL_OIL, grams)
                            .strong("neutral spirit", Kind.SPIRIT, 45.0, 900.0)
                            .safety()
                            .findings()
                            .stream()
                            .filter(finding -> finding.severity() != Severity.NOTE)
                            .map(finding -> finding.rule() + " " + finding.where())
                            .collect(Collectors.toSet());
            assertThat(said).as(grams + " g of " + oil).containsAll(before);
            before = said;
        }
        assertThat(before).isNotEmpty();
    }

    /** 21 CFR 172.575 and Regulation (EU) 872/2012: 83 and 250 mg/kg; bark holds up to 6 % quinine, so 1.4 g/kg are 84. */
    @Test
    @Tag("published")
    void quinineHasItsLimits() {
        Bench bark = new Bench()
                .grams("cinchona bark", Kind.DRIED_PLANT, 1.4)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 999.86);
        assertThat(bark.verdicts("us-limit")).containsExactly("STOP US above the limit at worst");
        assertThat(bark.verdicts("eu-use-limit")).containsExactly("NOTE EU not shown to be within");
    }

    /**
     * Base in a gram of salt by the molar masses of the CRC handbook's quinine entries, from memory: base 324.42, hydrochloride 360.88, its
     * dihydrate 396.91, dihydrochloride 397.34, sulfate 746.92, its dihydrate 782.95, bisulfate with seven of water 548.60 g/mol.
     */
    @ParameterizedTest
    @CsvSource({
        "quinine hydrochloride, 0.8174, 0.8990",
        "quinine HCl, 0.8174, 0.8990",
        "Chininhydrochlorid, 0.8174, 0.8990",
        "quinine hydrochloride dihydrate, 0.8174, 0.8174",
        "Chininhydrochlorid-Dihydrat, 0.8174, 0.8174",
        "quinine dihydrochloride, 0.8165, 0.8165",
        "Chinindihydrochlorid, 0.8165, 0.8165",
        "quinine sulfate, 0.8287, 0.8687",
        "quinine sulphate USP, 0.8287, 0.8687",
        "Chininsulfat, 0.8287, 0.8687",
        "quinine sulfate dihydrate, 0.8287, 0.8287",
        "quinine bisulfate, 0.5914, 0.7679",
        "quinine, 1.0, 1.0",
        "Chinin, 1.0, 1.0",
    })
    void saltsOfQuinineCountAsTheirBase(String name, double least, double most) {
        for (Kind kind : List.of(Kind.SALT, Kind.OTHER)) {
            Bench drink = new Bench()
                    .strong("neutral spirit", Kind.SPIRIT, 40.0, 999.0)
                    .holding(name, kind, Substance.OTHER_SOLIDS, 100.0, 1.0);
            Amount amount = drink.amount("quinine");
            double grams = drink.safety().drink().kilograms();
            assertThat(amount.perKilogram().least() * grams / 1000.0).isCloseTo(least, within(1e-4));
            assertThat(amount.perKilogram().most() * grams / 1000.0).isCloseTo(most, within(1e-4));
            assertThat(drink.findings("us-limit"))
                    .singleElement()
                    .satisfies(finding -> assertThat(finding.message()).contains("as quinine base"));
            assertThat(drink.findings("eu-use-limit"))
                    .singleElement()
                    .satisfies(finding -> assertThat(finding.message()).contains("as quinine base"));
            assertThat(drink.verdicts("medicines")).isNotEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "quinine sulfate tincture, TINCTURE",
        "quinine sulfate solution 5 %, OTHER",
        "quinine hydrobromide, SALT",
        "quinine salt of the pharmacy, SALT",
        "tonic water, WATER",
        "tonic syrup, SYRUP",
    })
    void whatHoldsQuinineAndSaysNotHowMuchIsNotKnown(String name, Kind kind) {
        Bench drink = kind == Kind.TINCTURE
                ? new Bench().strong(name, kind, 60.0, 10.0)
                : new Bench().holding(name, kind, kind == Kind.WATER ? Substance.WATER : Substance.SUCROSE, 60.0, 10.0);
        assertThat(drink.strong("neutral spirit", Kind.SPIRIT, 40.0, 999.0)
                        .amount("quinine")
                        .isKnown())
                .isFalse();
    }

    @Test
    void everyRuleHasAName() {
        assertThat(Rules.ALL).extracting(Rule::name).doesNotHaveDuplicates();
        assertThat(Rules.ALL).extracting(Rule::says).allMatch(says -> says.endsWith("."));
        assertThat(List.of(Place.values())).hasSize(2);
    }

    /** A name that can kill stands before a figure of law, and both before what is only not known. */
    @Test
    void whatCanHurtStandsBeforeWhatIsOnlyAsked() {
        List<Finding> cautions = new Bench()
                        .fresh("elderflowers", 80.0, 50.0)
                        .step("Add a sprig of mint from the garden.")
                        .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                        .safety()
                        .findings()
                        .stream()
                        .filter(finding -> finding.severity() == Severity.CAUTION)
                        .toList();
        List<Boolean> hurts = cautions.stream().map(Rules::canHurt).toList();
        assertThat(hurts).contains(true, false);
        assertThat(hurts.lastIndexOf(true)).isLessThan(hurts.indexOf(false));
    }
}
