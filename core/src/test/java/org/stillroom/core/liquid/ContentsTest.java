package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import org.junit.jupiter.api.Test;

class ContentsTest {
    private static final String LIMONENE = "5989-27-5";
    private static final String LINALOOL = "78-70-6";

    private static final Contents SCENTED = Contents.of(Substance.WATER, 10)
            .plusConstituent(LIMONENE, 0.4)
            .plusConstituent(LINALOOL, 0.1)
            .plusConstituent(LIMONENE, 0.2);

    @Test
    void oilGrowsWithItsConstituents() {
        assertThat(SCENTED.grams(Substance.OIL)).isEqualTo(0.4 + 0.1 + 0.2);
        assertThat(SCENTED.aroma()).containsOnlyKeys(LIMONENE, LINALOOL);
        assertThat(SCENTED.aroma().get(LIMONENE)).isEqualTo(0.4 + 0.2);
    }

    @Test
    void contentsAddAndScaleWithTheirAroma() {
        Contents twice = SCENTED.plus(SCENTED);
        assertThat(twice.aroma()).containsOnly(entry(LIMONENE, 2 * (0.4 + 0.2)), entry(LINALOOL, 0.2));
        assertThat(twice).isEqualTo(SCENTED.times(2)).hasSameHashCodeAs(SCENTED.times(2));
        assertThat(twice.grams(Substance.WATER)).isEqualTo(20);
        assertThat(SCENTED.times(0).total()).isZero();
        assertThat(Contents.of(Substance.WATER, 4)
                        .plus(Contents.of(Substance.SALT, 1))
                        .perGram())
                .isEqualTo(Contents.of(Substance.WATER, 0.8).with(Substance.SALT, 0.2));
    }

    @Test
    void differentContentsAreNotEqual() {
        assertThat(SCENTED).isNotEqualTo(SCENTED.with(Substance.WATER, 11)).isNotEqualTo("water");
        assertThat(SCENTED.with(Substance.OIL, 0)).isNotEqualTo(Contents.of(Substance.WATER, 10));
        assertThat(SCENTED.hashCode())
                .isNotEqualTo(Contents.of(Substance.WATER, 10).hashCode());
    }

    @Test
    void gramsAreTakenInOrderAndHandedOutAsCopies() {
        double[] grams = Contents.of(Substance.GLYCEROL, 3).toGrams();
        assertThat(Contents.ofGrams(grams)).isEqualTo(Contents.of(Substance.GLYCEROL, 3));
        grams[0] = 99;
        assertThat(Contents.of(Substance.GLYCEROL, 3).grams(Substance.ETHANOL)).isZero();
        assertThatThrownBy(() -> Contents.ofGrams(new double[3])).hasMessageContaining("not 3");
    }

    @Test
    void impossibleAmountsAreRefused() {
        assertThatThrownBy(() -> Contents.of(Substance.WATER, -1))
                .hasMessageContaining("grams of water")
                .hasMessageContaining("not -1.0");
        assertThatThrownBy(() -> Contents.of(Substance.WATER, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Contents.of(Substance.WATER, 1e12)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SCENTED.times(-1)).hasMessageContaining("not by -1.0");
        assertThatThrownBy(() -> SCENTED.times(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void contentsReadAsPeopleWouldSayThem() {
        assertThat(Contents.of(Substance.WATER, 10).with(Substance.SALT, 1)).hasToString("10.0 g water, 1.0 g salt");
        assertThat(Contents.NONE).hasToString("nothing");
    }

    @Test
    void sugarsAreCountedAsDissolved() {
        Contents contents = Contents.of(Substance.GLYCEROL, 7);
        for (Substance substance : Substance.values()) {
            if (substance.sugar() != null) {
                contents = contents.with(substance, 2);
                assertThat(substance.sugar().label()).isEqualTo(substance.label());
            }
        }
        assertThat(contents.sugars()).isEqualTo(10);
        assertThat(contents.total()).isEqualTo(17);
    }
}
