package org.stillroom.studio.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.time.Duration;
import java.util.Optional;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.studio.usecase.shelf.ShelfLots;

/** How phrases of the book are found and put. */
class PhrasebookTest {
    private static final Words GERMAN = new Words(Language.GERMAN, UnitSystem.METRIC);
    private static final Words ENGLISH = new Words(Language.ENGLISH, UnitSystem.METRIC);

    private static final String BOOK = """
            [*]
            cloudy
            milchig

            [clouding]
            At 20 °C it is {A}: {1} g too much of {n}.
            Bei 20 °C ist es {A}: {1} g {n} zu viel.

            {A}; from {x}
            {A}; von {x}

            a
            das Eigene

            [other]
            a
            das Andere
            """;

    private static Optional<String> put(String rule, String english) {
        return Phrasebook.read("a book", new StringReader(BOOK))
                .translate(rule, english, figures -> figures.replace('.', ','));
    }

    @Test
    void whatIsPutInIsTranslatedMarkedOrLeftByTheKindOfItsPlaceholder() {
        assertThat(put("clouding", "At 20 °C it is cloudy: 2.5 g too much of cloudy."))
                .hasValue("Bei 20 °C ist es milchig: 2,5 g cloudy zu viel.");
        assertThat(put("clouding", "At 20 °C it is cloudy: 2.5, 3, 0.25 g too much of cloudy."))
                .hasValue("Bei 20 °C ist es milchig: 2,5; 3; 0,25 g cloudy zu viel.");
        assertThat(put("clouding", "cloudy; from cloudy")).hasValue("milchig; von milchig");
        assertThat(put("clouding", "cloudy; from Ms 4.7")).hasValue("milchig; von Ms 4.7");
        assertThat(put("clouding", "cloudy; from cloudy, a")).hasValue("milchig; von milchig, das Eigene");
        assertThat(put("clouding", "cloudy; from cloudy, Ms 4.7")).hasValue("milchig; von cloudy, Ms 4.7");
    }

    @Test
    void oneDropIsToldInGermanAsSeveralAre() {
        assertThat(GERMAN.told("instrument", "1 drop").text()).isEqualTo("1 Tropfen");
        assertThat(GERMAN.told("instrument", "2 drops").text()).isEqualTo("2 Tropfen");
    }

    /** German tables may name kinds in German, so that the kinds are told in German. */
    @Test
    void theKindsOfTheShelfAreToldInGerman() {
        String kinds = String.join(", ", ShelfLots.kinds());
        assertThat(GERMAN.told("field-choice", "Known kinds are " + kinds + ".").text())
                .startsWith("Bekannt sind: Spirituose, Wein, Likör, ätherisches Öl")
                .doesNotContain("plant", "bottles", "stoppers", "sugar");
    }

    @Test
    void aPhraseWithSomethingUnknownInItStaysEnglishAsAWhole() {
        assertThat(put("clouding", "At 20 °C it is muddy: 2.5 g too much of lemon oil."))
                .isEmpty();
        assertThat(put("clouding", "At 20 °C it is cloudy: some g too much of lemon oil."))
                .isEmpty();
        assertThat(put("clouding", "muddy; from cloudy")).isEmpty();
    }

    @Test
    void aRulesOwnPhraseComesFirstAndACapitalIsKept() {
        assertThat(put("clouding", "a")).hasValue("das Eigene");
        assertThat(put("other", "a")).hasValue("das Andere");
        assertThat(put("other", "A")).hasValue("Das Andere");
        assertThat(put("third", "a")).isEmpty();
        assertThat(put("third", "Cloudy")).hasValue("Milchig");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{n} lies|{m} liegt",
                "lies|{n} liegt",
                "{n} and {m}|{n} und {n}",
                "{n} and {n}|{n} und {n}",
                "{n}{m} lies|{n}{m} liegt",
                "{n}|{n}"
            })
    void aBookWhosePlaceholdersDoNotFitIsRefusedWithItsLine(String english, String german) {
        String book = "[rule]\n" + english + "\n" + german + "\n";

        assertThatThrownBy(() -> Phrasebook.read("a book", new StringReader(book)))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("a book, line 2");
    }

    @Test
    void aPhraseOutsideEveryGroupOrWithoutItsGermanOrTwiceIsRefused() {
        for (String book : new String[] {"a\nb\n", "[rule]\na\n", "[rule]\na\nb\n\na\nc\n"}) {
            assertThatThrownBy(() -> Phrasebook.read("a book", new StringReader(book)))
                    .isInstanceOf(IllegalStateException.class);
        }
    }

    @Test
    void aTextMadeToBeSlowEndsSoonAndStaysEnglish() {
        String slow = "cloudy; from ".repeat(3_000) + "muddy";

        Assertions.assertThatCode(() -> org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(
                        Duration.ofSeconds(20), () -> put("clouding", "x; from " + slow)))
                .doesNotThrowAnyException();
        assertThat(put("clouding", "muddy; from " + slow)).isEmpty();
    }

    @Test
    void aFindingIsToldInGermanWithADecimalComma() {
        Spoken told = GERMAN.told(
                "oil-clouding",
                "At 20 °C it will be cloudy: its oils come to 2.31 times what it can dissolve, limonene most of all.");

        assertThat(told.language()).isEqualTo(Language.GERMAN);
        assertThat(told.foreignOn(Language.GERMAN)).isNull();
        assertThat(told.text()).contains("milchig").contains("2,31").doesNotContain("2.31");
    }

    @Test
    void anUnknownTextStaysItselfAndIsMarkedEnglish() {
        Spoken told = GERMAN.told("oil-clouding", "Nobody has put this into German.");

        assertThat(told.text()).isEqualTo("Nobody has put this into German.");
        assertThat(told.foreignOn(Language.GERMAN)).isEqualTo("en");
    }

    @Test
    void anEnglishPageSaysWhatTheProgramSays() {
        Spoken told = ENGLISH.told("oil-clouding", "cloudy");

        assertThat(told.text()).isEqualTo("cloudy");
        assertThat(told.foreignOn(Language.ENGLISH)).isNull();
    }
}
