package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Strengths, contents, densities, temperatures, prices, waits, percentages, ratios. */
class FiguresAsTypedTest {
    private final QuantityText text = new QuantityText(OunceMeaning.US_FLUID);

    @Test
    void aPhIsReadAsAMeterShowsIt() {
        assertThat(Answers.value(text.ph("3.4"))).isEqualTo(3.4);
        assertThat(Answers.value(text.ph("3,4"))).isEqualTo(3.4);
        assertThat(Answers.value(text.ph("pH 3.4"))).isEqualTo(3.4);
        assertThat(Answers.value(text.ph("1.5"))).isEqualTo(1.5);
        assertThat(Answers.value(text.ph("9"))).isEqualTo(9.0);
        assertThat(Answers.reason(text.ph("12"))).contains("1.5 to 9").contains("12");
        assertThat(Answers.reason(text.ph("1.4"))).contains("1.5 to 9").contains("1.4");
        assertThat(Answers.reason(text.ph("3.4 g"))).contains("3.4");
        assertThat(Answers.reason(text.ph(""))).contains("a number is missing");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "28 %",
                "28%",
                "28 % vol",
                "28%vol.",
                "28 vol %",
                "28% abv",
                "28 ABV",
                "28 % v/v",
                "28 % (v/v)",
                "28 % alc./vol.",
                "28 % by volume",
                "28 percent",
                "28 % vol at 20 °C",
                "28 % @ 68F",
                "28,0 %",
                "28 Vol.-%",
                "28 % Vol.",
                "28 Volumen-%"
            })
    void aPercentageIsByVolumeAtTwentyDegrees(String typed) {
        assertThat(Answers.value(text.strength(typed))).isEqualTo(AlcoholByVolume.at20(28));
    }

    @Test
    void aStrengthKeepsTheTemperatureThatIsNamed() {
        assertThat(Answers.value(text.strength("40 % vol at 15 C")))
                .isEqualTo(new AlcoholByVolume(40, VolumeBasis.AT_15C));
        assertThat(Answers.value(text.strength("40 % vol @ 60 °F")))
                .isEqualTo(new AlcoholByVolume(40, VolumeBasis.AT_60F));
        assertThat(Answers.reason(text.strength("40 % vol at 25 °C"))).contains("20 °C, 15 °C or 60 °F");
        assertThat(Answers.reason(text.strength("40 % vol at noon"))).contains("20 °C");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "33.3 % mass",
                "33.3% w/w",
                "33.3 % m/m",
                "33.3 % by mass",
                "33.3 % by weight",
                "33.3 wt%",
                "33,3 % wt"
            })
    void aStrengthByMassIsSaidToBe(String typed) {
        assertThat(Answers.value(text.strength(typed))).isEqualTo(new AlcoholByMass(33.3));
    }

    @Test
    void proofIsTheAmericanOne() {
        assertThat(Answers.value(text.strength("56 proof"))).isEqualTo(new Proof(56));
        assertThat(Answers.value(text.strength("56° US proof"))).isEqualTo(new Proof(56));
        assertThat(Answers.reason(text.strength("70 British proof"))).contains("only US proof");
        assertThat(Answers.reason(text.strength("80 proof at 60 F"))).contains("always at 60 °F");
    }

    @Test
    void anImpossibleStrengthNamesTheRange() {
        assertThat(Answers.reason(text.strength("104 %")))
                .isEqualTo("a strength lies from 0 to 100 % vol, not 104 % vol");
        assertThat(Answers.reason(text.strength("201 proof")))
                .contains("0 to 200")
                .contains("201");
        assertThat(Answers.reason(text.strength("-5 %"))).contains("below zero");
        assertThat(Answers.reason(text.strength("28 g"))).contains("not a unit of strength");
        assertThat(Answers.reason(text.strength("5 % w/v"))).contains("mass per volume");
    }

    @Test
    void aBareStrengthIsAskedAmongWhatIsPossible() {
        assertThat(Answers.choices(text.strength("28"))).containsExactly("28 % vol", "28 % mass", "28 proof");
        assertThat(Answers.choices(text.strength("151"))).containsExactly("151 proof");
        assertThat(Answers.reason(text.strength("1000"))).contains("0 to 100");
    }

    @ParameterizedTest
    @CsvSource({
        "66 %, 0.66",
        "24 °Bx, 0.24",
        "66 Bx, 0.66",
        "66 brix, 0.66",
        "66 º Brix, 0.66",
        "5 % w/w, 0.05",
        "180 g/kg, 0.18",
        "5 g per 100 g, 0.05",
        "100 %, 1",
        "66 degrees Brix, 0.66"
    })
    void aContentByMassIsAFraction(String typed, double fraction) {
        assertThat(Answers.value(text.share(typed))).isEqualTo(new MassFraction(fraction));
    }

    @ParameterizedTest
    @CsvSource({
        "180 g/L, 180",
        "18 g/100 ml, 180",
        "5 % w/v, 50",
        "5 % m/v, 50",
        "3 grams per 1.5 litres, 2",
        "0.18 kg/L, 180",
        "7 mg/ml, 7",
        "180g/l, 180"
    })
    void aContentByVolumeIsGramsPerLitre(String typed, double gramsPerLitre) {
        assertThat(Answers.value(text.share(typed))).isEqualTo(new MassConcentration(gramsPerLitre));
    }

    @Test
    void anImpossibleContentIsRefused() {
        assertThat(Answers.reason(text.share("104 %"))).contains("0 to 100 %").contains("104 %");
        assertThat(Answers.reason(text.share("1100 g/kg"))).contains("0 to 1");
        assertThat(Answers.reason(text.share("5 ml/L"))).contains("mass per volume");
        assertThat(Answers.reason(text.share("5 % v/v"))).contains("by mass");
        assertThat(Answers.choices(text.share("66"))).containsExactly("66 %", "66 g/L");
        assertThat(Answers.choices(text.share("180"))).containsExactly("180 g/L");
    }

    @Test
    void brixMayGoWithoutItsSign() {
        assertThat(Answers.value(text.brix("66"))).isEqualTo(new Brix(66));
        assertThat(Answers.value(text.brix("66 °Bx"))).isEqualTo(new Brix(66));
        assertThat(Answers.reason(text.brix("166"))).contains("0 to 100");
        assertThat(Answers.reason(text.brix("66 g/L"))).contains("66 °Bx");
    }

    @ParameterizedTest
    @CsvSource({
        "948.05kg/m3, 948.05",
        "948.05 kg/m³, 948.05",
        "948.05 kg/m^3, 948.05",
        "1.0423 g/ml, 1042.3",
        "1.04 kg/L, 1040",
        "948.05 g/L, 948.05",
        "0.94805 g/cm3, 948.05",
        "'1,0423 g/cc', 1042.3",
        "0.9982 kg/dm3, 998.2"
    })
    void aDensityIsAMassPerVolume(String typed, double kilogramsPerCubicMetre) {
        assertThat(Answers.value(text.density(typed))).isEqualTo(new Density(kilogramsPerCubicMetre));
    }

    /** OIML R 22 (1975), table of density at 0 % by mass, kg/m³: 998.20 at 20 °C; at 60 °F its formula gives 999.01. */
    @Tag("published")
    @Test
    void aSpecificGravityOfOneIsTheDensityOfWater() {
        assertThat(Answers.value(text.density("SG 1")).kilogramsPerCubicMetre()).isCloseTo(998.20, within(0.005));
        assertThat(Answers.value(text.density("SG 1 60/60")).kilogramsPerCubicMetre())
                .isCloseTo(999.01, within(0.005));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SG 1.050",
                "1.050 SG",
                "sg1.05",
                "1.05 sg 20/20",
                "SG 20/20 1.050",
                "SG 20/20 °C 1.050",
                "specific gravity 1.050",
                "1.050 20/20C SG"
            })
    void aSpecificGravityIsTakenAtTwentyDegreesAndSaysSo(String typed) {
        assertThat(Answers.value(text.density(typed)).kilogramsPerCubicMetre())
                .isCloseTo(1.05 * 998.20123, within(1e-9));
        assertThat(Answers.assumed(text.density(typed)))
                .containsExactly("the specific gravity is taken as 20/20 °C in vacuum");
    }

    @ParameterizedTest
    @ValueSource(strings = {"SG 60/60 1.050", "1.050 SG 60/60", "1.05 SG 60/60 °F", "SG 1.05 60/60F"})
    void aSpecificGravityKeepsTheTemperaturesThatAreNamed(String typed) {
        assertThat(Answers.value(text.density(typed)).kilogramsPerCubicMetre())
                .isCloseTo(1.05 * 999.01021, within(1e-9));
        assertThat(Answers.assumed(text.density(typed)))
                .containsExactly("the specific gravity is taken as 60/60 °F in vacuum");
    }

    @Test
    void otherDensitiesAreAskedOrRefused() {
        assertThat(Answers.choices(text.density("1.0423")))
                .containsExactly("1.0423 g/ml", "SG 1.0423 20/20", "SG 1.0423 60/60");
        assertThat(Answers.choices(text.density("1042.3"))).containsExactly("1042.3 kg/m3");
        assertThat(Answers.reason(text.density("SG 1.02 15/15"))).contains("20/20 °C or 60/60 °F");
        assertThat(Answers.reason(text.density("SG 1.02 20/20 F"))).contains("20/20 °C or 60/60 °F");
        assertThat(Answers.reason(text.density("SG 1042"))).contains("near 1");
        assertThat(Answers.reason(text.density("SG"))).contains("number is missing");
        assertThat(Answers.reason(text.density("5 ml/g"))).contains("mass per volume");
        assertThat(Answers.reason(text.density("0 kg/m3"))).contains("above 0");
        assertThat(Answers.reason(text.density("SG 0"))).contains("above 0");
    }

    @ParameterizedTest
    @CsvSource({
        "20C, 20",
        "20 °C, 20",
        "20 ℃, 20",
        "20 celsius, 20",
        "20 deg C, 20",
        "68F, 20",
        "68 °F, 20",
        "20 degrees C, 20",
        "293.15 K, 20",
        "310.65 kelvin, 37.5",
        "-5 °C, -5",
        "−5°C, -5",
        "+5 C, 5",
        "-40 F, -40",
        "0 K, -273.15",
        "98.6 F, 37",
        "1/2 °C, 0.5",
        "0 °C, 0"
    })
    void aTemperatureIsReadOnThreeScales(String typed, double celsius) {
        assertThat(Answers.value(text.temperature(typed))).isEqualTo(new Temperature(celsius));
    }

    @Test
    void otherTemperaturesAreAskedOrRefused() {
        assertThat(Answers.choices(text.temperature("20"))).containsExactly("20 °C", "20 °F");
        assertThat(Answers.choices(text.temperature("20°"))).containsExactly("20 °C", "20 °F");
        assertThat(Answers.choices(text.temperature("-5 degrees"))).containsExactly("−5 °C", "−5 °F");
        assertThat(Answers.choices(text.temperature("1500"))).containsExactly("1500 °F");
        assertThat(Answers.reason(text.temperature("-400 C")))
                .contains("−273.15 to 1000 °C")
                .contains("−400");
        assertThat(Answers.reason(text.temperature("-1 K"))).contains("0 K");
        assertThat(Answers.reason(text.temperature("20 X"))).contains("\"X\"");
        assertThat(Answers.reason(text.temperature("warm"))).contains("20 °C");
    }

    @Test
    void aPriceIsPerAmountOrPerPack() {
        Volume litre = new Volume(1000);
        for (String typed : new String[] {"22 EUR/L", "€ 22/L", "€22/L", "22 €/L", "EUR 22 per litre", "22 euros/l"}) {
            assertThat(Answers.value(text.price(typed))).as(typed).isEqualTo(new Price(22, "EUR", litre));
        }
        for (String typed : new String[] {"18.50 EUR", "18,50 eur", "€ 18.5", "18.5 EUR a bottle", "18.5 € per pack"}) {
            assertThat(Answers.value(text.price(typed))).as(typed).isEqualTo(new Price(18.5, "EUR", null));
        }
        assertThat(Answers.value(text.price("1,20 EUR/kg"))).isEqualTo(new Price(1.2, "EUR", new Mass(1000)));
        assertThat(Answers.value(text.price("$12 per 750 ml"))).isEqualTo(new Price(12, "$", new Volume(750)));
        assertThat(Answers.value(text.price("US$12 for 0.75 L"))).isEqualTo(new Price(12, "USD", new Volume(750)));
        assertThat(Answers.value(text.price("£9/100 drops"))).isEqualTo(new Price(9, "GBP", new Drops(100)));
    }

    @Test
    void aPriceNeedsItsCurrency() {
        assertThat(Answers.reason(text.price("22"))).contains("currency is missing");
        assertThat(Answers.reason(text.price("22/L"))).contains("currency is missing");
        assertThat(Answers.reason(text.price("22 XQJ/L"))).contains("\"XQJ\" is not a currency");
        assertThat(Answers.reason(text.price("22 lbs"))).contains("\"lbs\" is not a currency");
        assertThat(Answers.reason(text.price("3 EUR/0 L"))).contains("nothing");
        assertThat(Answers.reason(text.price("3 EUR L"))).contains("at the end");
        assertThat(Answers.reason(text.price("-3 EUR"))).contains("below zero");
        assertThat(Answers.choices(text.price("1,200 EUR"))).containsExactly("1.2 EUR", "1200 EUR");
    }

    @ParameterizedTest
    @CsvSource({
        "14 days, 14",
        "1 day, 1",
        "2 weeks, 14",
        "2 Wochen, 14",
        "3 Tage, 3",
        "1 Monat, 30",
        "36 h, 1.5",
        "36 hours, 1.5",
        "90 min, 0.0625",
        "3 months, 90",
        "1 1/2 weeks, 10.5",
        "1 year, 365",
        "14d, 14"
    })
    void aWaitIsInDays(String typed, double days) {
        assertThat(Answers.value(text.wait(typed))).isEqualTo(new Wait(days));
    }

    @Test
    void aMonthSaysHowLongItIsTaken() {
        assertThat(Answers.assumed(text.wait("3 months"))).containsExactly("a month is taken as 30 days");
        assertThat(Answers.assumed(text.wait("3 weeks"))).isEmpty();
        assertThat(Answers.reason(text.wait("3"))).contains("unit is missing");
        assertThat(Answers.reason(text.wait("2 moons"))).contains("not a length of time");
        assertThat(Answers.reason(text.wait("200 years"))).contains("100 years");
    }

    @ParameterizedTest
    @CsvSource({"0.3 %, 0.3", "±0.3 %, 0.3", "± 0.3, 0.3", "+/- 0.3 %, 0.3", "0.3, 0.3", "0.3 % vol, 0.3", "100 %, 100"
    })
    void aPercentageMayGoWithoutItsSign(String typed, double percent) {
        assertThat(Answers.value(text.percent(typed))).isEqualTo(percent);
    }

    @Test
    void aPercentageHasItsRange() {
        assertThat(Answers.reason(text.percent("120 %"))).contains("0 to 100 %").contains("120 %");
        assertThat(Answers.reason(text.percent("3 g"))).contains("plain percentage");
        assertThat(Answers.reason(text.percent("3 % mass"))).contains("plain percentage");
    }

    @Test
    void aRatioHasTwoSidesAboveZero() {
        assertThat(Answers.value(text.ratio("1:5"))).isEqualTo(new Ratio(1, 5));
        assertThat(Answers.value(text.ratio("2 : 1.5"))).isEqualTo(new Ratio(2, 1.5));
        assertThat(Answers.value(text.ratio("2:1")).leftPerRight()).isEqualTo(2);
        assertThat(Answers.reason(text.ratio("0:1"))).contains("above 0");
        assertThat(Answers.reason(text.ratio("1:0"))).contains("above 0");
        assertThat(Answers.reason(text.ratio("5"))).contains("1:5");
        assertThat(Answers.reason(text.ratio("1:2:3"))).contains("at the end");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "27..29 %",
                "27 % .. 29 %",
                "27–29 %",
                "27 — 29 %",
                "27 to 29 %",
                "27-29%",
                "27…29 % vol",
                "27 % to 29 %"
            })
    void aRangeRunsFromLowToHigh(String typed) {
        assertThat(Answers.value(text.strengthSpan(typed))).isEqualTo(new Span(27, 29));
    }

    @Test
    void aWantedValueIsExactOrARange() {
        assertThat(Answers.value(text.strengthSpan("28 %"))).isEqualTo(Span.exactly(28));
        assertThat(Answers.value(text.volumeSpan("1 L"))).isEqualTo(Span.exactly(1000));
        assertThat(Answers.value(text.volumeSpan("1..1.5 L"))).isEqualTo(new Span(1000, 1500));
        assertThat(Answers.value(text.volumeSpan("900 ml..1 L"))).isEqualTo(new Span(900, 1000));
        assertThat(Answers.value(text.sugarSpan("180 g/L"))).isEqualTo(Span.exactly(180));
        assertThat(Answers.value(text.sugarSpan("18..20 g/100 ml"))).isEqualTo(new Span(180, 200));
        assertThat(Answers.value(text.sugarSpan("0 g/L"))).isEqualTo(Span.exactly(0));
        assertThat(Answers.value(text.aciditySpan("0.6 g/100 ml"))).isEqualTo(Span.exactly(6));
        assertThat(Answers.value(text.aciditySpan("0.6 % w/v"))).isEqualTo(Span.exactly(6));
    }

    @Test
    void aWantedValueOnAnotherBasisIsAskedOrRefused() {
        assertThat(Answers.choices(text.strengthSpan("28"))).containsExactly("28 % vol");
        assertThat(Answers.choices(text.strengthSpan("27..29"))).contains("27..29 % vol");
        assertThat(Answers.reason(text.strengthSpan("56 proof"))).contains("by volume at 20 °C");
        assertThat(Answers.reason(text.strengthSpan("28 % vol at 15 C"))).contains("by volume at 20 °C");
        assertThat(Answers.reason(text.strengthSpan("29..27 %"))).contains("from low to high");
        assertThat(Answers.reason(text.strengthSpan("27..129 %"))).contains("0 to 100");
        assertThat(Answers.choices(text.sugarSpan("18 %"))).containsExactly("180 g/L");
        assertThat(Answers.choices(text.aciditySpan("0.6 %"))).containsExactly("6 g/L");
        assertThat(Answers.reason(text.sugarSpan("30 °Bx"))).contains("not per litre");
        assertThat(Answers.reason(text.sugarSpan("180 g/kg"))).contains("per volume");
        assertThat(Answers.reason(text.volumeSpan("1..2..3 L"))).contains("write");
    }

    @Test
    void theBasisOfSugarComesOffTheEnd() {
        assertThat(SugarWords.of("180 g/L as invert")).isEqualTo(new SugarWords("180 g/L", "as invert"));
        assertThat(SugarWords.of("180..200 g/L  As Sucrose ")).isEqualTo(new SugarWords("180..200 g/L", "as sucrose"));
        assertThat(SugarWords.of("180 g/L as invert sugar")).isEqualTo(new SugarWords("180 g/L", "as invert"));
        assertThat(SugarWords.of("180 g/L as dissolved")).isEqualTo(new SugarWords("180 g/L", "as dissolved"));
        assertThat(SugarWords.of("180 g/L")).isEqualTo(new SugarWords("180 g/L", ""));
        assertThat(Answers.reason(text.sugarSpan("180 g/L as honey"))).contains("as honey");
    }
}
