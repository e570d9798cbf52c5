package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What a laboratory finds in the whole of something stands in place of what can be in it, for what it names alone. */
class AssayTest {
    private static final QuantityText QUANTITIES = new QuantityText(OunceMeaning.US_FLUID);
    private static final double KILOGRAM = 1000.0;

    private static Assay assay(String text) {
        Understanding<Assay> read = Assay.read(text, QUANTITIES);
        if (read instanceof Understanding.Understood<Assay> understood) {
            return understood.typed().value();
        }
        throw new AssertionError(read.toString());
    }

    private static Watched watched(String name) {
        return Knowledge.SHIPPED.watched().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Bench wormwood() {
        return new Bench()
                .strong("wormwood distillate", Kind.DISTILLATE, 40.0, 200.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 200.0);
    }

    private static Bench withLot(Bench bench, String name, String... bottles) {
        return bench.analysed(LotAnalyses.NONE.withWholes(
                Map.of(name, List.of(bottles).stream().map(AssayTest::assay).toList())));
    }

    private static List<String> watchedOfNotKnown(Bench bench) {
        return bench.safety().drink().amounts().stream()
                .filter(amount -> !amount.isKnown())
                .map(amount -> amount.watched().name())
                .toList();
    }

    /** 200 g of a distillate with 40 mg/kg in a kilogram: 8 mg/kg; what is not listed stays not known. */
    @Test
    void ofADistillateWhatIsListedIsKnownAndTheRestIsNot() {
        List<String> before = watchedOfNotKnown(wormwood());
        assertThat(before).contains("thujone");
        Bench analysed = withLot(wormwood(), "Wormwood distillate", "thujone 40 mg/kg");
        Amount thujone = analysed.amount("thujone");
        assertThat(thujone.perKilogram().least()).isCloseTo(8.0, within(1e-9));
        assertThat(thujone.perKilogram().most()).isCloseTo(8.0, within(1e-9));
        assertThat(thujone.isAnalysed()).isTrue();
        assertThat(analysed.verdicts("eu-maximum")).contains("NOTE EU within the limit");
        assertThat(watchedOfNotKnown(analysed))
                .containsExactlyElementsOf(
                        before.stream().filter(name -> !name.equals("thujone")).toList());
    }

    /** Spirit of 40 % vol weighs 0.948 g/mL by OIML R 22: 200 g are 0.211 L, and 37.92 mg/L are 40 mg/kg. */
    @Test
    void perLitreIsReckonedByTheDensityOfTheDistillate() {
        Amount perLitre =
                withLot(wormwood(), "wormwood distillate", "thujone 37.92 mg/L").amount("thujone");
        assertThat(perLitre.perKilogram().most()).isCloseTo(8.0, within(0.002));
    }

    @Test
    void ofSeveralBottlesOnlyWhatAllTellIsCounted() {
        Amount both = withLot(wormwood(), "wormwood distillate", "thujone 40 mg/kg", "thujone < 100 mg/kg")
                .amount("thujone");
        assertThat(both.perKilogram().least()).isZero();
        assertThat(both.perKilogram().most()).isCloseTo(20.0, within(1e-9));
        Bench one = withLot(wormwood(), "wormwood distillate", "thujone 40 mg/kg", "pulegone 1 mg/kg");
        assertThat(watchedOfNotKnown(one)).contains("thujone");
    }

    /** Of what a recipe states of a plant's distillate nothing is added as such; where no plant is named it is. */
    @Test
    void whatComesWithItsPlantIsNotAddedAsSuch() {
        Bench stated = new Bench()
                .carrying("wormwood distillate", Kind.DISTILLATE, 40.0, "thujone 37.92 mg/L", 200.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 200.0);
        assertThat(stated.findings("eu-not-as-such")).isEmpty();
        assertThat(stated.amount("thujone").perKilogram().most()).isCloseTo(8.0, within(0.002));
        Bench ofNothing = new Bench()
                .carrying("house stock", Kind.DISTILLATE, 40.0, "thujone 37.92 mg/L", 200.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 200.0);
        assertThat(ofNothing.verdicts("eu-not-as-such")).containsExactly("STOP EU must not be added");
    }

    /** Of fruit anything from none to all comes over: 300 g with 5 mg/kg in a kilogram, at most 1.5 mg/kg. */
    @Test
    void whatIsStatedOfFruitIsTheMostThatComesOver() {
        Bench cherries = withLot(
                new Bench().fresh("sour cherries", 86.0, 300.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 700.0),
                "sour cherries",
                "Blausäure 5 mg/kg");
        Amount cyanide = cherries.amount("hydrogen cyanide");
        assertThat(cyanide.isKnown()).isTrue();
        assertThat(cyanide.perKilogram().least()).isZero();
        assertThat(cyanide.perKilogram().most())
                .isCloseTo(1.5 / cherries.safety().drink().kilograms(), within(1e-9));
        assertThat(cherries.verdicts(Kernels.NAME)).containsExactly("CAUTION stones");
    }

    @Test
    void anAnalysisOfAStoneSpiritAnswersWhatItsNameAsks() {
        Bench kirsch = new Bench().strong("cherry spirit", Kind.SPIRIT, 40.0, KILOGRAM);
        assertThat(kirsch.findings(NotKnown.NAME))
                .anyMatch(each -> each.message().contains("hydrogen cyanide"));
        Bench analysed = withLot(kirsch, "cherry spirit", "hydrogen cyanide 12 mg/kg");
        assertThat(analysed.findings(NotKnown.NAME))
                .noneMatch(each -> each.message().contains("hydrogen cyanide"));
        assertThat(analysed.findings("eu-maximum"))
                .anyMatch(each -> each.message().startsWith("Hydrogen cyanide: 12.0 mg/kg"));
    }

    @Test
    void anAnalysisOfWhatAStageMakesSettlesItsPlants() {
        Bench macerate = new Bench()
                .grams("dried wormwood", Kind.DRIED_PLANT, 10.0)
                .strong("neutral spirit", Kind.SPIRIT, 60.0, 190.0);
        Bench drink = new Bench()
                .drawing("wormwood macerate", macerate, 100.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0);
        assertThat(drink.amount("thujone").isAnalysed()).isFalse();
        Amount analysed =
                withLot(drink, "wormwood macerate", "thujone 50 mg/kg").amount("thujone");
        assertThat(analysed.perKilogram().most()).isCloseTo(5.0, within(1e-9));
        assertThat(analysed.isAnalysed()).isTrue();
    }

    @Test
    void anAnalysisOfTheDrinkStandsInPlaceOfWhatGoesIn() {
        Bench drink = wormwood().analysed(LotAnalyses.NONE.ofDrink(assay("thujone 8 mg/kg; coumarin < 0.5 mg/kg")));
        assertThat(drink.amount("thujone").analysis()).isEqualTo(LotAnalyses.OF_DRINK);
        assertThat(drink.amount("thujone").perKilogram().most()).isCloseTo(8.0, within(1e-9));
        assertThat(drink.amount("coumarin").perKilogram().least()).isZero();
        assertThat(drink.verdicts("eu-maximum")).contains("NOTE EU within the limit");
        assertThat(drink.findings(AnalysedDrink.NAME))
                .extracting(Finding::severity)
                .containsOnly(Severity.NOTE);
        assertThat(drink.findings(AnalysedDrink.NAME).get(0).message())
                .isEqualTo(
                        "Thujone: the analysis of the drink says 8.00 mg/kg; what goes in brings nobody knows how much. It holds for that drink alone.");
    }

    /** 60 mg/kg weighed in, and 0.06 found: a slip of the unit lifts no limit. */
    @Test
    void farFromWhatSurelyGoesInTheMoreAdverseCounts() {
        Bench tonic = new Bench()
                .grams("quinine", Kind.SALT, 0.3)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 0.3);
        Bench slip = tonic.analysed(LotAnalyses.NONE.ofDrink(assay("quinine 0.3 mg/kg")));
        assertThat(slip.verdicts(AnalysedDrink.NAME)).containsExactly("CAUTION is this meant?");
        assertThat(slip.amount("quinine").perKilogram().most()).isCloseTo(300.0, within(1e-6));
        assertThat(slip.verdicts("eu-use-limit")).containsExactly("STOP EU above the limit at worst");
    }

    @Test
    void noAnalysisLiftsAStopThatIsNoLimit() {
        Bench oil = new Bench()
                .grams("pennyroyal oil", Kind.ESSENTIAL_OIL, 0.01)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM)
                .analysed(LotAnalyses.NONE.ofDrink(assay("pulegone < 0.1 mg/kg; menthofuran < 0.1 mg/kg")));
        assertThat(oil.verdicts("not-for-drinking")).containsExactly("STOP not for drinking");
    }

    @ParameterizedTest
    @CsvSource({
        "thujone 8 mg/kg, thujone",
        "Thujon 8 mg/kg, thujone",
        "alpha-thujone 3 mg/kg; beta-thujone 5 mg/kg, thujone",
        "prussic acid 8 mg/kg, hydrogen cyanide",
        "Koffein 8 mg/kg, caffeine",
        "methyl chavicol 8 mg/kg, estragole",
        "safrole 8 mg/kg, safrole",
    })
    void namesAreReadAsOfTheWatchedSubstance(String text, String name) {
        Range found = Objects.requireNonNull(assay(text).fractions(watched(name), OptionalDouble.empty()));
        assertThat(found.least()).isCloseTo(8e-6, within(1e-15));
        assertThat(found.most()).isCloseTo(8e-6, within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "thujone",
                "thujone 8",
                "thujone 8 mg/kg; thujone 3 mg/kg",
                "moonbeams 8 mg/kg",
                "alpha-thujone 3 mg/kg",
                "isosafrole 3 mg/kg",
                "isosafrol 3 mg/kg",
                "bergapten 1 mg/kg",
                "thujone n.d.",
            })
    void whatTellsNothingIsRefused(String text) {
        assertThat(Assay.read(text, QUANTITIES)).isInstanceOf(Understanding.Refused.class);
    }

    /** Per litre says nothing where no density is known. */
    @Test
    void withoutADensityALitreSaysNothing() {
        assertThat(assay("thujone 8 mg/L").fractions(watched("thujone"), OptionalDouble.empty()))
                .isNull();
    }

    /** 25 % stated as 0.25: of an oil what a recipe states is held to the tables as an analysis is. */
    @Test
    void aSlipInWhatARecipeStatesOfAnOilLiftsNoLimit() {
        Bench sage = new Bench()
                .carrying("sage oil", Kind.ESSENTIAL_OIL, 0.0, "alpha-thujone 0.25 %, beta-thujone 0.05 %", 0.1)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 0.1);
        assertThat(sage.verdicts(FarAnalysis.NAME)).containsExactly("CAUTION is this meant?");
        assertThat(sage.verdicts("eu-maximum")).contains("STOP EU above the limit");
        Bench sum = new Bench()
                .carrying("sage oil", Kind.ESSENTIAL_OIL, 0.0, "thujone 0.25 %", 0.1)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 0.1);
        assertThat(sum.findings("eu-not-as-such")).isEmpty();
        assertThat(sum.verdicts("eu-maximum")).contains("STOP EU above the limit");
    }
}
