package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;

/** Units of Delle from memory, after Amerine and Kunkee 1965: sugar in g/100 mL and 4.5 times % vol, held from 78 on. */
class YeastTest {
    @ParameterizedTest
    @CsvSource({
        "0, 416.5, true",
        "0, 779, true",
        "0, 781, false",
        "9.2, 363, true",
        "9.4, 363, false",
        "17.0, 4, false", // nothing to live on
        "18.0, 10, false",
        "17.0, 10, true"
    })
    void yeastWorksWhereNeitherAlcoholNorSugarHoldsIt(double strength, double sugar, boolean works) {
        assertThat(new Yeast(strength, sugar).canWork()).isEqualTo(works);
    }

    /** 861.3 g of water and 484.9 g of sucrose take 1164.1 mL: 416.5 g/L, 41.7 units, by the printed coefficients of the sucrose formula. */
    @Test
    void theUnitsOfASyrupFollowFromItsGrams() {
        Contents juice = Contents.of(Substance.WATER, 861.3).with(Substance.SUCROSE, 484.9);
        assertThat(Yeast.in(juice).delle()).isCloseTo(41.65, within(0.005));
    }
}
