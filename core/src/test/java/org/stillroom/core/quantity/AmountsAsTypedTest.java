package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountsAsTypedTest {
    private final QuantityText text = new QuantityText(OunceMeaning.US_FLUID);

    /** Exact sizes as the Unified Code for Units of Measure defines them; NIST Handbook 44, appendix C has the same. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "1 US gallon, 3785.411784",
        "1 US quart, 946.352946",
        "1 US pint, 473.176473",
        "1 US cup, 236.5882365",
        "1 US fl oz, 29.5735295625",
        "1 US tablespoon, 14.78676478125",
        "1 US teaspoon, 4.92892159375",
        "1 imperial gallon, 4546.09",
        "1 imperial pint, 568.26125",
        "1 imp fl oz, 28.4130625",
    })
    void aMeasureOfVolumeHasItsPublishedSize(String typed, double millilitres) {
        assertThat(Answers.value(text.volume(typed)).millilitres()).isEqualTo(millilitres);
    }

    /** Source: the Unified Code for Units of Measure, [lb_av], [oz_av], [gr]; exact. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({"1 lb, 453.59237", "1 oz av, 28.349523125", "1 grain, 0.06479891"})
    void aMeasureOfMassHasItsPublishedSize(String typed, double grams) {
        assertThat(Answers.value(text.mass(typed)).grams()).isEqualTo(grams);
    }

    /** Common practice of bars, no source: three quarters of a round ounce are 22.5 mL. */
    @Test
    void anOunceIsWhatTheMakerMeansByIt() {
        QuantityText round = new QuantityText(OunceMeaning.THIRTY_MILLILITRES);
        assertThat(Answers.value(round.volume("3/4 oz")).millilitres()).isEqualTo(22.5);
        assertThat(Answers.value(round.volume("2 fl. oz.")).millilitres()).isEqualTo(60);
        assertThat(Answers.value(round.volume("1 US fl oz")).millilitres()).isEqualTo(29.5735295625);
        assertThat(Answers.value(text.volume("2 imp fl oz")).millilitres()).isEqualTo(56.826125);
        assertThat(Answers.value(text.volume("3/4 oz")).millilitres()).isEqualTo(22.180147171875);
        assertThat(Answers.assumed(text.volume("3/4 oz"))).containsExactly(OunceMeaning.US_FLUID.assumption());
        assertThat(Answers.assumed(round.volume("3/4 oz")))
                .containsExactly(OunceMeaning.THIRTY_MILLILITRES.assumption());
    }

    @ParameterizedTest
    @CsvSource({
        "330 ml, 330", "330mL, 330", "330 ML, 330", "330 millilitres, 330", "330 milliliter, 330", "330 cc, 330",
        "330 cm³, 330", "33 cl, 330", "3.3 dl, 330", "0.33 L, 330", "0.33 l, 330", "0.33 litre, 330",
        "0.33 Liters, 330", "5 µl, 0.005", "5 μl, 0.005", "5 ul, 0.005", "1 hl, 100000", "2 m3, 2000000"
    })
    void metricVolumesAreReadInEverySpelling(String typed, double millilitres) {
        assertThat(Answers.value(text.volume(typed)).millilitres()).isEqualTo(millilitres);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 cup", "2 tbsp", "3 tsp.", "1 pint", "1 quart", "1 gal", "4 oz"})
    void aKitchenMeasureSaysWhichOneIsTaken(String typed) {
        assertThat(Answers.assumed(text.volume(typed)))
                .singleElement()
                .asString()
                .contains("taken as");
    }

    @Test
    void anAmountIsAMassAVolumeOrDrops() {
        assertThat(Answers.value(text.amount("300 g"))).isEqualTo(new Mass(300));
        assertThat(Answers.value(text.amount("0.7 L"))).isEqualTo(new Volume(700));
        assertThat(Answers.value(text.amount("15 drops"))).isEqualTo(new Drops(15));
        assertThat(Answers.value(text.amount("1 drop"))).isEqualTo(new Drops(1));
        assertThat(Answers.value(text.amount("12 Tropfen"))).isEqualTo(new Drops(12));
        assertThat(Answers.value(text.amount("20 gtt"))).isEqualTo(new Drops(20));
        assertThat(Answers.value(text.amount("8 oz by weight"))).isEqualTo(new Mass(8 * 28.349523125));
    }

    @Test
    void aBareNumberIsAskedForItsUnit() {
        assertThat(Answers.choices(text.amount("300"))).containsExactly("300 g", "300 ml");
        assertThat(Answers.reason(text.volume("300")))
                .contains("unit is missing")
                .contains("330 ml");
    }

    @Test
    void aUnitOfTheWrongKindIsNamedWithWhatIsWanted() {
        assertThat(Answers.reason(text.volume("300 g")))
                .isEqualTo("\"g\" is a mass; a volume is wanted, such as 330 ml");
        assertThat(Answers.reason(text.mass("300 ml")))
                .isEqualTo("\"ml\" is a volume; a mass is wanted, such as 300 g");
        assertThat(Answers.reason(text.volume("15 drops")))
                .contains("a count of drops")
                .contains("330 ml");
        assertThat(Answers.reason(text.volume("28 %"))).contains("\"%\"").contains("330 ml");
    }

    @Test
    void anOunceAsAMassIsAsked() {
        assertThat(Answers.choices(text.mass("5 oz"))).containsExactly("5 oz av");
        assertThat(Answers.choices(text.mass("1 1/2 ounces"))).containsExactly("1 1/2 oz av");
        assertThat(Answers.reason(text.mass("5 US fl oz"))).contains("is a volume");
    }

    @Test
    void aCountWantsTheWeightOfOne() {
        assertThat(Answers.value(text.amount("20 x 0.6 g"))).isEqualTo(new Mass(12.0));
        assertThat(Answers.value(text.amount("20 × 0,6 g"))).isEqualTo(new Mass(12.0));
        assertThat(Answers.value(text.amount("3 x 350 ml"))).isEqualTo(new Volume(1050.0));
        assertThat(Answers.reason(text.amount("20 pieces")))
                .contains("is a count")
                .contains("20 x 0.6 g");
        assertThat(Answers.reason(text.amount("20 Kerne")))
                .contains("hydrogen cyanide")
                .contains("weight");
        assertThat(Answers.reason(text.amount("20 x 3"))).contains("unit");
    }

    @Test
    void wordsThatPeopleUseForTwoUnitsAreAskedOrRefused() {
        assertThat(Answers.choices(text.mass("2 gr"))).containsExactly("2 g", "2 grain");
        assertThat(Answers.reason(text.mass("5 Mg"))).contains("tonne");
        assertThat(Answers.reason(text.amount("2 dr"))).contains("dram").contains("drop");
        assertThat(Answers.reason(text.amount("2 dashes")))
                .contains("no fixed size")
                .contains("no source");
        assertThat(Answers.reason(text.amount("a pinch"))).contains("number");
        assertThat(Answers.reason(text.amount("2 splash"))).contains("no fixed size");
        assertThat(Answers.reason(text.amount("2 T"))).contains("tbsp");
        assertThat(Answers.reason(text.amount("2 M"))).contains("not a unit");
        assertThat(Answers.reason(text.amount("2 lb 3 oz"))).contains("one number with one unit");
    }

    @ParameterizedTest
    @CsvSource({
        "24 drops/L, 24",
        "24 drops / L, 24",
        "24 drops per litre, 24",
        "12 drops per 500 ml, 24",
        "2.4 drops/100ml, 24"
    })
    void aDoseInDropsIsPerLitre(String typed, double drops) {
        assertThat(Answers.value(text.dose(typed))).isEqualTo(new Dose(new Drops(drops)));
    }

    @Test
    void aDoseByMassOrVolumeIsPerLitre() {
        assertThat(Answers.value(text.dose("0.4 g/L"))).isEqualTo(new Dose(new Mass(0.4)));
        assertThat(Answers.value(text.dose("2 ml/L"))).isEqualTo(new Dose(new Volume(2)));
        assertThat(Answers.value(text.dose("5 ml per litre"))).isEqualTo(new Dose(new Volume(5)));
        assertThat(Answers.value(text.dose("0.1 ml per 100 ml"))).isEqualTo(new Dose(new Volume(1)));
        assertThat(Answers.value(text.dose("0,1 ml pro 100 ml"))).isEqualTo(new Dose(new Volume(1)));
        assertThat(Answers.value(text.dose("8 Tropfen je Liter"))).isEqualTo(new Dose(new Drops(8)));
        assertThat(Answers.value(text.dose("1/2 g per 1 1/2 L"))).isEqualTo(new Dose(new Mass(1.0 / 3)));
        assertThat(Answers.value(text.dose("70 mg/dl"))).isEqualTo(new Dose(new Mass(0.7)));
    }

    @Test
    void aDoseSaysPerHowMuchLiquid() {
        assertThat(Answers.reason(text.dose("24 drops")))
                .contains("per how much")
                .contains("24 drops/L");
        assertThat(Answers.reason(text.dose("0.4 g/kg"))).contains("per mass").contains("per volume");
        assertThat(Answers.reason(text.dose("0.4 g/0 L"))).contains("per 0");
        assertThat(Answers.reason(text.dose("0.4 g/L/L"))).contains("at the end");
        assertThat(Answers.reason(text.dose("0.1 %"))).contains("not a unit");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3 x 350 ml",
                "3×350ml",
                "3x350ml",
                "3 X 0.35 L",
                "3 * 35 cl",
                "3 bottles of 350 ml",
                "3 bottles 35cl",
                "3 bottles x 350 ml"
            })
    void bottlesAreACountAndASize(String typed) {
        assertThat(Answers.value(text.bottles(typed))).isEqualTo(new Bottles(3, new Volume(350)));
    }

    @Test
    void bottlesThatCannotBeAreRefused() {
        assertThat(Answers.value(text.bottles("1 bottle of 50 cl"))).isEqualTo(new Bottles(1, new Volume(500)));
        assertThat(Answers.reason(text.bottles("350 ml"))).contains("3 x 350 ml");
        assertThat(Answers.reason(text.bottles("2.5 x 1 L"))).contains("2.5");
        assertThat(Answers.reason(text.bottles("0 x 1 L"))).contains("from 1");
        assertThat(Answers.reason(text.bottles("3 x 0 ml"))).contains("more than 0");
        assertThat(Answers.reason(text.bottles("3 x 350 g"))).contains("is a mass");
        assertThat(Answers.reason(text.bottles("99999999999 x 1 L"))).contains("no number of bottles");
    }
}
