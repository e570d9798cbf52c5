package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers, whatever their unit; grams stand for all. */
class NumbersAsTypedTest {
    private final QuantityText text = new QuantityText(OunceMeaning.US_FLUID);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "300 g | 300",
                "300g | 300",
                ".5 g | 0.5",
                ",5 g | 0.5",
                "1.5 g | 1.5",
                "1,5 g | 1.5",
                "1,50 g | 1.5",
                "1,5000 g | 1.5",
                "0,500 g | 0.5",
                "1500,500 g | 1500.5",
                "1.500 g | 1.5",
                "1 500 g | 1500",
                "1\u00a0500 g | 1500",
                "1\u202f500 g | 1500",
                "1\u2009500\u2009000 g | 1500000",
                "1'500 g | 1500",
                "1\u2019500 g | 1500",
                "1 500,5 g | 1500.5",
                "1'500.25 g | 1500.25",
                "1 500,500 g | 1500.5",
                "1.500,5 g | 1500.5",
                "1,500.5 g | 1500.5",
                "1,500.500 g | 1500.5",
                "1,234,567 g | 1234567",
                "1.234.567 g | 1234567",
                "1.234.567,8 g | 1234567.8",
                "3/4 g | 0.75",
                "3\u20444 g | 0.75",
                "5/4 g | 1.25",
                "1 1/2 g | 1.5",
                "12 125/1000 g | 12.125",
                "½ g | 0.5",
                "1½ g | 1.5",
                "1 ½ g | 1.5",
                "2⅔ kg | 2666.6666666666665",
                "⅞ g | 0.875",
                "007 g | 7",
                "0 g | 0",
                "0.000 g | 0",
                "  300   g  | 300",
                "\ufeff300 g | 300",
            })
    void aNumberIsReadAsPeopleWriteIt(String typed, double grams) {
        assertThat(Answers.value(text.mass(typed))).isEqualTo(new Mass(grams));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.1 kg | 100",
                "0.3 kg | 300",
                "1.1 kg | 1100",
                "4.35 kg | 4350",
                "1.005 kg | 1005",
                "948.05 mg | 0.94805",
                "0.7 mg | 0.0007",
                "70 µg | 0.00007",
                "3 lb | 1360.77711",
            })
    void aUnitAddsNoNoiseToTheDecimals(String typed, double grams) {
        assertThat(Answers.value(text.mass(typed)).grams()).isEqualTo(grams);
    }

    @Test
    void aCommaBeforeThreeDigitsIsAskedAndNotGuessed() {
        assertThat(Answers.choices(text.mass("1,500 g"))).containsExactly("1.5 g", "1500 g");
        assertThat(Answers.choices(text.mass("12,340 kg"))).containsExactly("12.34 kg", "12340 kg");
        assertThat(Answers.choices(text.volumeSpan("1,500..2,000 ml"))).containsExactly("1.5..2 ml", "1500..2000 ml");
    }

    @Test
    void aCommaIsNotAskedWhereOnlyOneReadingIsPossible() {
        assertThat(Answers.value(text.strength("37,500 %"))).isEqualTo(AlcoholByVolume.at20(37.5));
        assertThat(Answers.value(text.density("SG 1,050"))).isEqualTo(Answers.value(text.density("SG 1.05")));
        assertThat(Answers.value(text.bottles("1,200 x 35 cl")).count()).isEqualTo(1200);
    }

    @Test
    void aCommaAndAMissingUnitAreAskedTogether() {
        assertThat(Answers.choices(text.amount("1,500"))).containsExactly("1.5 g", "1.5 ml", "1500 g", "1500 ml");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1,50,5 g",
                "1,2345,678 g",
                "1.2.3 g",
                "1 2 3 g",
                "0 500 g",
                "1 500 1/2 g",
                "1'50 g",
                "1.5/2 g",
                "1 3/2 g",
                "1 4/4 g",
                "1/0 g",
                "1//2 g",
                "1½½ g",
                "1. g",
                "1,, g",
                "12345678901/2 g",
                "1234567890123456789012345678901 g",
            })
    void whatIsNotANumberIsRefused(String typed) {
        assertThat(Answers.reason(text.mass(typed))).contains("write");
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN g", "nan", "Infinity g", "∞ g", "inf", "١٢ g", "abc", "g", "--", "?", "g 300", "+5 g"})
    void whatDoesNotStartWithANumberIsRefusedWithAnExample(String typed) {
        assertThat(Answers.reason(text.mass(typed))).contains("write for instance 300 g");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t\n", "\u200b", "\u00a0"})
    void nothingIsRefusedAsMissing(String typed) {
        assertThat(Answers.reason(text.mass(typed))).contains("missing").contains("300 g");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-3 g", "−3 g", "- 3 g"})
    void belowZeroIsRefusedWithItsReason(String typed) {
        assertThat(Answers.reason(text.mass(typed))).contains("below zero");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e3 g", "1.5E-3 g", "2e+2 g"})
    void anExponentIsRefusedWithItsReason(String typed) {
        assertThat(Answers.reason(text.mass(typed))).contains("exponent");
    }

    @Test
    void aHugeNumberIsRefusedWithTheRange() {
        assertThat(Answers.reason(text.mass("999999999999999999 kg"))).contains("below 1e12 g");
        assertThat(Answers.reason(text.mass("1".repeat(5000) + " g"))).contains("characters long");
    }

    @Test
    void whatWasTypedComesBackAsTyped() {
        String typed = "  1\u00a0½  kg ";
        assertThat(text.mass(typed)).isEqualTo(new Understanding.Understood<>(new Typed<>(typed, new Mass(1500))));
        assertThat(text.mass("rubbish"))
                .isInstanceOfSatisfying(
                        Understanding.Refused.class,
                        refused -> assertThat(refused.text()).isEqualTo("rubbish"));
    }
}
