package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LetterSlipsTest {
    /** Counted by hand; a swap of neighbours is one slip. */
    @ParameterizedTest
    @CsvSource({
        "clove, clove, 0",
        "clove, clover, 1",
        "mace, maca, 1",
        "anise, ansie, 1",
        "lemon, melon, 2",
        "thyme, lime, 3"
    })
    void slipsAreTheFewestToGetFromOneToTheOther(String one, String other, int slips) {
        assertThat(LetterSlips.between(one, other)).isEqualTo(slips);
        assertThat(LetterSlips.between(other, one)).isEqualTo(slips);
    }

    @Test
    void nothingIsAsFarAsTheWordIsLong() {
        assertThat(LetterSlips.between("", "anise")).isEqualTo(5);
    }
}
