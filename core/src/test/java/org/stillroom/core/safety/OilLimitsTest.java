package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.reference.Finding;

/** What maxima leave room for of oils. */
class OilLimitsTest {
    private static OilLimits limits(String... oils) {
        return OilLimits.of(List.of(oils), AlcoholByVolume.at20(30), Grounds.SHIPPED);
    }

    /** Source: Regulation (EC) 1334/2008, Annex III part B, thujone in alcoholic beverages 10 mg/kg; 21 CFR 172.510, below 10. */
    @Test
    @Tag("published")
    void sageIsHeldToTheMaximumOfThujone() {
        OilLimits sage = limits("sage");
        assertThat(Objects.requireNonNull(sage.maxima().get("thujone")).milligramsPerKilogram())
                .isEqualTo(10.0);
        double reach = Objects.requireNonNull(sage.oils().get(0).reach().get("thujone"));
        // 1 g/L of an oil of x % thujone brings 10·x mg/L; a drink of 30 % vol weighs 0.96 kg/L
        assertThat(reach / 10.0 * 0.965).isBetween(40.0, 80.0);
        assertThat(sage.oils().get(0).isAllowed()).isTrue();
    }

    @Test
    void anOilWithoutWatchedSubstancesHasNoBound() {
        assertThat(limits("petitgrain").oils().get(0).reach()).isEmpty();
    }

    @Test
    void anOilThatIsNotForDrinkingIsNotAllowedAndSaysWhy() {
        OilLimits.OfOil wintergreen = limits("wintergreen").oils().get(0);
        assertThat(wintergreen.isAllowed()).isFalse();
        assertThat(wintergreen.stops()).extracting(Finding::rule).contains("not-for-drinking");
    }

    @Test
    void whatIsSaidOfNamesIsWhatADrinkOfThemIsTold() {
        List<Finding> told = OilLimits.told(List.of("lemon", "wintergreen", "moon dust"), Grounds.SHIPPED);
        assertThat(told).noneMatch(finding -> finding.where().startsWith("lemon"));
        assertThat(told)
                .filteredOn(Rules::isNotForDrinking)
                .extracting(Finding::where)
                .containsExactly("wintergreen");
        assertThat(told)
                .filteredOn(finding -> finding.where().equals("moon dust"))
                .extracting(Finding::verdict)
                .contains("not listed", "not known");
        List<Finding> drink = new Bench()
                .grams("moon dust", Kind.ESSENTIAL_OIL, 0.01)
                .strong("spirit", Kind.SPIRIT, 30, 965)
                .safety()
                .findings();
        assertThat(drink)
                .extracting(Finding::message)
                .containsAll(told.stream()
                        .filter(finding -> finding.where().equals("moon dust"))
                        .map(Finding::message)
                        .toList());
    }

    @Test
    void anOilThatTheHouseLeavesOutIsSaidSo() {
        HouseRules house = HouseRules.read("no sage", Knowledge.SHIPPED).rules();
        assertThat(OilLimits.told(List.of("sage"), Grounds.SHIPPED.with(house)))
                .extracting(Finding::jurisdiction)
                .contains(HouseRule.JURISDICTION);
    }

    /** The bound of one oil alone, used to its end, is what the rules of a drink let pass; a hair more is stopped. */
    @Test
    @Tag("property")
    void theBoundIsTheOneOfTheRulesOfADrink() {
        OilLimits sage = limits("sage");
        double most = 10.0 / Objects.requireNonNull(sage.oils().get(0).reach().get("thujone"));
        assertThat(most).isCloseTo(0.0178, within(0.01)); // g/L
        assertThat(isStopped("sage oil", 0.99 * most)).isFalse();
        assertThat(isStopped("sage oil", 1.01 * most)).isTrue();
    }

    private static boolean isStopped(String oil, double gramsPerLitre) {
        return new Bench()
                .grams(oil, Kind.ESSENTIAL_OIL, gramsPerLitre)
                .strong("spirit", Kind.SPIRIT, 30, 965) // a litre of it
                .safety()
                .isStopped();
    }

    @Test
    void aStrengthThatNoDrinkHasIsRefused() {
        assertThatThrownBy(() -> OilLimits.of(List.of("lemon"), AlcoholByVolume.at20(99), Grounds.SHIPPED))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("99");
    }
}
