package org.stillroom.core.clarity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.Volume;

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
                .allSatisfy(sign ->
                        assertThat(OtherHazes.likely(Set.of(sign))).as(sign).isNotEmpty());
    }

    @Test
    void aDoseIsWorkedOutForTheVolume() {
        OtherHazes.Way bentonite =
                Objects.requireNonNull(OtherHazes.clarifying().get("bentonite"));
        Clarified clarified = Clarified.of(bentonite, Volume.litres(5), OptionalDouble.of(30));
        assertThat(clarified.least()).isCloseTo(1.0, within(1e-9));
        assertThat(clarified.most()).isCloseTo(5.0, within(1e-9));
        assertThat(clarified.mostWater()).isCloseTo(50.0, within(1e-9));
        assertThat(clarified.leftAtMost()).isCloseTo(0.97 * 5050, within(1e-9));
        assertThat(clarified.afterMost().orElseThrow()).isCloseTo(30 * 5000 / 5050.0, within(0.03));
        assertThat(clarified.isTooStrong()).isFalse();
    }

    @Test
    void milkWashingWeakensAsItsWheyDoes() {
        OtherHazes.Way milk = Objects.requireNonNull(OtherHazes.clarifying().get("milk washing"));
        Clarified clarified = Clarified.of(milk, Volume.litres(1), OptionalDouble.of(30));
        assertThat(clarified.most()).isCloseTo(500, within(1e-9));
        assertThat(clarified.afterMost().orElseThrow()).isCloseTo(30 / 1.45, within(0.25));
        assertThat(Clarified.of(milk, Volume.litres(1), OptionalDouble.empty()).afterMost())
                .isEmpty();
    }

    @Test
    void pectinaseHardlyWorksInSpirit() {
        OtherHazes.Way pectinase =
                Objects.requireNonNull(OtherHazes.clarifying().get("pectinase"));
        assertThat(Clarified.of(pectinase, Volume.litres(1), OptionalDouble.of(20))
                        .isTooStrong())
                .isTrue();
        assertThat(Clarified.of(pectinase, Volume.litres(1), OptionalDouble.of(10))
                        .isTooStrong())
                .isFalse();
    }

    @Test
    void whatTakesNothingOnlyLoses() {
        OtherHazes.Way racking = Objects.requireNonNull(OtherHazes.clarifying().get("racking"));
        Clarified clarified = Clarified.of(racking, Volume.litres(1), OptionalDouble.of(30));
        assertThat(racking.dose().isNone()).isTrue();
        assertThat(clarified.afterMost().orElseThrow()).isCloseTo(30, within(1e-12));
        assertThat(clarified.leftAtLeast()).isCloseTo(960, within(1e-9));
    }

    @Test
    void creamKeepsByFatStrengthAndAcidTogether() {
        assertThat(Cream.of(new Cream.Figures(14, 17, 0)).keeping()).isEqualTo(Cream.Keeping.KEEPS);
        assertThat(Cream.of(new Cream.Figures(14, 24, 0)).keeping()).isEqualTo(Cream.Keeping.DOUBTFUL);
        assertThat(Cream.of(new Cream.Figures(14, 24, 2)).keeping()).isEqualTo(Cream.Keeping.BREAKS);
        assertThat(Cream.of(new Cream.Figures(14, 17, 5)).keeping()).isEqualTo(Cream.Keeping.BREAKS);
        assertThat(Cream.of(new Cream.Figures(14, 40, 0)).signs())
                .filteredOn(sign -> sign.keeping() == Cream.Keeping.BREAKS)
                .extracting(sign -> sign.limit().cause())
                .containsExactly(Cream.Cause.STRENGTH);
        assertThatThrownBy(() -> new Cream.Figures(Double.NaN, 17, 0)).isInstanceOf(IllegalArgumentException.class);
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
