package org.stillroom.core.aroma;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Standing;

class OilDensityTest {
    /** Clove bud oil 1.038 to 1.060: USP specific gravity, as a copy of the monograph quotes it. */
    @Test
    void anOilOfTheTableHasTheMiddleOfItsRange() {
        OilDensity clove = OilDensity.of("Clove bud oil");
        assertThat(clove.gramsPerMillilitre()).isCloseTo(1.049, within(1e-12));
        assertThat(clove.relativeDoubt()).isCloseTo(0.011 / 1.049, within(1e-12));
        Finding told = clove.told("clove bud oil");
        assertThat(told.message())
                .isEqualTo("A millilitre of it is taken as 1.049 g, the middle of 1.038 to 1.060 by USP; Ph. Eur.; ISO"
                        + " 3142.");
        assertThat(told.source()).isEqualTo(Source.OIL_DENSITIES);
        assertThat(OilDensity.of("lemon").told("lemon").status()).isEqualTo("from memory");
    }

    @Test
    void anOilThatNoTableKnowsHasTheRangeInWhichNineOfTenLie() {
        OilDensity broad = OilDensity.of("yuzu oil");
        long within = Materials.list().stream()
                .filter(each -> each.kind() == Material.Kind.OIL && each.density() != null)
                .map(each -> OilDensity.of(each.name()).gramsPerMillilitre())
                .filter(each ->
                        each >= broad.range().low() && each <= broad.range().high())
                .count();
        long all = Materials.list().stream()
                .filter(each -> each.kind() == Material.Kind.OIL && each.density() != null)
                .count();
        assertThat((double) within / all).isBetween(0.85, 0.95);
        assertThat(broad.standing()).isEqualTo(Standing.OWN);
        assertThat(broad.told("yuzu oil").severity()).isEqualTo(Severity.CAUTION);
        assertThat(OilDensity.known("yuzu oil")).isNull();
    }

    @Test
    void usualOilsAndPureSubstancesAreKnownToo() {
        assertThat(OilDensity.of("dwarf pine oil").gramsPerMillilitre()).isCloseTo(0.862, within(1e-12));
        assertThat(OilDensity.of("eugenol").gramsPerMillilitre()).isBetween(1.05, 1.08);
        assertThat(OilDensity.of("eugenol").relativeDoubt()).isLessThan(0.01);
    }

    @Test
    void oilsPutTogetherTakeTheVolumesThatTheyBring() {
        OilDensity half = OilDensity.ofParts(Map.of("lemon", 0.5, "clove bud", 0.5));
        assertThat(half.range().low()).isCloseTo(1.0 / (0.5 / 0.850 + 0.5 / 1.038), within(1e-12));
        assertThat(half.range().high()).isCloseTo(1.0 / (0.5 / 0.858 + 0.5 / 1.060), within(1e-12));
        assertThat(half.standing()).isEqualTo(Standing.FROM_MEMORY);
        assertThat(OilDensity.ofParts(Map.of("lemon", 0.5, "yuzu", 0.5)).standing())
                .isEqualTo(Standing.OWN);
    }

    /** A number is written once: the table of typical oils states a density only where the table of materials states none. */
    @Test
    void noDensityStandsTwice() {
        for (EssentialOil oil : EssentialOils.list()) {
            Material material = Materials.find(oil.name());
            if (oil.gramsPerMillilitre() != null) {
                assertThat(material == null || material.density() == null)
                        .as(oil.name())
                        .isTrue();
            }
        }
    }
}
