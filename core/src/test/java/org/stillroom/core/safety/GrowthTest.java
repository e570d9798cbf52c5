package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.acid.Ph;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.recipe.Condition;
import org.stillroom.core.recipe.Treatment;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** What can grow in a drink, by figures; what is not known never makes it keep. */
class GrowthTest {
    private static final Condition PASTEURISED = new Condition(null, Treatment.PASTEURISED);

    private static Bench sweet(double strength, double sugarGrams) {
        return new Bench()
                .strong("neutral spirit", Kind.SPIRIT, strength, 900.0)
                .grams("white sugar", Kind.SUGAR, sugarGrams);
    }

    private static Bench lemonade(double citricGrams) {
        return new Bench()
                .grams("water", Kind.WATER, 900.0)
                .grams("white sugar", Kind.SUGAR, 90.0)
                .grams("citric acid", Kind.ACID, citricGrams);
    }

    private static Keeping keeping(Bench bench) {
        return Objects.requireNonNull(bench.safety().keeping());
    }

    private static Contents contents(Map<Substance, Double> grams) {
        Contents all = Contents.NONE;
        for (Map.Entry<Substance, Double> each : grams.entrySet()) {
            all = all.plus(Contents.of(each.getKey(), each.getValue()));
        }
        return all;
    }

    private static Contents mixture(Substance substance, double massPercent) {
        return contents(Map.of(substance, massPercent, Substance.WATER, 100.0 - massPercent));
    }

    /**
     * Freezing points of the CRC Handbook, 102nd ed., section 5, as water activity: −ln a = 9.6934e-3·ΔT + 4.761e-6·ΔT² (Ferro
     * Fontán and Chirife 1981, from memory; the first constant is the heat of fusion over R·T², 6009.5/(8.31446·273.15²)). Where
     * they freeze is colder than 20 °C, so that they agree to 0.01, half of what is claimed, and ethanol, which changes most, to 0.02.
     */
    @ParameterizedTest
    @CsvSource({
        "sucrose, 42, 0.01",
        "glucose, 30, 0.01",
        "fructose, 30, 0.01",
        "glycerol, 36, 0.01",
        "citric, 30, 0.01",
        "ethanol, 15, 0.02"
    })
    @Tag("published")
    void waterActivityAgreesWithWhereSolutionsFreeze(String name, double upTo, double within) {
        int compared = 0;
        for (Table.Row row : Tables.open("liquid/freezing_depression.csv").rows()) {
            double percent = row.number("mass_percent");
            if (row.text("substance").equals(name) && percent <= upTo) {
                double depression = row.number("depression_celsius");
                double activity = Math.exp(-9.6934e-3 * depression - 4.761e-6 * depression * depression);
                Substance substance = Substance.valueOf(name.toUpperCase(java.util.Locale.ROOT));
                assertThat(WaterActivity.of(mixture(substance, percent)))
                        .as(name + " " + percent)
                        .isCloseTo(activity, within(within));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(5);
    }

    /** Saturated sucrose at 25 °C, 67.5 % mass: 0.85 by handbooks of water activity, from memory; Norrish holds to 0.02 there. */
    @Test
    void aSaturatedSyrupIsAlmostAsDryAsBacteriaNeedIt() {
        assertThat(WaterActivity.of(mixture(Substance.SUCROSE, 67.5))).isCloseTo(0.85, within(0.02));
    }

    @Test
    @Tag("property")
    void waterActivityFallsWithWhateverIsDissolvedAndStaysBetweenNoughtAndOne() {
        Random random = new Random(99);
        for (int i = 0; i < 500; i++) {
            Contents one = contents(Map.of(
                    Substance.WATER, 50.0 + 400.0 * random.nextDouble(),
                    Substance.ETHANOL, 150.0 * random.nextDouble(),
                    Substance.SUCROSE, 200.0 * random.nextDouble(),
                    Substance.GLYCEROL, 40.0 * random.nextDouble()));
            double before = WaterActivity.of(one);
            assertThat(before).as("seed 99, " + i).isBetween(0.0, 1.0);
            for (Substance more : new Substance[] {Substance.SUCROSE, Substance.FRUCTOSE, Substance.GLYCEROL}) {
                assertThat(WaterActivity.of(one.plus(contents(Map.of(more, 5.0)))))
                        .as("seed 99, " + i + ", " + more)
                        .isLessThan(before);
            }
        }
    }

    /** From memory, as manuals of chemicals print them: citric 0.1 N 2.2, tartaric 0.1 N 2.2, acetic 0.1 M 2.9 and 0.01 M 3.4. Without activities of the ions a tenth and a half off. */
    @ParameterizedTest
    @CsvSource({"CITRIC, 0.0333, 2.2", "TARTARIC, 0.05, 2.2", "ACETIC, 0.1, 2.9", "ACETIC, 0.01, 3.4"})
    void acidsInWaterAreAsSourAsManualsSay(Acid acid, double molar, double ph) {
        assertThat(Ph.of(Map.of(acid, molar), 0.0, 0.0)).isCloseTo(ph, within(0.15));
    }

    /** Half of the protons of a weak acid held back by as much base: pH is its pK, by hand. */
    @Test
    void halfNeutralisedItStandsAtItsConstant() {
        assertThat(Ph.of(Map.of(Acid.ACETIC, 0.1), 0.05, 0.0)).isCloseTo(4.76, within(0.01));
        assertThat(Ph.of(Map.of(), 0.0, 0.0)).isCloseTo(7.0, within(0.001));
    }

    @Test
    void aPlainLiqueurKeepsAndIsOneQuietLine() {
        Bench plain = sweet(40.0, 200.0);
        assertThat(plain.verdicts(Growth.KEEPING)).containsExactly("NOTE keeps on the shelf");
        assertThat(plain.verdicts("growth")).isEmpty();
        assertThat(Safety.ofPlan(plain.plan(), Grounds.SHIPPED)).isEmpty();
        assertThat(keeping(plain).label()).isEmpty();
    }

    /** 60 % vol of 900 g with sugar: the same drink at 19.9 and at 20.1 % vol. */
    @ParameterizedTest
    @CsvSource({"20.1, keeps on the shelf", "19.9, cold once open"})
    void fromTwentyPerCentOnAlcoholAloneHolds(double strength, String where) {
        Bench drink = new Bench().strong("neutral spirit", Kind.SPIRIT, strength, 1000.0);
        assertThat(keeping(drink).where().label()).isEqualTo(where);
    }

    /** Units of Delle by hand: sugar in g/100 mL and 4.5 times % vol; at 78 yeast is likely held, which is from memory and clears nothing. */
    @ParameterizedTest
    @CsvSource({"16.0, 40, can ferment again, 14", "16.0, 200, yeast likely held, 90"})
    void wineAndFruitAreToldByTheUnitsOfDelle(double strength, double sugarGrams, String verdict, int days) {
        Bench drink =
                new Bench().strong("muscat", Kind.WINE, strength, 1000.0).grams("white sugar", Kind.SUGAR, sugarGrams);
        Keeping keeping = keeping(drink);
        double byHand = Keeping.sugar(drink.safety().drink()) / 10.0
                + 4.5 * drink.safety().drink().strength();
        assertThat(keeping.delle()).isCloseTo(byHand, within(1e-9));
        assertThat(drink.verdicts("growth")).containsExactly("CAUTION " + verdict);
        assertThat(keeping.where()).isEqualTo(Keeping.Where.FRIDGE);
        assertThat(keeping.days()).isEqualTo(days);
    }

    /** Raspberry juice and spirit of 40 % vol, 570 and 430 mL: 17.2 % vol. Neither it nor one of 15.6 % vol with 94 g/L is cleared by the units; pasteurised it is, and at 18 % vol. */
    @Test
    void memoryNeverClearsFruitBelowEighteenPercent() {
        Bench juicy = new Bench()
                .holding("raspberry juice", Kind.JUICE, Substance.SUCROSE, 8.0, 590.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 408.0);
        assertThat(juicy.safety().drink().strength()).isCloseTo(17.2, within(0.2));
        assertThat(juicy.findings("growth")).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo("yeast likely held");
            assertThat(finding.howSure()).contains("from memory");
            assertThat(finding.remedy()).contains("fridge", "pasteurise");
        });
        assertThat(Safety.ofPlan(juicy.plan(), Grounds.SHIPPED))
                .extracting(finding -> finding.verdict())
                .contains("yeast likely held", "keep it cold");
        assertThat(Safety.ofPlan(juicy.plan(), Grounds.SHIPPED.with(PASTEURISED)))
                .extracting(finding -> finding.verdict())
                .doesNotContain("yeast likely held", "keep it cold");

        Bench sweeter = new Bench()
                .holding("raspberry juice", Kind.JUICE, Substance.SUCROSE, 8.0, 560.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 352.0)
                .grams("white sugar", Kind.SUGAR, 50.0);
        assertThat(sweeter.safety().drink().strength()).isCloseTo(15.6, within(0.4));
        assertThat(sweeter.verdicts("growth")).containsExactly("CAUTION yeast likely held");

        Bench strong = new Bench()
                .holding("raspberry juice", Kind.JUICE, Substance.SUCROSE, 8.0, 540.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 480.0);
        assertThat(strong.safety().drink().strength()).isGreaterThan(18.0);
        assertThat(strong.verdicts("growth")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"almond milk", "cream", "egg yolk"})
    void milkNutMilkAndEggStandInTheCold(String name) {
        Kind kind = name.equals("cream") ? Kind.DAIRY : name.equals("egg yolk") ? Kind.EGG : Kind.OTHER;
        Bench strong = new Bench().strong("neutral spirit", Kind.SPIRIT, 60.0, 400.0);
        Bench weak = new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 300.0);
        if (kind == Kind.OTHER) {
            strong.holding(name, kind, Substance.WATER, 95.0, 300.0);
            weak.holding(name, kind, Substance.WATER, 95.0, 600.0);
        } else {
            strong.grams(name, kind, 300.0);
            weak.grams(name, kind, 600.0);
        }
        assertThat(strong.verdicts(Growth.KEEPING)).containsExactly("NOTE keep it cold");
        assertThat(keeping(strong).label()).isEqualTo("Keep in the fridge, best within three months of filling");
        assertThat(weak.verdicts(Growth.KEEPING)).containsExactly("CAUTION keep it cold");
        assertThat(keeping(weak).days()).isEqualTo(14);
        assertThat(Safety.ofPlan(strong.plan(), Grounds.SHIPPED))
                .anyMatch(finding -> finding.rule().equals(Growth.KEEPING));
    }

    /** 200 g of it in a litre at about 14 % vol, sweet enough for 78 units of Delle. */
    @ParameterizedTest
    @CsvSource({
        "egg yolk, OTHER",
        "cream, OTHER",
        "Sahne, JUICE",
        "milk, OTHER",
        "milk, WATER",
        "Eier, OTHER",
        "Schlagobers, OTHER",
        "Mandelmilch, OTHER",
        "Kokosmilch, JUICE",
        "Haferdrink, OTHER",
        "coconut cream, SYRUP",
        "Vollmilchpulver, OTHER",
        "Irish cream, LIQUEUR",
        "cream liqueur, LIQUEUR",
        "Sahnelikör, LIQUEUR",
        "Eierlikör, LIQUEUR",
        "eggnog, LIQUEUR"
    })
    void milkAndEggAreKnownByTheirWordsOfWhateverKind(String name, Kind kind) {
        Bench drink = with(name, kind);
        assertThat(drink.safety().drink().strength()).isBetween(12.0, 17.0);
        assertThat(drink.verdicts(Growth.KEEPING)).containsExactly("CAUTION keep it cold");
        assertThat(keeping(drink).days()).isEqualTo(14);
        assertThat(keeping(drink).reason()).startsWith("With milk, nut milk or egg");
    }

    @ParameterizedTest
    @ValueSource(strings = {"milk thistle", "cream of tartar", "cream sherry", "Milchsäure", "cocoa butter"})
    void whatOnlySoundsLikeMilkIsNone(String name) {
        assertThat(keeping(with(name, Kind.OTHER)).reason()).doesNotContain("milk");
    }

    @ParameterizedTest
    @CsvSource({
        "raspberries, OTHER",
        "Himbeeren, OTHER",
        "apple puree, OTHER",
        "cider, OTHER",
        "kombucha, OTHER",
        "raisins, OTHER",
        "Rosinen, DRIED_PLANT",
        "Traubensaft, SYRUP",
        "Wassermelone, OTHER",
        "Apfelmus, OTHER",
        "dried figs, DRIED_PLANT"
    })
    void fruitAndWhatHasFermentedBringYeastOfWhateverKind(String name, Kind kind) {
        Bench drink = with(name, kind);
        assertThat(drink.verdicts("growth")).containsExactly("CAUTION yeast likely held");
        assertThat(keeping(drink).days()).isEqualTo(90);
        assertThat(keeping(drink).reason()).contains("fruit, wine or honey bring:");
    }

    @Test
    void aMacerateOfFruitAtFifteenPercentBringsYeastAndAStrongOneIsNotKnown() {
        Bench weak = new Bench()
                .strong("raspberry macerate", Kind.MACERATE, 15.0, 900.0)
                .grams("white sugar", Kind.SUGAR, 250.0);
        assertThat(weak.verdicts("growth")).isNotEmpty();
        assertThat(keeping(weak).where()).isEqualTo(Keeping.Where.FRIDGE);
        Bench strong = new Bench()
                .strong("raspberry macerate", Kind.MACERATE, 50.0, 200.0)
                .strong("neutral spirit", Kind.SPIRIT, 10.0, 600.0)
                .grams("white sugar", Kind.SUGAR, 250.0);
        assertThat(keeping(strong).reason()).startsWith("Whether something in it brings yeast is not known");
        assertThat(keeping(strong).days()).isEqualTo(90);
    }

    @ParameterizedTest
    @CsvSource({"dried orange peel, DRIED_PLANT", "something of my own, OTHER", "orange bitters, LIQUEUR"})
    void whatNobodyKnowsIsNotSaidToBringNothing(String name, Kind kind) {
        Keeping keeping = keeping(with(name, kind));
        assertThat(keeping.reason()).doesNotContain("Nothing in it");
        assertThat(keeping.where()).isEqualTo(Keeping.Where.FRIDGE);
    }

    @Test
    void juiceBelowTwentyPercentIsNotSaidToBringNothing() {
        Bench drink = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 30.0, 600.0)
                .holding("watermelon juice", Kind.JUICE, Substance.SUCROSE, 8.0, 330.0);
        assertThat(drink.safety().drink().strength()).isBetween(18.0, 20.0);
        assertThat(keeping(drink).reason()).contains("may bring yeast", "from memory");
    }

    private static Bench with(String name, Kind kind) {
        boolean strong = kind == Kind.LIQUEUR;
        Bench drink = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, strong ? 20.0 : 30.0, 420.0)
                .grams("white sugar", Kind.SUGAR, 250.0);
        return strong ? drink.strong(name, kind, 17.0, 300.0) : drink.holding(name, kind, Substance.WATER, 80.0, 200.0);
    }

    @Test
    void aThinSyrupWithoutAcidIsWarnedOfBotulismAndASourOneIsNot() {
        Bench plain = lemonade(0.0);
        assertThat(keeping(plain).sourness().ph()).isNull();
        assertThat(plain.findings("growth"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("not known", "botulism"));
        assertThat(keeping(plain).days()).isEqualTo(14);

        Bench sour = lemonade(5.0);
        assertThat(keeping(sour).sourness().ph()).isCloseTo(2.7, within(0.05)); // by hand: docs/how-it-works/growth.md
        assertThat(keeping(sour).waterActivity()).isCloseTo(0.994, within(0.0005));
        assertThat(sour.findings("growth")).isEmpty();
        assertThat(keeping(sour).days()).isEqualTo(30);
    }

    /** 0.3 g/L of citric acid are 1.6 mmol, and hard water alone holds 6 mmol of it back. */
    @Test
    void aLittleAcidDoesNotCountInHardWater() {
        assertThat(lemonade(0.3).findings("growth")).hasSize(1);
        assertThat(keeping(lemonade(0.3)).sourness().ph()).isGreaterThan(6.0);
    }

    @Test
    void whatBringsSaltsLeavesThePhUnknownUntilItIsMeasured() {
        Bench juice = lemonade(5.0).grams("quince juice", Kind.JUICE, 200.0);
        assertThat(keeping(juice).sourness().ph()).isNull();
        assertThat(juice.findings("growth"))
                .extracting(finding -> finding.verdict())
                .contains("botulism");
        Safety measured =
                Safety.of(juice.plan(), Serving.USUAL, Grounds.SHIPPED.with(new Condition(3.4, Treatment.PASTEURISED)));
        assertThat(measured.findings()).noneMatch(finding -> finding.verdict().equals("botulism"));
        assertThat(Objects.requireNonNull(measured.keeping()).where()).isEqualTo(Keeping.Where.COLD_ONCE_OPEN);
        Safety mild = Safety.of(juice.plan(), Serving.USUAL, Grounds.SHIPPED.with(new Condition(4.7, Treatment.NONE)));
        assertThat(mild.findings()).anyMatch(finding -> finding.verdict().equals("botulism"));
    }

    /** Boiling does not kill spores: where neither acid nor alcohol nor sugar holds them, the bottle still stands in the cold. */
    @Test
    void pasteurisedWithoutKnownPhItIsNoShelfDrink() {
        Safety heated = Safety.of(lemonade(0.0).plan(), Serving.USUAL, Grounds.SHIPPED.with(PASTEURISED));
        assertThat(Objects.requireNonNull(heated.keeping()).where()).isEqualTo(Keeping.Where.FRIDGE);
        assertThat(heated.findings()).anyMatch(finding -> finding.verdict().equals("botulism"));
    }

    /** Heat kills the yeast and leaves the spores, in a bottle that is closed then. */
    @Test
    void heatIsNoCounselWhereSporesWouldBeShutIn() {
        Bench weak = lemonade(0.0).fresh("thyme", 75.0, 30.0).fresh("raspberries", 85.0, 200.0);
        assertThat(weak.findings("growth"))
                .filteredOn(finding -> !finding.verdict().equals("botulism"))
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.remedy())
                        .contains("bring it below pH 4.6 before it is pasteurised")
                        .doesNotContain("18 % vol"));
    }

    @Test
    void whatGrowsIsSaidWhereItIsFilledOrPutAway() {
        Bench drink = with("apple puree", Kind.OTHER)
                .step("Stir until it is clear.")
                .step("Fill it into swing-top bottles and close them.")
                .step("Serve over ice.");
        assertThat(drink.findings("growth")).extracting(Finding::where).containsExactly("step 2 of your own");
        assertThat(drink.findings("keeping")).extracting(Finding::where).containsExactly("step 2 of your own");
        Bench german = with("apple puree", Kind.OTHER).step("Rühren.").step("In Bügelflaschen abfüllen.");
        assertThat(german.findings("growth")).extracting(Finding::where).containsExactly("step 2 of your own");
        assertThat(with("apple puree", Kind.OTHER).findings("growth"))
                .extracting(Finding::where)
                .containsExactly("");
    }

    @Test
    void whatTheRecipeSaysCountsUnlessSomethingElseIsKnown() {
        Condition said = new Condition(3.4, Treatment.PASTEURISED);
        Bench juice = lemonade(5.0).grams("quince juice", Kind.JUICE, 200.0).saying(said);
        assertThat(keeping(juice).where()).isEqualTo(Keeping.Where.COLD_ONCE_OPEN);
        assertThat(juice.findings("keeping"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.remedy()).endsWith("Measure its pH again when anything of it changes."));
        Safety batch = Safety.of(juice.plan(), Serving.USUAL, Grounds.SHIPPED.with(Condition.AS_MIXED));
        assertThat(Objects.requireNonNull(batch.keeping()).where())
                .as("a batch of which nothing was measured is not cleared by its recipe")
                .isEqualTo(Keeping.Where.FRIDGE);
        assertThat(batch.keeping().sourness().ph()).isNull();
    }

    @Test
    void spiritIsNotPasteurisedForNothing() {
        Bench strong = sweet(30.0, 100.0).saying(PASTEURISED);
        assertThat(keeping(strong).where()).isEqualTo(Keeping.Where.SHELF);
        assertThat(strong.findings("growth"))
                .extracting(finding -> finding.verdict())
                .containsExactly("not to be pasteurised");
        assertThat(sweet(16.0, 100.0).saying(PASTEURISED).findings("growth")).isEmpty();
    }

    @Test
    void herbsUnderOilAreWarnedOf() {
        Bench garnish =
                new Bench().fresh("basil", 90.0, 20.0).holding("olive oil", Kind.OTHER, Substance.FAT, 100.0, 200.0);
        assertThat(garnish.findings("growth")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.message()).contains("under oil");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"olive oil", "extra virgin olive oil", "toasted sesame oil", "Rapsöl, kaltgepresst"})
    void aFattyOilIsNoEssentialOilHoweverItIsWritten(String name) {
        Bench garnish = new Bench().fresh("basil", 90.0, 20.0).holding(name, Kind.OTHER, Substance.OIL, 100.0, 200.0);
        assertThat(garnish.safety().drink().gramsPerLitre(Substance.OIL)).isZero();
        assertThat(garnish.findings("neat-oil")).isEmpty();
        assertThat(garnish.findings("concentrate")).isEmpty();
        assertThat(garnish.findings("growth"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("under oil"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"peppermint oil in sunflower oil", "wintergreen olive oil", "neroli oil", "bitter almond oil"})
    void anOilThatNamesMoreThanAFattyOneStaysAnEssentialOil(String name) {
        Bench mixed = new Bench()
                .holding(name, Kind.OTHER, Substance.OIL, 100.0, 1.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(mixed.findings("neat-oil")).isNotEmpty();
    }

    @Test
    void aFattyOilKeepsItsAllergen() {
        Bench washed = new Bench()
                .holding("sesame oil", Kind.OTHER, Substance.OIL, 100.0, 100.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(washed.verdicts("allergen-sesame")).isNotEmpty();
        assertThat(washed.findings("neat-oil")).isEmpty();
    }

    /** Whatever is in it: below 20 % vol nothing is told to keep on the shelf, and without a known pH nothing weak keeps beyond two weeks. */
    @Test
    @Tag("property")
    void whatIsNotKnownNeverMakesItKeep() {
        Random random = new Random(7);
        for (int i = 0; i < 150; i++) {
            Bench drink = new Bench()
                    .strong("neutral spirit", Kind.SPIRIT, 2.0 + 20.0 * random.nextDouble(), 800.0)
                    .grams("white sugar", Kind.SUGAR, 200.0 * random.nextDouble())
                    .grams("pear juice", Kind.JUICE, 300.0 * random.nextDouble() + 1.0);
            Keeping keeping = keeping(drink);
            double strength = drink.safety().drink().strength();
            boolean dry = keeping.waterActivity() <= Keeping.DRY;
            assertThat(keeping.sourness().ph()).isNull();
            if (strength < Keeping.HELD) {
                assertThat(keeping.where()).as("seed 7, " + i).isNotEqualTo(Keeping.Where.SHELF);
            }
            if (strength < Keeping.SPORES_HELD && !dry) {
                assertThat(keeping.days()).as("seed 7, " + i).isEqualTo(14);
            }
        }
    }
}
