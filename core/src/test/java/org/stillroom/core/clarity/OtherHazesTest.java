package org.stillroom.core.clarity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

class OtherHazesTest {
    private static String first(String... seen) {
        return OtherHazes.likely(Set.of(seen)).get(0).name();
    }

    @Test
    void whatIsSeenPointsToTheHazeThatFitsBest() {
        assertThat(first("fruit", "boiled")).isEqualTo("pectin");
        assertThat(first("hard_water", "white_sediment")).isEqualTo("calcium of hard water");
        assertThat(first("cream", "sour")).isEqualTo("cream that breaks");
        assertThat(first("citrus_peel", "cold", "floats")).isEqualTo("waxes of expressed citrus");
        assertThat(OtherHazes.likely(Set.of())).isEmpty();
    }

    @Test
    void everySignIsAskedForAndPointsSomewhere() {
        assertThat(OtherHazes.asked().keySet())
                .allSatisfy(sign -> assertThat(OtherHazes.likely(Set.of(sign))).as(sign).isNotEmpty());
    }

    @Test
    void milkStaysAnAllergenOfWhatWasWashedWithIt() {
        assertThat(OtherHazes.clarifying().get("milk washing"))
                .isNotNull()
                .extracting(OtherHazes.Way::allergens)
                .asString()
                .contains("milk");
        assertThat(OtherHazes.clarifying().values())
                .allSatisfy(way -> assertThat(way.lossPercent()).isBetween(0.0, 50.0));
    }
}
