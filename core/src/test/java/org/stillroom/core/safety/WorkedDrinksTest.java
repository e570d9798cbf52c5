package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What comes into a drink, worked by hand beside it; the three liqueurs of docs/how-it-works/safety.md among them. */
class WorkedDrinksTest {
    /** A kilogram of drink at about 40 % vol with so many milligrams of an oil. */
    private static Bench kilogram(String oil, double milligrams) {
        return new Bench()
                .grams(oil, Kind.ESSENTIAL_OIL, milligrams / 1000.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0 - milligrams / 1000.0);
    }

    /** Dalmatian sage oil, 43 % alpha- and 8.5 % beta-thujone at worst: 10 mg/kg by 10 / 0.515 = 19.4 mg of oil per kg. */
    /** 2.3 g of anise oil, 87 to 94 % anethole or more by its source groups: near 2 g/kg, and no liquorice. */
    @Test
    void anAniseedDrinkKnowsItsAnethole() {
        Bench anise =
                new Bench().grams("anise oil", Kind.ESSENTIAL_OIL, 2.3).strong("spirit", Kind.SPIRIT, 40.0, 997.7);
        Held anethole = held(anise, "anethole");
        assertThat(anethole.isKnown()).isTrue();
        assertThat(anethole.gramsPerLitre().most()).isBetween(1.9, 2.3);
        assertThat(held(anise, "glycyrrhizic acid")).isEqualTo(new Held(Range.NOTHING, true));
        Bench mystery = new Bench()
                .strong("essence of the fair", Kind.ESSENCE, 80.0, 10.0)
                .strong("spirit", Kind.SPIRIT, 40.0, 990.0);
        assertThat(held(mystery, "anethole").isKnown()).isFalse();
    }

    /** 200 g of yolk, 100 g of whole egg (28 to 36 % yolk, from memory) in what comes to a litre and a bit. */
    @Test
    void yolkIsCountedPureAndInWholeEgg() {
        Bench egg = new Bench()
                .grams("egg yolk", Kind.EGG, 200.0)
                .grams("whole egg", Kind.EGG, 100.0)
                .grams("egg white", Kind.EGG, 50.0)
                .strong("spirit", Kind.SPIRIT, 40.0, 700.0);
        double litres = egg.safety().drink().litres();
        Held yolk = held(egg, "egg yolk");
        assertThat(yolk.gramsPerLitre().least()).isCloseTo(228.0 / litres, within(1e-9));
        assertThat(yolk.gramsPerLitre().most()).isCloseTo(236.0 / litres, within(1e-9));
        assertThat(yolk.isKnown()).isTrue();
        for (String name : List.of("advocaat", "Eierlikör")) {
            Bench bought = new Bench().strong(name, Kind.LIQUEUR, 15.0, 500.0);
            assertThat(held(bought, "egg yolk").isKnown()).as(name).isFalse();
        }
    }

    /** Of a kilogram with 300 g of yolk in it 400 g are drawn: 120 g of yolk. */
    @Test
    void yolkOfAStageCountsByThePartThatIsDrawn() {
        Bench stage = new Bench().grams("egg yolk", Kind.EGG, 300.0).strong("spirit", Kind.SPIRIT, 40.0, 700.0);
        Bench egg = new Bench().drawing("egg base", stage, 400.0).strong("vodka", Kind.SPIRIT, 40.0, 600.0);
        Held yolk = held(egg, "egg yolk");
        double litres = egg.safety().drink().litres();
        assertThat(yolk.isKnown()).isTrue();
        assertThat(yolk.gramsPerLitre().least() * litres).isCloseTo(120.0, within(0.5));
        assertThat(yolk.gramsPerLitre().most() * litres).isCloseTo(120.0, within(0.5));
    }

    /** 90 g of yolk and 30 g of white are 90 g of yolk, whatever language they are named in. */
    @ParameterizedTest
    @CsvSource({"egg yolk, egg white", "Eigelb, Eiweiß", "Dotter, Eiklar", "Eidotter, Eiweiss"})
    void yolkAndWhiteAreToldApartInGermanToo(String yellow, String white) {
        Bench egg = new Bench()
                .grams(yellow, Kind.EGG, 90.0)
                .grams(white, Kind.EGG, 30.0)
                .strong("spirit", Kind.SPIRIT, 40.0, 600.0);
        Held yolk = held(egg, "egg yolk");
        assertThat(yolk.gramsPerLitre().least())
                .isCloseTo(90.0 / egg.safety().drink().litres(), within(1e-9));
        assertThat(yolk.gramsPerLitre().most()).isEqualTo(yolk.gramsPerLitre().least());
    }

    /** 1 g of bean in a kilogram: 10 % of coumarin are reported, and the worst counts; of a plant anything from nothing to all may go over. */
    @Test
    void tonkaCountsWithTheMostThatIsReported() {
        Amount coumarin = new Bench()
                .grams("tonka bean", Kind.DRIED_PLANT, 1.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 999.0)
                .amount("coumarin");
        assertThat(coumarin.perKilogram().least()).isZero();
        assertThat(coumarin.perKilogram().most()).isCloseTo(100.0, within(0.1));
    }

    /** Which acid it is follows from what is in it, else from its name. */
    @ParameterizedTest
    @CsvSource({
        "Zitronensäure, CITRIC",
        "Citronensaeure, CITRIC",
        "Weinsäure, TARTARIC",
        "Apfelsäure, MALIC",
        "Äpfelsäure, MALIC",
        "Milchsäure, LACTIC",
        "Citric Acid of the shop, CITRIC"
    })
    void anAcidIsKnownByItsGermanName(String name, Substance acid) {
        Bench bench = new Bench().grams(name, Kind.ACID, 5.0).strong("spirit", Kind.SPIRIT, 40.0, 995.0);
        assertThat(bench.plan().liquid().grams(acid)).isCloseTo(5.0, within(1e-9));
        Bench said = new Bench()
                .holding("my sour powder", Kind.ACID, acid, 100.0, 5.0)
                .strong("spirit", Kind.SPIRIT, 40.0, 995.0);
        assertThat(said.plan().liquid().grams(acid)).isCloseTo(5.0, within(1e-9));
    }

    private static Held held(Bench bench, String what) {
        return java.util.Objects.requireNonNull(bench.safety().held().get(what));
    }

    @Test
    @Tag("published")
    void sageOilReachesTenMilligramsOfThujoneAtNineteenOfOil() {
        assertThat(kilogram("sage oil", 19.4).amount("thujone").perKilogram().most())
                .isCloseTo(9.991, within(0.001));
        assertThat(kilogram("sage oil", 19.4).verdicts("eu-maximum")).contains("NOTE EU within the limit");
        assertThat(kilogram("sage oil", 19.5).verdicts("eu-maximum")).contains("STOP EU above the limit at worst");
    }

    /** Peppermint: menthofuran 9 % binds at 2222 mg/kg before pulegone 4 % does at 2500. */
    @Test
    @Tag("published")
    void menthofuranBindsBeforePulegone() {
        Bench fits = kilogram("peppermint oil", 2222);
        assertThat(fits.amount("menthofuran").perKilogram().most()).isCloseTo(199.98, within(0.001));
        assertThat(fits.findings("eu-maximum")).noneMatch(finding -> finding.severity() == Severity.STOP);
        assertThat(kilogram("peppermint oil", 2223).findings("eu-maximum"))
                .filteredOn(finding -> finding.severity() == Severity.STOP)
                .singleElement()
                .satisfies(finding -> assertThat(finding.limit()).startsWith("at most 200 mg/kg of menthofuran"));
        assertThat(kilogram("peppermint oil", 2500)
                        .amount("pulegone")
                        .perKilogram()
                        .most())
                .isCloseTo(100.0, within(1e-9));
    }

    /** A mint liqueur with 1.5 g/kg: 135 of 200 and 60 of 100 mg/kg, by texts that were read. */
    @Test
    void aMintLiqueurIsWithinBothLimits() {
        Bench mint = kilogram("peppermint oil", 1500);
        assertThat(mint.amount("menthofuran").perKilogram().most()).isCloseTo(135.0, within(1e-9));
        assertThat(mint.amount("pulegone").perKilogram().most()).isCloseTo(60.0, within(1e-9));
        assertThat(mint.verdicts("eu-maximum")).containsExactly("NOTE EU within the limit", "NOTE EU within the limit");
    }

    /** Clove bud oil 100 mg/kg with 0.13 % methyleugenol (EFSA 2023): 0.13 mg/kg; clove leaf has no figure for it. */
    @Test
    @Tag("published")
    void cloveOilBringsLittleMethyleugenol() {
        assertThat(kilogram("clove oil", 100)
                        .amount("methyleugenol")
                        .perKilogram()
                        .most())
                .isCloseTo(0.13, within(1e-9));
    }

    /** A pastis with 2 g/L anethole of an oil with 87 % of it holds 2.3 g/L of oil and 11.5 to 115 mg/L estragole at 0.5 to 5 %. */
    @Test
    @Tag("published")
    void anAniseedDrinkIsLawfulAndFarAboveGuidance() {
        Bench pastis = kilogram("anise oil", 2300);
        double perKilogram = pastis.safety().drink().figures().value(Figure.DENSITY) / 1000.0;
        assertThat(pastis.amount("estragole").perLitre().least()).isCloseTo(11.5 * perKilogram, within(1e-6));
        assertThat(pastis.amount("estragole").perLitre().most()).isCloseTo(115.0 * perKilogram, within(1e-6));
        assertThat(pastis.verdicts("eu-maximum")).containsExactly("NOTE EU no limit known");
        assertThat(pastis.findings("intake")).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.verdict()).isEqualTo("as low as can be");
            assertThat(finding.jurisdiction()).isEmpty();
            assertThat(finding.message()).contains("0.05");
        });
    }

    /** A milligram per kilogram is a milligram per litre times the density. */
    @Test
    @Tag("property")
    void perLitreFollowsByTheDensity() {
        Bench drink = kilogram("peppermint oil", 1000);
        double density = drink.safety().drink().figures().value(Figure.DENSITY) / 1000.0;
        Amount menthol = drink.amount("menthol");
        assertThat(menthol.perLitre().most()).isCloseTo(menthol.perKilogram().most() * density, within(1e-9));
    }

    /** Wormwood 2 g/kg, 1.5 % oil with 60 + 5 % thujone at worst: 19.5 mg/kg; from Artemisia 35 holds, else 10. */
    @Test
    void aBitterWithWormwoodHasTheHigherMaximum() {
        Bench bitter = new Bench()
                .grams("wormwood herb", Kind.DRIED_PLANT, 2.0)
                .grams("gentian root", Kind.DRIED_PLANT, 5.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0 - 0.7);
        assertThat(bitter.amount("thujone").perKilogram().most()).isCloseTo(19.5, within(0.02));
        assertThat(bitter.amount("thujone").perKilogram().least()).isZero();
        assertThat(bitter.findings("eu-maximum")).singleElement().satisfies(finding -> {
            assertThat(finding.limit()).startsWith("at most 35 mg/kg of thujone");
            assertThat(finding.verdict()).isEqualTo("not shown to be within");
        });
        assertThat(bitter.verdicts("us-limit")).contains("STOP US above the limit at worst");
        assertThat(bitter.verdicts("look-alike")).containsExactly("CAUTION look-alikes");
    }

    /** Tarragon is an Artemisia without thujone and must not raise the maximum of sage from 10 to 35. */
    @Test
    void tarragonDoesNotRaiseTheMaximumOfThujone() {
        Bench drink = kilogram("sage oil", 19.5).grams("tarragon", Kind.DRIED_PLANT, 1.0);
        assertThat(drink.findings("eu-maximum")).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.limit()).startsWith("at most 10 mg/kg of thujone");
        });
    }

    /** Thujone 0.11 mg/kg a day times 70 kg is 7.7 mg (Lachenmeier and Uebelacker 2010). */
    @Test
    @Tag("published")
    void guidanceIsMultipliedByTheBody() {
        assertThat(kilogram("sage oil", 10).findings("intake"))
                .extracting(Finding::limit)
                .contains("guidance of 7.70 mg a day", "guidance of 6.00 mg a day");
    }

    /** 28 and 40 mg of a substance group with one ADI are one sum. */
    @Test
    void theCitralFamilyIsOneSum() {
        Bench drink = new Bench()
                .grams("linalool", Kind.ESSENTIAL_OIL, 0.028)
                .grams("citronellol", Kind.ESSENTIAL_OIL, 0.040)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 999.932);
        assertThat(drink.amount("citral family").perKilogram().most()).isCloseTo(68.0, within(1e-6));
    }

    @Test
    void expressedCitrusBringsFurocoumarinsAndDistilledDoesNot() {
        assertThat(kilogram("lemon oil", 1000)
                        .amount("furocoumarins")
                        .perKilogram()
                        .most())
                .isCloseTo(3.0, within(1e-9));
        assertThat(kilogram("lime oil", 1000).amount("furocoumarins").isKnown()).isFalse();
        assertThat(kilogram("distilled lime oil", 1000).safety().drink().amount("furocoumarins"))
                .isNull();
    }
}
