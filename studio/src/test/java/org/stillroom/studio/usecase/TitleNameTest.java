package org.stillroom.studio.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
                        assertThat(finding.message()).contains(name, "sugar 80.0 g/L where at least 100 is asked"));
    }

    @ParameterizedTest
    @CsvSource({
        "Bitter orange and cocoa, EU",
        "Sloe gin, EU",
        "Gingerbread, EU",
        "Quince cordial, EU",
        "Liqueurs of the year, EU"
    })
    void aTitleThatBearsNoneOrAMetOneIsNot(String title, Market market) {
        List<Finding> found = TitleName.missed(title, market, NAMES);
        assertThat(found).isEmpty();
    }
}
