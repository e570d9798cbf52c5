package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;

/** Names as makers write them, with the allergens that they bring, may bring and do not bring. */
class AllergensTest {
    private static Bench with(String name, Kind kind) {
        Bench bench = switch (kind) {
            case SPIRIT, WINE, LIQUEUR, ESSENCE, TINCTURE -> new Bench().strong(name, kind, 20.0, 100.0);
            case OTHER, FRESH_PLANT -> new Bench().holding(name, kind, Substance.WATER, 50.0, 100.0);
            default -> new Bench().grams(name, kind, 100.0);
        };
        return bench.strong("neutral spirit", Kind.SPIRIT, 96.0, 400.0);
    }

    private static Set<String> told(Bench bench) {
        return bench.safety().findings().stream()
                .filter(finding ->
                        finding.rule().startsWith("allergen") || finding.rule().equals("sulphites"))
                .map(Finding::verdict)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<Finding> told(Bench bench, Place place) {
        Serving serving = new Serving(30.0, 2.0, 70.0, EnumSet.of(place));
        return Safety.of(bench.plan(), serving, Grounds.SHIPPED).findings().stream()
                .filter(finding -> finding.rule().startsWith("allergen"))
                .toList();
    }

    @Test
    void aPlanTellsThemToo() {
        assertThat(ofPlan(with("almond milk", Kind.OTHER))).contains("contains almond (nuts)");
        assertThat(ofPlan(with("white wine", Kind.WINE))).contains("sulphites not known");
        assertThat(ofPlan(with("hazelnut liqueur", Kind.LIQUEUR))).contains("allergens not known");
        assertThat(ofPlan(with("malt whisky", Kind.SPIRIT))).isEmpty();
    }

    private static List<String> ofPlan(Bench bench) {
        return Safety.ofPlan(bench.plan(), Grounds.SHIPPED).stream()
                .filter(Rules::isOfAllergens)
                .map(Finding::verdict)
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "milk | DAIRY | contains milk",
                "double cream | DAIRY | contains milk",
                "Sahne | OTHER | contains milk",
                "Vollmilch | OTHER | contains milk",
                "lactose | SUGAR | contains milk",
                "Laktose | SUGAR | contains milk",
                "buttermilk | OTHER | contains milk",
                "Buttermilch | OTHER | contains milk",
                "Milchzucker | SUGAR | contains milk",
                "Milchpulver | OTHER | contains milk",
                "Vollmilchpulver | OTHER | contains milk",
                "Schlagobers | OTHER | contains milk",
                "Obers | OTHER | contains milk",
                "Molke | OTHER | contains milk",
                "Sahnelikör | LIQUEUR | contains milk",
                "cream liqueur | LIQUEUR | contains milk",
                "irish cream | LIQUEUR | contains milk",
                "eggnog | LIQUEUR | contains milk",
                "eggnog | LIQUEUR | contains eggs",
                "Vollei | OTHER | contains eggs",
                "Eidotter | OTHER | contains eggs",
                "surimi | OTHER | contains fish",
                "Haferdrink | OTHER | contains oats (cereals containing gluten)",
                "ghee | OTHER | contains milk",
                "white chocolate | OTHER | contains milk",
                "milk chocolate | OTHER | contains milk",
                "advocaat | LIQUEUR | contains eggs",
                "Eierlikör | LIQUEUR | contains eggs",
                "nocino | LIQUEUR | contains walnut (nuts)",
                "almond milk | OTHER | contains almond (nuts)",
                "almond milk | DAIRY | contains almond (nuts)",
                "Mandelmilch | OTHER | contains almond (nuts)",
                "Prunus dulcis kernels | DRIED_PLANT | contains almond (nuts)",
                "orgeat | OTHER | contains almond (nuts)",
                "marzipan | OTHER | contains almond (nuts)",
                "hazelnut praline | OTHER | contains hazelnut (nuts)",
                "praline paste | OTHER | contains nuts of a kind not said",
                "geröstete Haselnüsse | DRIED_PLANT | contains hazelnut (nuts)",
                "Walnüsse, grün | FRESH_PLANT | contains walnut (nuts)",
                "pistachios | DRIED_PLANT | contains pistachio (nuts)",
                "peanut butter | OTHER | contains peanuts",
                "celeriac | FRESH_PLANT | contains celery",
                "Knollensellerie | FRESH_PLANT | contains celery",
                "celery bitters | TINCTURE | contains celery",
                "tofu | OTHER | contains soya",
                "miso | OTHER | contains soya",
                "soy lecithin | OTHER | contains soya",
                "Sojamilch | OTHER | contains soya",
                "semolina | OTHER | contains wheat (cereals containing gluten)",
                "kamut | OTHER | contains wheat (cereals containing gluten)",
                "sourdough | OTHER | contains cereals containing gluten of a kind not said",
                "stout | OTHER | contains barley (cereals containing gluten)",
                "Malzextrakt | OTHER | contains barley (cereals containing gluten)",
                "oat milk | OTHER | contains oats (cereals containing gluten)",
                "Hafermilch | DAIRY | contains oats (cereals containing gluten)",
                "black sesame | DRIED_PLANT | contains sesame",
                "mustard seed | DRIED_PLANT | contains mustard",
                "lupin coffee | DRIED_PLANT | contains lupin",
                "isinglass | OTHER | contains fish",
                "Fischgelatine | OTHER | contains fish",
                "shrimp | OTHER | contains crustaceans",
                "oyster shell | OTHER | contains molluscs",
                "egg white | EGG | contains eggs",
                "Eiklar | OTHER | contains eggs",
                "Campden tablets | SALT | contains sulphites",
                "Butteröl | OTHER | contains milk",
                "Vanilleeis | OTHER | contains milk",
                "Krabbenextrakt | OTHER | contains crustaceans",
                "Nordseekrabben | OTHER | contains crustaceans",
                "Krokant | OTHER | contains nuts of a kind not said",
                "Worcestersauce | OTHER | contains fish",
                "SO2 solution | OTHER | contains sulphites",
            })
    void whatANameBringsIsNamed(String name, Kind kind, String verdict) {
        assertThat(told(with(name, kind))).contains(verdict);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "amaretto | LIQUEUR | not known if it contains almond (nuts)",
                "advocaat | LIQUEUR | not known if it contains milk",
                "surimi | OTHER | not known if it contains crustaceans",
                "Kokosmilch | OTHER | not known if it contains coconut or chestnut (nuts)",
                "dark chocolate | OTHER | not known if it contains milk",
                "lecithin | OTHER | not known if it contains soya",
                "Lezithin | OTHER | not known if it contains soya",
                "gelatine | OTHER | not known if it contains fish",
                "chitosan | OTHER | not known if it contains crustaceans",
                "gluten-free beer | OTHER | not known if it contains cereals containing gluten of a kind not said",
                "almond vodka | SPIRIT | not known if it contains almond (nuts)",
                "coconut milk | DAIRY | not known if it contains coconut or chestnut (nuts)",
                "orange liqueur | LIQUEUR | allergens not known",
                "Kaffeelikör | OTHER | allergens not known",
                "aromatic bitters | ESSENCE | allergens not known",
                "something green | LIQUEUR | allergens not known",
                "Zaubertrank | ESSENCE | allergens not known",
                "Wunderzeug | OTHER | allergens not known",
                "Vanilleeis | OTHER | not known if it contains eggs",
                "Worcestersauce | OTHER | not known if it contains cereals containing gluten of a kind not said",
                "Riesling | WINE | sulphites not known",
                "sparkling wine | WINE | sulphites not known",
                "Weißwein | OTHER | sulphites not known",
                "dry vermouth | WINE | sulphites not known",
                "cider | OTHER | sulphites not known",
                "lemon juice | JUICE | sulphites not known",
                "Limettensaft | JUICE | sulphites not known",
                "dried figs | OTHER | sulphites not known",
                "prunes | DRIED_PLANT | sulphites not known",
                "apricots | DRIED_PLANT | sulphites not known",
                "Turkish figs | DRIED_PLANT | sulphites not known",
                "cranberries | DRIED_PLANT | sulphites not known",
                "mango | DRIED_PLANT | sulphites not known",
                "getrocknete Birnen | DRIED_PLANT | sulphites not known",
                "Rosinen | OTHER | sulphites not known",
            })
    void whatANameMayBringIsNotKnown(String name, Kind kind, String verdict) {
        assertThat(told(with(name, kind))).contains(verdict);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "coconut milk | DAIRY | milk",
                "Kokosmilch | OTHER | milk",
                "rice milk | OTHER | milk",
                "almond milk | DAIRY | milk",
                "Mandelmilch | DAIRY | milk",
                "oat milk | DAIRY | milk",
                "cream of tartar | OTHER | milk",
                "cocoa butter | OTHER | milk",
                "Kakaobutter | OTHER | milk",
                "peanut butter | OTHER | milk",
                "buttercup | DRIED_PLANT | milk",
                "butternut squash | FRESH_PLANT | milk",
                "butterfly pea flowers | DRIED_PLANT | milk",
                "milk thistle | DRIED_PLANT | milk",
                "creme de cassis | LIQUEUR | milk",
                "cream sherry | WINE | milk",
                "dairy-free cordial | OTHER | milk",
                "eggplant | FRESH_PLANT | egg",
                "nutmeg | DRIED_PLANT | nuts",
                "Muskatnuss | DRIED_PLANT | nuts",
                "butternut squash | FRESH_PLANT | nuts",
                "kola nut | DRIED_PLANT | nuts",
                "sunflower lecithin | OTHER | soya",
                "buckwheat | DRIED_PLANT | gluten",
                "Buchweizen | DRIED_PLANT | gluten",
                "crab apple | FRESH_PLANT | crustaceans",
                "oyster mushroom | FRESH_PLANT | molluscs",
                "beef gelatine | OTHER | fish",
                "fresh lemon juice | JUICE | sulphites",
                "apricots | FRESH_PLANT | sulphites",
                "Weinbrand | SPIRIT | sulphites",
                "cherry leaves | DRIED_PLANT | sulphites",
                "Franzbranntwein | SPIRIT | sulphites",
                "Stechapfel | DRIED_PLANT | sulphites",
                "lemon essence | ESSENCE | allergens",
            })
    void aThingOfALikeNameIsNotToldForIt(String name, Kind kind, String what) {
        assertThat(told(with(name, kind)))
                .noneMatch(verdict -> verdict.contains(what + " ")
                        || verdict.endsWith(what)
                        || (what.equals("egg") && verdict.contains("eggs"))
                        || (what.equals("nuts") && verdict.contains("(nuts)"))
                        || verdict.startsWith(what));
    }

    /** Regulation (EU) No 1169/2011, Annex II: cereals, whey and nuts for making alcoholic distillates are exempt. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource(
            delimiter = '|',
            value = {
                "rye whiskey | SPIRIT",
                "wheat vodka | SPIRIT",
                "Korn | SPIRIT",
                "whey vodka | SPIRIT",
                "hazelnut distillate | DISTILLATE",
                "malt distillate | DISTILLATE",
            })
    void whatIsDistilledOfThemIsExemptInTheEuAsItsLawSays(String name, Kind kind) {
        Bench bench = new Bench().strong(name, kind, 40.0, 500.0);
        assertThat(told(bench)).containsExactly("distilled: exempt in the EU");
        assertThat(told(bench, Place.EU))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("Cereals, whey and nuts"));
        assertThat(told(bench, Place.US))
                .allSatisfy(finding -> assertThat(finding.verdict()).startsWith("not known if it contains"));
    }

    /** That the EU exempts these is from memory, so that it clears nothing. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "refined soya oil | not known if it contains soya",
                "raffiniertes Sojaöl | not known if it contains soya",
                "soya oil | contains soya",
                "glucose syrup | not known if it contains cereals containing gluten of a kind not said",
                "Glukosesirup | not known if it contains cereals containing gluten of a kind not said",
                "wheat glucose syrup | not known if it contains wheat (cereals containing gluten)",
                "barley glucose syrup | not known if it contains barley (cereals containing gluten)",
                "wheat syrup | contains wheat (cereals containing gluten)",
            })
    void whatIsRefinedStaysNotKnown(String name, String verdict) {
        Bench bench = with(name, Kind.OTHER);
        assertThat(told(bench)).containsExactly(verdict);
        if (verdict.startsWith("not known")) {
            assertThat(told(bench, Place.EU)).singleElement().satisfies(finding -> {
                assertThat(finding.message()).contains("From memory", "clears nothing");
                assertThat(finding.status()).isEqualTo("from memory");
            });
        }
    }

    /** 2 g of K2S2O5 bring 1.1526 g of SO2 into a kilogram; of that a tenth is drawn into 1 kg of drink, about 0.95 L of it per kg. */
    @Test
    void sulphitesOfAStageCountWithThePartThatIsDrawn() {
        Bench stage = new Bench()
                .grams("potassium metabisulphite", Kind.SALT, 2.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 998.0);
        Bench drink = new Bench().drawing("macerate", stage, 100.0).strong("vodka", Kind.SPIRIT, 40.0, 900.0);
        double litres = drink.safety().drink().litres();
        assertThat(drink.findings("sulphites")).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo("contains sulphites");
            double told = Double.parseDouble(finding.message().replaceAll(".*up to ([0-9.]+) mg/L.*", "$1"));
            assertThat(told).isCloseTo(115.26 / litres, within(1.0));
        });
        Bench whole = new Bench().drawing("macerate", stage, 1000.0);
        assertThat(whole.findings("sulphites").get(0).message())
                .contains("up to "
                        + QuantityWords.figures(1152.6 / whole.safety().drink().litres()));
    }

    @Test
    void milkThatWasDistilledIsNoWheyAndNotExempt() {
        assertThat(told(new Bench().strong("milk distillate", Kind.DISTILLATE, 40.0, 500.0)))
                .containsExactly("contains milk");
    }

    @Test
    void eachPlaceNamesItsOwn() {
        assertThat(told(with("celery seed", Kind.DRIED_PLANT), Place.US))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("none of the nine", "from memory"));
        assertThat(told(with("sesame", Kind.DRIED_PLANT), Place.US))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.message()).contains("USA asks", "from memory");
                    assertThat(finding.status()).isEqualTo("from memory");
                });
        assertThat(told(with("sesame", Kind.DRIED_PLANT), Place.EU))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.message()).isEqualTo("The EU asks that sesame be named.");
                    assertThat(finding.status()).isEqualTo("read");
                });
        assertThat(told(with("pine nuts", Kind.DRIED_PLANT), Place.EU)).isEmpty();
        assertThat(told(with("coconut", Kind.FRESH_PLANT), Place.EU)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Wash it with whole milk and strain. | contains milk",
                "Mit Milch waschen und filtern. | contains milk",
                "Fine with egg white. | contains eggs",
                "Mit Eiklar klären. | contains eggs",
                "Clarify with isinglass. | contains fish",
                "Mit Hausenblase schönen. | contains fish",
                "Stir in casein, wait a day. | contains milk",
                "Fine with gelatine, then bentonite. | not known if it contains fish",
                "Stir in a Campden tablet. | sulphites not known",
                "Serve over ice with cream. | not known if it contains milk",
                "Sahne in den Sahnesiphon füllen. | contains milk",
                "Ein Ei in das Eis rühren. | contains eggs",
            })
    void whatWashingAndFiningLeaveIsToldFromSteps(String step, String verdict) {
        Bench bench =
                new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0).step(step);
        assertThat(told(bench)).contains(verdict);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Strain through a nut milk bag.",
                "Line the funnel with butter muslin.",
                "No milk, no eggs.",
                "Ohne Milch und Ei.",
                "Fish out the peel after a day.",
                "Scrub the milk jug.",
                "Eis zugeben und rühren.",
                "Den Sahnesiphon füllen.",
                "Trockeneis ins Glas geben.",
                "Fill the cream siphon.",
                "In ein Sellerie-Glas füllen.",
                "Pour through a siphon port into a wine bottle."
            })
    void wordsOfALikeSoundInStepsBringNothing(String step) {
        Bench bench =
                new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0).step(step);
        assertThat(told(bench)).isEmpty();
    }

    @Test
    void notesTellWhatWentInAndWhatTheyOnlySpeakOf() {
        Bench spirit = new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(told(spirit.notes("The batch was milk washed.\nIt smells of marzipan.")))
                .contains("contains milk");
        Bench smells = new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(told(smells.notes("It smells of marzipan.")))
                .containsExactly("not known if it contains almond (nuts)");
    }

    /**
     * Two SO₂ from one K₂S₂O₅ of 222.32 g/mol and one Na₂S₂O₅ of 190.10 g/mol; SO₂ 64.06 g/mol: sums of the IUPAC atomic weights
     * (abridged, 2021) K 39.098, Na 22.990, S 32.06, O 15.999.
     */
    @Test
    @Tag("published")
    void sulphurDioxideOfItsSaltsIsByTheirMolarMass() {
        double dioxide = 2.0 * (32.06 + 2.0 * 15.999);
        double potassium = 2.0 * 39.098 + 2.0 * 32.06 + 5.0 * 15.999;
        double sodium = 2.0 * 22.990 + 2.0 * 32.06 + 5.0 * 15.999;
        List<Double> shares = Knowledge.SHIPPED.allergens().stream()
                .map(AllergenName::sulphurDioxide)
                .filter(share -> share > 0.0)
                .toList();
        assertThat(shares).hasSize(2);
        assertThat(shares.get(0)).isCloseTo(dioxide / potassium, within(5e-5));
        assertThat(shares.get(1)).isCloseTo(dioxide / sodium, within(5e-5));
    }

    @Test
    void metabisulphiteIsCountedPerLitreAndNeverCleared() {
        Bench little =
                new Bench().grams("potassium metabisulphite", Kind.SALT, 0.01).grams("water", Kind.WATER, 998.2);
        assertThat(little.findings("sulphites")).singleElement().satisfies(finding -> {
            assertThat(finding.message()).contains("up to 5.76 mg/L");
            assertThat(finding.verdict()).isEqualTo("sulphites not known");
        });
        Bench much = new Bench().grams("E224", Kind.SALT, 0.1).grams("water", Kind.WATER, 998.2);
        assertThat(much.verdicts("sulphites")).containsExactly("NOTE contains sulphites");
    }

    @ParameterizedTest
    @CsvSource({
        "Trockenaprikosen, DRIED_PLANT",
        "Trockenpflaumen, DRIED_PLANT",
        "Dörraprikosen, DRIED_PLANT",
        "Softaprikosen, DRIED_PLANT",
        "Trockenfeigen, DRIED_PLANT",
        "Trockenmangos, DRIED_PLANT",
        "Trockenbirnen, DRIED_PLANT",
        "Dörrbirnen, DRIED_PLANT",
        "Kletzen, DRIED_PLANT",
        "Hutzeln, DRIED_PLANT",
        "Zitronenkonzentrat, JUICE",
    })
    void germanNamesOfDriedFruitAndConcentratesAskAboutSulphites(String name, Kind kind) {
        assertThat(told(with(name, kind))).as(name).contains("sulphites not known");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Add white wine.",
                "Weißwein zugeben.",
                "Add dried apricots.",
                "Getrocknete Aprikosen zugeben.",
                "Trockenfeigen zugeben."
            })
    void wineAndDriedFruitThatAStepAloneBringsAskAboutSulphitesWhereNoLineDoes(String step) {
        Bench alone =
                new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0).step(step);
        assertThat(alone.findings("sulphites")).as(step).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo("sulphites not known");
            assertThat(finding.where()).isEqualTo("step 1 of your own");
        });
        Bench ofLine = with("white wine", Kind.WINE).step(step);
        assertThat(ofLine.findings("sulphites"))
                .as(step)
                .singleElement()
                .extracting(Finding::where)
                .isEqualTo("white wine");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Serve with white wine.", "Add no wine.", "Pour it into a wine glass."})
    void wineThatDoesNotGoInAsksNothing(String step) {
        Bench drink =
                new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0).step(step);
        assertThat(drink.findings("sulphites")).as(step).isEmpty();
    }

    /** By hand: 18 mg of K2S2O5 bring 10.37 mg of SO2, in 1000 g; the litre of 40 % vol weighs 948 g. */
    @Test
    void sulphitesThatAreWeighedAreComparedByMassAndByVolume() {
        Bench drink = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                .holding("potassium metabisulphite", Kind.OTHER, Substance.OTHER_SOLIDS, 100.0, 0.018);
        assertThat(drink.findings("sulphites")).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo("contains sulphites");
            assertThat(finding.message()).contains("9.83 mg/L, 10.4 mg/kg", "10 mg/kg or 10 mg/L", "USA");
        });
        assertThat(inPlace(drink, Place.US)).contains("From 10 mg/kg").doesNotContain("EU");
        assertThat(inPlace(drink, Place.EU)).contains("10 mg/kg or 10 mg/L").doesNotContain("USA");
    }

    private static String inPlace(Bench drink, Place place) {
        Serving serving = new Serving(30.0, 2.0, 70.0, EnumSet.of(place));
        return Safety.of(drink.plan(), serving, Grounds.SHIPPED).findings().stream()
                .filter(finding -> finding.rule().equals("sulphites"))
                .map(Finding::message)
                .collect(Collectors.joining());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Butterschmalz", "Schmalz", "Gänseschmalz", "Schweineschmalz"})
    void lardIsNoMalt(String name) {
        assertThat(with(name, Kind.OTHER).findings("allergen-gluten")).as(name).isEmpty();
        assertThat(told(with(name, Kind.OTHER)).contains("contains milk"))
                .as(name)
                .isEqualTo(name.equals("Butterschmalz"));
    }

    @Test
    void eggOfAHenIsEggInGermanToo() {
        assertThat(told(with("Hühnereiweiß", Kind.OTHER))).contains("contains eggs");
        assertThat(told(with("Wachteleier", Kind.EGG))).contains("contains eggs");
        assertThat(told(with("Milcheiweiß", Kind.OTHER)))
                .contains("contains milk")
                .doesNotContain("contains eggs");
        Bench fined =
                new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0).step("Mit Hühnereiweiß schönen.");
        assertThat(told(fined)).contains("contains eggs");
    }
}
