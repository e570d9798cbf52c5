package org.stillroom.core.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.blend.SpiritBlend.Part;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Proof;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Workings;

class SpiritBlendTest {
    private static final VolumeBasis BASIS = VolumeBasis.AT_20C;

    private static Part part(double millilitres, double percent, VolumeBasis basis) {
        return Part.of(new Volume(millilitres), new AlcoholByVolume(percent, basis), basis);
    }

    private static SpiritBlend blend(List<Part> parts, VolumeBasis basis) {
        return SpiritBlend.of(parts, basis, Workings.NONE);
    }

    /**
     * Water volumes to 100 volumes at 15 °C. Source: Gay-Lussac dilution table; tolerance 0.08, within which nine in ten of
     * its entries agree with the international formula.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"95, 40, 144.46", "100, 50, 107.44", "70, 40, 77.58", "90, 75, 21.89", "95, 70, 39.18"})
    void waterToReachAStrengthIsThatOfTheDilutionTable(double from, double to, double printed) {
        VolumeBasis basis = VolumeBasis.AT_15C;
        Part water = SpiritBlend.toReach(
                List.of(part(100, from, basis)),
                new AlcoholByVolume(0, basis),
                new AlcoholByVolume(to, basis),
                Workings.NONE);
        assertThat(water.volume(basis).millilitres()).isCloseTo(printed, within(0.08));
    }

    /** 1000 lb of 200 proof take 82.03 lb of water to 190 proof. Source: 27 CFR 30.64; older densities, tolerance 0.1 lb. */
    @Test
    @Tag("published")
    void waterByWeightIsThatOfTheGaugingManual() {
        Part water = SpiritBlend.toReach(
                List.of(Part.of(new Mass(1000), new Proof(200))), new Proof(0), new Proof(190), Workings.NONE);
        assertThat(water.mass().grams()).isCloseTo(82.03, within(0.1));
    }

    @Test
    @Tag("property")
    void addingWhatReachesAStrengthReachesIt() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            VolumeBasis basis = VolumeBasis.values()[random.nextInt(3)];
            double first = 100 * random.nextDouble();
            double second = 100 * random.nextDouble();
            double target = first + (second - first) * (0.05 + 0.9 * random.nextDouble());
            List<Part> parts = new ArrayList<>(List.of(part(1000, first, basis)));
            parts.add(SpiritBlend.toReach(
                    parts, new AlcoholByVolume(second, basis), new AlcoholByVolume(target, basis), Workings.NONE));
            assertThat(blend(parts, basis).strength().percent())
                    .as("seed %d", seed)
                    .isCloseTo(target, within(1e-9));
        }
    }

    @Test
    @Tag("property")
    void orderIsIrrelevantAndMassIsKept() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            List<Part> parts = new ArrayList<>();
            double mass = 0;
            for (int i = 0; i < 5; i++) {
                parts.add(part(10 + 500 * random.nextDouble(), 100 * random.nextDouble(), BASIS));
                mass += parts.get(i).mass().grams();
            }
            SpiritBlend one = blend(parts, BASIS);
            Collections.shuffle(parts, random);
            SpiritBlend other = blend(parts, BASIS);
            assertThat(other.strength().percent())
                    .as("seed %d", seed)
                    .isCloseTo(one.strength().percent(), within(1e-10));
            assertThat(one.mass().grams()).isCloseTo(mass, within(1e-9));
        }
    }

    @Test
    void theBlendIsTheSameLiquidAsByTheVolumeModel() {
        List<Part> parts = List.of(part(500, 40, BASIS), part(200, 96, BASIS));
        SpiritBlend blend = blend(parts, BASIS);
        var whole = Liquid.figures(parts.get(0).contents().plus(parts.get(1).contents()), Temperature.TWENTY_CELSIUS);
        assertThat(blend.strength().percent()).isCloseTo(whole.value(Figure.STRENGTH), within(1e-9));
        assertThat(blend.volume().millilitres()).isCloseTo(whole.value(Figure.VOLUME_20C), within(1e-9));
        assertThat(blend.contraction()).isCloseTo(700 - whole.value(Figure.VOLUME_20C), within(1e-9));
        assertThat(parts.get(0).contents().grams(Substance.ETHANOL)).isCloseTo(500 * 0.4 * 0.7892391, within(1e-3));
    }

    @Test
    void whatCannotBeReachedIsRefusedWithTheStrengths() {
        assertThatThrownBy(() -> SpiritBlend.toReach(
                        List.of(part(100, 30, BASIS)),
                        AlcoholByVolume.at20(40),
                        AlcoholByVolume.at20(50),
                        Workings.NONE))
                .hasMessage(
                        "what is there has 30.00 % vol and what is added 40.00 % vol; no amount of it gives 50.00 % vol");
        assertThatThrownBy(() -> SpiritBlend.toReach(
                        List.of(part(100, 30, BASIS)),
                        AlcoholByVolume.at20(40),
                        AlcoholByVolume.at20(40),
                        Workings.NONE))
                .hasMessageContaining("no amount of it");
        assertThatThrownBy(() -> blend(List.of(part(0, 30, BASIS)), BASIS)).hasMessageContaining("nothing to blend");
    }

    @Test
    void whatIsThereAlreadyNeedsNothing() {
        Part none = SpiritBlend.toReach(
                List.of(part(100, 30, BASIS)), AlcoholByVolume.at20(0), AlcoholByVolume.at20(30), Workings.NONE);
        assertThat(none.mass().grams()).isZero();
    }

    @Test
    void theStepsEndInTheAnswer() {
        Workings.Written written = new Workings.Written();
        SpiritBlend blend = SpiritBlend.of(List.of(part(500, 40, BASIS), part(200, 96, BASIS)), BASIS, written);
        assertThat(written.steps().get(0).value()).isCloseTo(700, within(1e-9));
        assertThat(written.steps().get(written.steps().size() - 1).value())
                .isEqualTo(blend.strength().percent());
    }
}
