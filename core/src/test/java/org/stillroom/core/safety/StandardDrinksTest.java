package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Standard drinks by country. */
class StandardDrinksTest {
    private static double drinks(String country, double millilitres, double percent) {
        return Knowledge.SHIPPED.standardDrinks().stream()
                .filter(drink -> drink.country().equals(country))
                .findFirst()
                .orElseThrow()
                .in(millilitres * percent / 100.0 * 0.78924);
    }

    /** 700 mL at 40 % vol are 28.0 UK units of 10 mL; 30 mL at 40 % vol are 0.95 Australian drinks of 10 g. */
    @Test
    @Tag("published")
    void unitsAndDrinksAgreeWithPublishedOnes() {
        assertThat(drinks("UK", 700, 40)).isCloseTo(28.0, within(0.01));
        assertThat(drinks("Australia", 30, 40)).isCloseTo(0.95, within(0.005));
        assertThat(drinks("USA", 17.7, 100)).isCloseTo(1.0, within(0.01));
    }
}
