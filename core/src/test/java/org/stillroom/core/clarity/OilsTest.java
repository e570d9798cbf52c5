package org.stillroom.core.clarity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.aroma.ConstituentGroup;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.SeededDraws;
import org.stillroom.core.quantity.Temperature;

class OilsTest {
    private static final Temperature TABLE = new Temperature(25);

    private static Medium medium(double percent, double sugar, double celsius) {
        return Medium.of(AlcoholByVolume.at20(percent), new MassConcentration(sugar), new Temperature(celsius));
    }

    /** Worked by hand-written arithmetic outside this program, from the same equations. */
    @ParameterizedTest
    @CsvSource({
        "limonene, 10,    80,  0, 25, 0.8119, 0.14,   0,      clear",
        "limonene, 10,    63,  0, 25, 0.6419, 0.863,  0,      hazy",
        "limonene, 10,    40,  0, 25, 0.4119, 10.129, 9.0127, cloudy",
        "anethole, 2,     45,  0, 25, 0.452,  0.446,  0,      clear",
        "anethole, 2,     40,  0, 25, 0.402,  0.672,  0,      clear",
        "anethole, 0.333, 7.5, 0, 25, 0.0753, 1.62,   0.1274, cloudy",
        "anethole, 2,     40,  0, 5,  0.402,  0.952,  0,      hazy",
        "limonene, 0.1,   20,  0, 25, 0.2001, 0.978,  0,      hazy",
        "limonene, 1,     40,  0, 25, 0.4012, 1.136,  0.1195, hazy",
        "limonene, 5,     55,  0, 25, 0.5559, 1.083,  0.3831, hazy"
    })
    void theModelGivesItsTestVectors(
            String oil,
            double dose,
            double percent,
            double sugar,
            double celsius,
            double cosolvent,
            double load,
            double separated,
            String verdict) {
        Oils oils = Oils.of(Map.of(oil, dose));
        Medium medium = medium(percent, sugar, celsius);
        assertThat(medium.cosolvent(oils.litres())).isCloseTo(cosolvent, within(5e-5));
        Clarity clarity = Clarity.of(oils, medium, Doubts.NONE);
        assertThat(clarity.load()).isCloseTo(load, within(5e-3 * load));
        assertThat(clarity.separated()).isCloseTo(separated, within(1e-3));
        assertThat(clarity.verdict().label()).isEqualTo(verdict);
    }

    @Test
    @Tag("property")
    void ofOneConstituentThereSeparatesWhatIsAboveItsSolubility() {
        Oils oils = Oils.of(Map.of("limonene", 3.0));
        Medium medium = medium(30, 150, 12);
        assertThat(oils.separated(medium)).isCloseTo(3.0 - 3.0 / oils.load(medium), within(1e-12));
    }

    @Test
    @Tag("property")
    void whatStaysDissolvedIsExactlySaturatedAndNothingIsLost() {
        SeededDraws draws = new SeededDraws(11);
        for (int n = 0; n < 200; n++) {
            Oils oils = Oils.of(Map.of(
                    "limonene", 5 * draws.unit(),
                    "linalool", 5 * draws.unit(),
                    "beta-caryophyllene", draws.unit(),
                    "anethole", 2 * draws.unit()));
            Medium medium = medium(60 * draws.unit(), 200 * draws.unit(), 40 * draws.unit());
            double[] gone = oils.separatedParts(medium);
            double phase = 0;
            double share = 0;
            double[] loads = oils.loads(medium);
            for (int i = 0; i < gone.length; i++) {
                assertThat(gone[i]).isBetween(0.0, oils.gramsPerLitre(i));
                phase += gone[i] / oils.parts().get(i).gramsPerMole();
                share += loads[i] * (oils.gramsPerLitre(i) - gone[i]) / oils.gramsPerLitre(i);
            }
            if (phase > 0) {
                assertThat(share).as("draw " + n).isCloseTo(1.0, within(1e-9));
            } else {
                assertThat(oils.load(medium)).as("draw " + n).isLessThanOrEqualTo(1.0);
            }
        }
    }

    @Test
    @Tag("property")
    void moreOilLessStrengthOrMoreColdNeverDissolvesBetter() {
        Oils oils = Oils.of(Map.of("limonene", 0.6, "citral", 0.1, "linalool", 0.2));
        double load = oils.load(medium(35, 120, 20));
        assertThat(oils.times(1.1).load(medium(35, 120, 20))).isGreaterThan(load);
        assertThat(oils.load(medium(34, 120, 20))).isGreaterThan(load);
        assertThat(oils.load(medium(35, 120, 5))).isGreaterThan(load);
    }

    @Test
    void oilOfWhichNothingIsKnownIsCountedAndNotDropped() {
        Contents liquid = MadeUp.sweetened(AlcoholByVolume.at20(30), new MassConcentration(100))
                .with(Substance.OIL, 1.0);
        Oils oils = Oils.of(liquid);
        assertThat(oils.gramsPerLitre()).isCloseTo(1.0, within(2e-3));
        assertThat(oils.parts()).singleElement().satisfies(part -> {
            assertThat(part.name()).isEqualTo(ConstituentGroup.UNKNOWN.label());
            assertThat(part.estimated()).isTrue();
        });
        assertThat(Clarity.of(liquid, TABLE, Doubts.NONE).estimated()).containsExactly("rest that is not known");
    }

    @Test
    void aLiquidSeenByItsGramsIsTheSameMedium() {
        Contents liquid = MadeUp.sweetened(AlcoholByVolume.at20(32), new MassConcentration(190))
                .plusConstituent("5989-27-5", 0.5);
        Clarity byGrams = Clarity.of(liquid, TABLE, Doubts.NONE);
        Clarity byFigures = Clarity.of(Oils.of(Map.of("limonene", 0.5)), medium(32, 190, 25), Doubts.NONE);
        assertThat(byGrams.load()).isCloseTo(byFigures.load(), within(0.005 * byFigures.load()));
    }

    @Test
    void aSolidCountsByWhatItWouldDissolveAsALiquid() {
        assertThat(OilParts.of("menthol").gramsPerLitreInWater()).isEqualTo(0.65);
        assertThat(OilParts.of("camphor").gramsPerLitreInWater()).isEqualTo(5.0);
    }

    @Test
    void aLiquidWithoutOilIsClear() {
        Clarity clarity =
                Clarity.of(MadeUp.sweetened(AlcoholByVolume.at20(20), new MassConcentration(300)), TABLE, Doubts.NONE);
        assertThat(clarity.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(clarity.load()).isZero();
        assertThat(clarity.chances().clear()).isEqualTo(1.0);
    }
}
