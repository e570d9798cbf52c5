package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Where a category, a list or a time begins and ends. */
class AtTheEdgeTest {
    private static List<String> teucrin(double percent, double sugar) {
        return new Bench()
                        .strong("neutral spirit", Kind.SPIRIT, percent, 1000.0)
                        .holding("white sugar", Kind.SUGAR, Substance.SUCROSE, 100.0, sugar)
                        .grams("germander", Kind.DRIED_PLANT, 1.0)
                        .findings("eu-maximum")
                        .stream()
                        .map(Finding::limit)
                        .toList();
    }

    /**
     * Regulation (EC) 1334/2008, Annex III B: 5 mg/kg of teucrin A in bitter spirit drinks and bitter liqueurs, 2 in other alcoholic drinks; a
     * spirit drink has 15 % vol, Regulation (EU) 2019/787, article 2(c).
     */
    @Test
    void aBitterDrinkBelowTheStrengthOfASpiritDrinkHasTheFigureOfOthers() {
        assertThat(teucrin(14.0, 1e-6)).hasSize(1).allMatch(limit -> limit.startsWith("at most 2 mg/kg"));
        assertThat(teucrin(20.0, 1e-6)).hasSize(1).allMatch(limit -> limit.startsWith("at most 5 mg/kg"));
        assertThat(teucrin(30.0, 150.0)).hasSize(2).allMatch(limit -> limit.startsWith("at most 5 mg/kg"));
    }

    /** 21 CFR 172.510: sassafras leaves, safrole free; 184.1698 from memory: rue, 2 ppm. */
    @ParameterizedTest
    @CsvSource({"sassafras leaves, not shown to be free", "rue herb, above what is listed"})
    void whatIsListedFreeOrUpToAnAmountIsHeldToThat(String name, String verdict) {
        assertThat(new Bench()
                        .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                        .grams(name, Kind.DRIED_PLANT, 5.0)
                        .findings("us-listed"))
                .anyMatch(finding -> finding.verdict().equals(verdict) && finding.severity() == Severity.CAUTION);
    }

    /** 184.1699 from memory: oil of rue, 4 ppm in drinks. */
    @ParameterizedTest
    @CsvSource({"0.0039, NOTE", "0.0041, CAUTION", "1.0, CAUTION"})
    void oilOfRueIsHeldToItsFigureInDrinks(double grams, Severity severity) {
        assertThat(new Bench()
                        .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0 - grams)
                        .grams("oil of rue", Kind.ESSENTIAL_OIL, grams)
                        .findings("us-listed"))
                .singleElement()
                .extracting(Finding::severity)
                .isEqualTo(severity);
    }

    @Test
    void aFreshPlantUnderOilKeepsForAsLongAsItsCautionSays() {
        Bench oil = new Bench()
                .holding("olive oil", Kind.OTHER, Substance.FAT, 100.0, 100.0)
                .fresh("rosemary", 70.0, 10.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 5.0);
        assertThat(oil.safety().keeping()).isNotNull().satisfies(keeping -> {
            assertThat(keeping.where()).isEqualTo(Keeping.Where.FRIDGE);
            assertThat(keeping.until()).isEqualTo("4 days");
        });
        assertThat(oil.findings("growth")).anyMatch(finding -> finding.remedy().contains("within four days"));
        assertThat(oil.findings("keeping"))
                .extracting(Finding::remedy)
                .containsExactly("Keep it in the fridge and use it within 4 days.");
    }

    @Test
    void aSubstanceByItselfIsNotAskedWhatElseIsInIt() {
        assertThat(new Bench()
                        .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                        .holding("glycyrrhizic acid", Kind.OTHER, Substance.OTHER_SOLIDS, 100.0, 0.05)
                        .findings("eu-statement"))
                .noneMatch(finding -> finding.verdict().equals("not known: ask"));
    }

    /** Below its own amount is a hair less, and 100.0 % is no hair less. */
    @Test
    void whatMustStayBelowIsNotToldToTakeAllOfIt() {
        Amount thujone = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 60.0, 1000.0)
                .grams("sage oil", Kind.ESSENTIAL_OIL, 0.02)
                .amount("thujone");
        double most = thujone.perKilogram().most();
        Finding at = new Limit("us-limit", "US", "a drink", most, Limit.Basis.PER_KILOGRAM, Limit.Edge.BELOW, null)
                .judge(thujone);
        assertThat(at.severity()).isEqualTo(Severity.STOP);
        assertThat(at.remedy()).contains("at most 99.9 %");
    }
}
