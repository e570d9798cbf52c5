package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Kind;

/** A macerate that says how much plant it carries counts as that plant: anything from none of its substances to all. */
class CarriedPlantTest {
    private static Bench macerate(String name, @Nullable String plant, String ratio) {
        return new Bench()
                .strong("spirit", Kind.SPIRIT, 40.0, 900.0)
                .ofPlant(name, Kind.MACERATE, 60.0, plant, ratio, 90.9);
    }

    /** 90.9 g of 60 % vol are 100.0 mL (0.909 g/mL, OIML), and at 1:10 carry 10.0 g; the same plant by the gram brings as much. */
    @Test
    @Tag("property")
    void itBringsWhatTheSamePlantByTheGramBrings() {
        Amount carried = macerate("wormwood macerate", null, "1:10").amount("thujone");
        Amount byTheGram = new Bench()
                .strong("spirit", Kind.SPIRIT, 40.0, 990.9)
                .grams("dried wormwood", Kind.DRIED_PLANT, 10.0)
                .amount("thujone");

        assertThat(carried.notKnownFrom()).isEmpty();
        assertThat(carried.perLitre().least()).isZero();
        assertThat(carried.perLitre().most()).isPositive();
        assertThat(carried.perKilogram().most() * 990.9)
                .isCloseTo(
                        byTheGram.perKilogram().most() * (990.9 + 1.0),
                        Percentage.withPercentage(0.1)); // 10 g bring 1 g of water
    }

    @Test
    void withoutARatioNobodyKnowsHowMuch() {
        assertThat(new Bench()
                        .strong("spirit", Kind.SPIRIT, 40.0, 900.0)
                        .strong("wormwood macerate", Kind.MACERATE, 60.0, 90.9)
                        .amount("thujone")
                        .notKnownFrom())
                .isNotEmpty();
    }

    @Test
    void thePlantThatIsNamedCountsInPlaceOfTheName() {
        Amount named = macerate("green thing", "dried wormwood", "1:10").amount("thujone");

        assertThat(named.perLitre().most())
                .isEqualTo(macerate("wormwood macerate", null, "1:10")
                        .amount("thujone")
                        .perLitre()
                        .most());
        assertThat(named.from().toString()).contains("green thing");
        assertThat(macerate("wormwood green", "gentian root", "1:10")
                        .safety()
                        .drink()
                        .amount("thujone"))
                .isNull();
    }

    /** Peel of lemon has 81.6 % water (USDA), so that fresh it counts 0.184 of what it counts dried. */
    @Test
    void aPlantThatIsSaidToBeFreshCountsWithoutItsWater() {
        double dried = macerate("lemon", "lemon peel", "1:2")
                .amount("furocoumarins")
                .perLitre()
                .most();
        double fresh = macerate("lemon", "fresh lemon peel", "1:2")
                .amount("furocoumarins")
                .perLitre()
                .most();

        assertThat(fresh / dried).isCloseTo(0.184, within(1e-9));
    }

    @Test
    void aPoisonousPlantIsFoundByThePlantThatIsNamed() {
        assertThat(macerate("green thing", "foxglove", "1:10").verdicts("plant"))
                .containsExactly("STOP poisonous");
    }

    @Test
    void aRuleOfTheHouseCountsTheGrams() {
        assertThat(macerate("green thing", "dried wormwood", "1:10")
                        .house("at most 5 g/L wormwood")
                        .verdicts("house-rule"))
                .containsExactly("STOP house above the limit");
        assertThat(macerate("green thing", "dried wormwood", "1:10")
                        .house("no wormwood")
                        .verdicts("house-rule"))
                .containsExactly("STOP house against the house rule");
    }
}
