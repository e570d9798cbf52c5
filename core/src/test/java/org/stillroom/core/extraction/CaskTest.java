package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class CaskTest {
    /** About 90 cm² per litre in a cask of 225 L; from memory. */
    @Test
    void aLargeCaskHasTheSurfaceThatCellarsKnow() {
        assertThat(new Cask(225).surfacePerLitre()).isCloseTo(90.0, within(5.0));
        assertThat(new Cask(225).timesOfLarge()).isEqualTo(1.0);
        assertThat(new Cask(225).daysForAYear()).isEqualTo(365.0);
    }

    /** Surface goes by the square and content by the cube of the width: an eighth of the content meets twice the wood. */
    @Test
    @Tag("property")
    void anEighthOfTheContentMeetsTwiceTheWood() {
        assertThat(new Cask(225.0 / 8.0).timesOfLarge()).isCloseTo(2.0, within(1e-12));
        assertThat(new Cask(225.0 / 8.0).tasteEveryDays()).isCloseTo(15.0, within(1e-9));
    }

    @Test
    void noCaskHoldsNothing() {
        assertThatThrownBy(() -> new Cask(0.0)).isInstanceOf(IllegalArgumentException.class);
    }
}
