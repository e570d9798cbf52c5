package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;

class CarriedOilsTest {
    /** 200 g of spirit and 100 g of distillate of about 0.86 g/mL: what is stated per litre is in the drink, no more and no less. */
    @Test
    @Tag("property")
    void whatAnAnalysisStatesOfADistillateIsCounted() {
        Bench bench = distillate("alpha-thujone 30 mg/L, beta-thujone 50 mg/L");
        double share = bench.amount("thujone").perKilogram().most() / 80.0;

        assertThat(bench.amount("thujone").perKilogram().least()).isCloseTo(80.0 * share, within(1e-9));
        assertThat(share).isCloseTo(100.0 / 300.0 / 0.86, within(0.02));
        assertThat(bench.amount("thujone").notKnownFrom()).isEmpty();
    }

    /** An analysis names a sum as often as its members; both are counted as they are stated. */
    @ParameterizedTest
    @CsvSource({
        "thujone 50 mg/L, thujone, 50",
        "hydrogen cyanide 50 mg/L, hydrogen cyanide, 50",
        "quinine 90 mg/L, quinine, 90",
        "caffeine 200 mg/L, caffeine, 200",
        "glycyrrhizic acid 20 mg/L, glycyrrhizic acid, 20",
        "furocoumarins 1 mg/L, furocoumarins, 1"
    })
    @Tag("property")
    void aWatchedSubstanceThatIsStatedByItsNameIsCounted(String aroma, String substance, double stated) {
        double share = 100.0 / 300.0 / 0.86;
        assertThat(distillate(aroma).amount(substance).perKilogram().least())
                .isCloseTo(stated * share, within(0.03 * stated));
    }

    @Test
    void whatAnAnalysisDoesNotStateOfThePlantStaysUnknown() {
        assertThat(distillate("limonene 12 mg/L").amount("thujone").notKnownFrom())
                .isNotEmpty();
    }

    /** What stops or is minded by its name is so too where it is named in an aroma, in safety and in plans alike. */
    @ParameterizedTest
    @CsvSource({
        "oleander 1 g/L, plant, STOP poisonous",
        "wintergreen 1 g/L, not-for-drinking, STOP not for drinking",
        "fragrance oil 1 g/L, not-food-grade, STOP not for drinking",
        "moonberry 1 g/L, not-known, CAUTION not known",
        "peanut 1 g/L, allergen-peanut, NOTE contains",
        "st john's wort 1 g/L, medicines, CAUTION medicines",
        "bitter almonds 1 g/L, plant, CAUTION with care",
    })
    void whatIsNamedInAnAromaIsLookedAtAsALine(String aroma, String rule, String verdict) {
        for (Kind kind : new Kind[] {Kind.ESSENCE, Kind.TINCTURE, Kind.DISTILLATE}) {
            Bench drink = new Bench()
                    .strong("spirit", Kind.SPIRIT, 40.0, 900.0)
                    .carrying("number nine", kind, 90.0, aroma, 10.0);
            assertThat(Safety.ofPlan(drink.plan(), Grounds.SHIPPED))
                    .as(aroma + " in " + kind)
                    .anyMatch(finding -> finding.rule().equals(rule)
                            && (finding.severity() + " " + finding.verdict()).startsWith(verdict));
            assertThat(drink.findings(rule)).isNotEmpty();
        }
    }

    /** Wormwood by the gram has a range, whether its oil is poured neat or comes in an essence. */
    @Test
    @Tag("property")
    void anOilWithinAnEssenceCountsAsTheOilItself() {
        Amount within = new Bench()
                .strong("spirit", Kind.SPIRIT, 40.0, 200.0)
                .carrying("green essence", Kind.ESSENCE, 90.0, "wormwood 1 %, lemon 2 %", 10.0)
                .amount("thujone");
        Amount neat = new Bench()
                .strong("spirit", Kind.SPIRIT, 40.0, 209.9)
                .grams("wormwood oil", Kind.ESSENTIAL_OIL, 0.1)
                .amount("thujone");

        assertThat(within.perKilogram().most()).isCloseTo(neat.perKilogram().most(), within(1e-9));
        assertThat(within.from().toString()).contains("green essence: wormwood");
    }

    @Test
    void aPlantInTheNameThatIsNotAmongTheOilsIsNotRuledOut() {
        Bench bench = new Bench()
                .strong("spirit", Kind.SPIRIT, 40.0, 200.0)
                .carrying("wormwood essence", Kind.ESSENCE, 90.0, "lemon 2 %", 10.0);

        assertThat(bench.amount("thujone").notKnownFrom()).isNotEmpty();
    }

    private static Bench distillate(String aroma) {
        return new Bench()
                .strong("spirit", Kind.SPIRIT, 40.0, 200.0)
                .carrying("wormwood distillate", Kind.DISTILLATE, 72.0, aroma, 100.0);
    }
}
