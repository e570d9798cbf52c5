package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.extraction.Combining.Macerate;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;

/** Several macerates to one strength. */
class CombiningTest {
    private static final Contents STRONG = MadeUp.spirit(AlcoholByVolume.at20(96));

    private static Macerate macerate(double millilitres, double percent, double gramsPerMillilitre) {
        Contents contents = MadeUp.spirit(AlcoholByVolume.at20(percent)).times(millilitres / 1000.0);
        return new Macerate(contents, gramsPerMillilitre * millilitres);
    }

    /** Own arithmetic: 300 mL at 1:5 and 500 mL at 1:10 hold 110 g of plant, enough for 880 mL at 1:8. */
    @Test
    void allGoesInWhereTheExtractIsEnough() {
        Combining combining = Combining.of(List.of(macerate(300, 62, 0.2), macerate(500, 55, 0.1)), 0.125, 58, STRONG);
        assertThat(combining.taken()).containsExactly(1.0, 1.0);
        assertThat(combining.volume()).isCloseTo(880, within(1e-6));
        Essentials made = Essentials.of(combining.finishing().made().toGrams());
        assertThat(made.millilitres()).isCloseTo(880, within(1e-6));
        assertThat(made.strength()).isCloseTo(58, within(1e-6));
    }

    /** 300 mL at 1:5 and 900 mL at 1:10 are 1200 mL of 1:8: contraction aside there is no room for spirit. */
    @Test
    void ofTheWeakerOnesOnlyAPartGoesInWhereTheyLeaveNoRoom() {
        Combining combining = Combining.of(List.of(macerate(300, 62, 0.2), macerate(900, 55, 0.1)), 0.125, 58, STRONG);
        assertThat(combining.taken().get(0)).isEqualTo(1.0);
        assertThat(combining.taken().get(1)).isBetween(0.7, 0.95);
        double extract = 60 + combining.taken().get(1) * 90;
        assertThat(combining.volume()).isCloseTo(extract / 0.125, within(1e-6));
        assertThat(combining.finishing().water()).isLessThan(1.0);
    }

    @Test
    void whatCannotBeIsRefusedInWords() {
        List<Macerate> one = List.of(macerate(300, 62, 0.1));
        assertThatThrownBy(() -> Combining.of(one, 0.2, 58, STRONG))
                .hasMessageContaining("none of the macerates holds more");
        assertThatThrownBy(() -> Combining.of(List.of(macerate(300, 62, 0.2)), 0.19, 20, STRONG))
                .hasMessageContaining("alcohol");
    }
}
