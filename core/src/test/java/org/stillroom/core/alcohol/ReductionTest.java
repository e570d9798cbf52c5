package org.stillroom.core.alcohol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;

class ReductionTest {
    private static Reduction reduce(double from, double to, VolumeBasis basis, double millilitres) {
        return Reduction.of(
                new AlcoholByVolume(from, basis),
                new AlcoholByVolume(to, basis),
                new Volume(millilitres),
                Workings.NONE);
    }

    /** Source: Gay-Lussac dilution table at 15 °C, 95 to 40 % vol: 144.46 volumes of water per 100; tolerance 0.12. */
    @Test
    @Tag("published")
    void ninetyFiveToForty() {
        Reduction reduction = reduce(95, 40, VolumeBasis.AT_15C, 100);
        assertThat(reduction.water().millilitres()).isCloseTo(144.46, within(0.12));
        assertThat(reduction.finalVolume().millilitres()).isCloseTo(237.5, within(1e-9));
        assertThat(reduction.contraction()).isCloseTo(100 + 144.48 - 237.5, within(0.01));
    }

    /**
     * Source: 27 CFR 30.66, per 100 wine gallons: 112 to 100 proof 12.42; tolerance 0.02. For 191 to 188 proof the text prints
     * 1.84, since it rounds the ratio 191/188 = 1.01596 to 1.01 on the way; carried through it is 1.88, and so is ours.
     */
    @Test
    @Tag("published")
    void theGaugingManualsReductions() {
        assertThat(reduce(56, 50, VolumeBasis.AT_60F, 100).water().millilitres())
                .isCloseTo(12.42, within(0.02));
        double water = reduce(95.5, 94, VolumeBasis.AT_60F, 100).water().millilitres();
        assertThat(water).isCloseTo(1.884, within(0.002));
        double asPrinted = 1.01 * 7.36 - 5.59;
        assertThat(asPrinted).isCloseTo(1.84, within(0.005));
        assertThat(191.0 / 188.0 * 7.36 - 5.59).isCloseTo(water, within(0.01));
    }

    /** Source: 27 CFR 30.64: 1000 lb of 200 proof to 190 proof take 82.03 lb of water; the formula says 82.09. */
    @Test
    @Tag("published")
    void aThousandPoundsOfAbsoluteAlcohol() {
        double gallons = 1000.0;
        Reduction reduction = reduce(100, 95, VolumeBasis.AT_60F, gallons);
        double spirit =
                gallons * EthanolWater.at(VolumeBasis.AT_60F.temperature()).ethanol() / 1000;
        assertThat(1000 * reduction.waterMass().grams() / spirit).isCloseTo(82.03, within(0.1));
    }

    @ParameterizedTest
    @EnumSource
    @Tag("property")
    void ethanolStaysAndContractionIsTheDifference(VolumeBasis basis) {
        for (double from = 5; from <= 100; from += 5) {
            for (double to = 2.5; to < from; to += 5) {
                Reduction reduction = reduce(from, to, basis, 1000);
                assertThat(reduction.finalVolume().millilitres() * to).isCloseTo(1000 * from, within(1e-6));
                assertThat(reduction.water().millilitres()
                                * EthanolWater.at(basis.temperature()).water()
                                / 1000)
                        .isCloseTo(reduction.waterMass().grams(), within(1e-9));
                assertThat(reduction.contraction())
                        .isCloseTo(
                                1000
                                        + reduction.water().millilitres()
                                        - reduction.finalVolume().millilitres(),
                                within(1e-9));
            }
        }
    }

    @Test
    void aWeakSpiritGrowsWhenItIsBroughtDown() {
        assertThat(reduce(10, 5, VolumeBasis.AT_20C, 1000).contraction()).isNegative();
        assertThat(reduce(95, 50, VolumeBasis.AT_20C, 1000).contraction()).isGreaterThan(40);
    }

    @Test
    void whatWaterCannotDoIsRefused() {
        assertThatThrownBy(() -> reduce(40, 40, VolumeBasis.AT_20C, 100))
                .hasMessage(
                        "water only lowers strength: a spirit of 40.00 % vol cannot be brought to 40.00 % vol; give a"
                                + " lower strength to reach, or add a stronger spirit.");
        assertThatThrownBy(() -> reduce(40, 0, VolumeBasis.AT_20C, 100)).hasMessageContaining("down to 0 % vol");
        assertThatThrownBy(() -> Reduction.of(
                        AlcoholByVolume.at20(40),
                        new AlcoholByVolume(30, VolumeBasis.AT_15C),
                        new Volume(1),
                        Workings.NONE))
                .hasMessage("both strengths are wanted on one basis, not at 20 °C and at 15 °C");
    }

    @Test
    void theStepsEndInWhatIsReturned() {
        Workings.Written written = new Workings.Written();
        Reduction reduction =
                Reduction.of(AlcoholByVolume.at20(95), AlcoholByVolume.at20(40), new Volume(1000), written);
        assertThat(written.steps().get(4).what()).isEqualTo("water to add");
        assertThat(written.steps().get(4).unit()).isEqualTo("mL at 20 °C");
        assertThat(written.steps().get(4).value()).isEqualTo(reduction.water().millilitres());
        assertThat(written.steps().get(6).value()).isEqualTo(reduction.contraction());
    }
}
