package org.stillroom.studio.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.Miss;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;

/** Titles that bear a lawful name; the names are those of Regulation (EU) 2019/787, Annex I, and 27 CFR 5.150. */
class TitleNameTest {
    private static LegalClass missed(Market market, String name) {
        return name(market, name, List.of(new Miss("sugar", 80.0, 100.0, "g/L", "at least")));
    }

    private static LegalClass name(Market market, String name, List<Miss> misses) {
        return new LegalClass(market, name, "", misses, List.of(), List.of(), List.of(), "", null, Source.TRADE);
    }

    private static final List<LegalClass> NAMES = List.of(
            missed(Market.EU, "liqueur (general)"),
            missed(Market.EU, "crème de (fruit or other, not milk)"),
            missed(Market.EU, "crème de cassis"),
            missed(Market.EU, "bitter-tasting spirit drink / bitter"),
            missed(Market.EU, "gin"),
            name(Market.EU, "sloe gin", List.of()),
            missed(Market.US, "liqueur or cordial"));

    @ParameterizedTest
    @CsvSource({
        "Quince liqueur, EU, liqueur (general)",
        "Quittenlikör, EU, liqueur (general)",
        "Creme de Cassis, EU, crème de cassis",
        "'Crème de pêche, light', EU, 'crème de (fruit or other, not milk)'",
        "Mountain Bitter, EU, bitter-tasting spirit drink / bitter",
        "Damson gin, EU, gin",
        "Quince Cordial, US, liqueur or cordial"
    })
    void aTitleThatBearsANameThatIsMissedIsTold(String title, Market market, String name) {
        assertThat(TitleName.missed(title, market, NAMES))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.message()).contains(name, "sugar 80.0 g/L where at least 100.0 is asked"));
    }

    private static LegalClass met(Market market, String name) {
        return name(market, name, List.of());
    }

    private static final String AMARETTO =
            "amaretto, anise, anisette, crème de, curaçao, goldwasser, kümmel, ouzo, peppermint schnapps, sambuca or"
                    + " triple sec";

    /** An egg liqueur from 14 % vol and the exceptions of Annex I 33(a) are rightly called liqueurs; 27 CFR 5.150(b)(3) asks 24 % vol. */
    @ParameterizedTest
    @CsvSource({
        "Eierlikör, EU, egg liqueur / advocaat",
        "Omas Eier-Likör, EU, egg liqueur / advocaat",
        "Egg liqueur, EU, egg liqueur / advocaat",
        "Kirschlikör, EU, liqueur of cherry or sour cherry spirit",
        "Cherry liqueur, EU, liqueur of cherry or sour cherry spirit",
        "Gentian liqueur, EU, liqueur of gentian or wormwood alone",
        "Rock and rye, US, 'rock and rye, bourbon, brandy or rum'"
    })
    void aTitleThatALawfulNameAllowsIsNotHeldAgainstThePlainOne(String title, Market market, String allowed) {
        List<LegalClass> classes = List.of(
                missed(Market.EU, "liqueur (general)"),
                missed(Market.US, "rye or bourbon liqueur"),
                missed(Market.US, "flavored brandy, gin, rum, vodka or whisky"),
                met(market, allowed));
        assertThat(TitleName.missed(title, market, classes)).isEmpty();
        assertThat(TitleName.met(title, market, classes)).map(LegalClass::name).hasValue(allowed);
        List<LegalClass> none = List.of(missed(Market.EU, "liqueur (general)"), missed(market, allowed));
        assertThat(TitleName.missed(title, market, none)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "Crème de cassis de la maison, EU, crème de cassis",
        "Sambuca molinara, EU, sambuca",
        "Quittenlikör vom Garten, EU, liqueur (general)",
        "Kirschlikör, EU, liqueur (general)",
        "Pineapple rum, US, 'flavored brandy, gin, rum, vodka or whisky'",
        "Rye liqueur, US, rye or bourbon liqueur"
    })
    void aNameIsReadWhereverItStandsInTheTitle(String title, Market market, String name) {
        List<LegalClass> classes = List.of(
                missed(Market.EU, "liqueur (general)"),
                missed(Market.EU, "crème de cassis"),
                met(Market.EU, "crème de (fruit or other, not milk)"),
                missed(Market.EU, "sambuca"),
                missed(Market.US, "rye or bourbon liqueur"),
                missed(Market.US, "rock and rye, bourbon, brandy or rum"),
                missed(Market.US, "flavored brandy, gin, rum, vodka or whisky"));
        assertThat(TitleName.missed(title, market, classes))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).startsWith("Its title calls it " + name + ","));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Amaretto", "House amaretto", "Anisette", "Triple sec"})
    void aNameOfARowOfSeveralIsReadAlone(String title) {
        assertThat(TitleName.missed(title, Market.US, List.of(missed(Market.US, AMARETTO))))
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "Bitter orange and cocoa, EU",
        "Sloe gin, EU",
        "Gingerbread, EU",
        "Quince cordial, EU",
        "Rum, US",
        "Anise and honey, US",
        "Liqueurs of the year, EU"
    })
    void aTitleThatBearsNoneOrAMetOneIsNot(String title, Market market) {
        List<Finding> found = TitleName.missed(title, market, NAMES);
        assertThat(found).isEmpty();
    }
}
