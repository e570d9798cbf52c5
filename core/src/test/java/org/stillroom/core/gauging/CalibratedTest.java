package org.stillroom.core.gauging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.gauging.Calibrated.Known;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;

/** A maker's own instruments against water and against what is known. */
class CalibratedTest {
    private static final Temperature TWENTY = Temperature.TWENTY_CELSIUS;

    /**
     * Source: 27 CFR 30.41, a pound of water at 60 °F in air is 0.120074 wine gallons; a wine gallon is 231 cubic inches = 3785.411784 mL. The
     * vessel is taken to have its volume at 60 °F; at 20 °C its glass has 25e-6 · 4.44 more. Tolerance: the last printed digit, 4e-6, and
     * 2e-5 for the density of the air, which the rule does not name.
     */
    @Test
    @Tag("published")
    void aGallonWeighedWithWaterIsAGallon() {
        double grams = 453.59237 / 0.120074;
        Calibrated gallon =
                Calibrated.flask(new Mass(0.0), List.of(new Mass(grams)), 0.05, VolumeBasis.AT_60F.temperature());
        double glass = 1.0 + 25e-6 * (20.0 - VolumeBasis.AT_60F.temperature().celsius());
        assertThat(gallon.value()).isCloseTo(3785.411784 * glass, within(3785.4 * 2.4e-5));
    }

    /**
     * Source: ISO 4787:2010, factors for the weight of water in air at 1013 hPa on soda-lime glass, from memory: 20 °C 1.0029 mL/g, 25 °C
     * 1.0039, 15 °C 1.0021. Tolerance: a last digit.
     */
    @ParameterizedTest
    @CsvSource({"15, 1.0021", "20, 1.0029", "25, 1.0039"})
    @Tag("published")
    void aGramOfWaterFillsWhatTheStandardSays(double celsius, double millilitres) {
        Calibrated flask =
                Calibrated.flask(new Mass(31.2), List.of(new Mass(31.2 + 50.0)), 0.05, new Temperature(celsius));
        assertThat(flask.value() / 50.0).isCloseTo(millilitres, within(1.0e-4));
    }

    @Test
    void anInstrumentThatIsRightHasNoOffset() {
        double gravity = Reading.foreseen(Shown.GRAVITY, Known.WATER.liquid(), new Temperature(25.0), 1.0)
                .value();
        Calibrated right = Calibrated.in(Known.WATER, Shown.GRAVITY, List.of(gravity), 0.001, new Temperature(25.0));
        assertThat(right.value()).isCloseTo(0.0, within(1e-12));
        assertThat(right.tellsAnOffset()).isFalse();
        Calibrated off =
                Calibrated.in(Known.WATER, Shown.GRAVITY, List.of(gravity + 0.004), 0.001, new Temperature(25.0));
        assertThat(off.value()).isCloseTo(0.004, within(1e-12));
        assertThat(off.tellsAnOffset()).isTrue();
    }

    @Test
    void sugarWeighedIntoWaterAndSpiritsAreKnownToo() {
        Calibrated brix = Calibrated.in(Known.syrup(new Brix(10.0)), Shown.REFRACTOMETER, List.of(10.3), 0.1, TWENTY);
        assertThat(brix.value()).isCloseTo(0.3, within(0.05)); // the sum of refractions, beside the scale's own table
        assertThat(brix.halfWidth())
                .isBetween(0.14, 0.16); // half a mark, the scale that weighed the sugar, half a degree
        Calibrated stem =
                Calibrated.in(Known.spirit(AlcoholByVolume.at20(40.0)), Shown.SPIRIT_20C, List.of(41.0), 0.25, TWENTY);
        assertThat(stem.value()).isCloseTo(1.0, within(1e-6));
        assertThat(stem.halfWidth()).isBetween(0.4, 0.5);
    }

    @Test
    void readingsThatDifferWidenIt() {
        Calibrated near = Calibrated.thermometer(new Temperature(0.0), 0.1, List.of(0.6, 0.6), 0.25);
        Calibrated wide = Calibrated.thermometer(new Temperature(0.0), 0.1, List.of(0.1, 1.1), 0.25);
        assertThat(near.value()).isCloseTo(wide.value(), within(1e-12));
        assertThat(near.halfWidth()).isCloseTo(Math.hypot(0.25, 0.1), within(1e-12));
        assertThat(wide.halfWidth()).isCloseTo(Math.hypot(0.5, 0.1), within(1e-12));
        assertThatThrownBy(() -> new Calibrated(0.1, 0.0)).isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * Flasks of known volume, weighed on a scale of 0.1 g that rounds, at a temperature read wrong by up to half a degree: what is told holds
     * the truth within its central 90 % in 85 to 95 %.
     */
    @Test
    @Tag("property")
    void whatIsToldOfAFlaskHoldsTheTruth() {
        long seed = 20261126;
        Random random = new Random(seed);
        int held = 0;
        int tries = 4000;
        for (int i = 0; i < tries; i++) {
            double truth = 49.0 + 2.0 * random.nextDouble();
            double celsius = 15.0 + 10.0 * random.nextDouble();
            double gramsPerMillilitre = 50.0
                    / Calibrated.flask(new Mass(0.0), List.of(new Mass(50.0)), 0.05, new Temperature(celsius))
                            .value();
            double empty = 30.0 + random.nextDouble();
            double full = empty + truth * gramsPerMillilitre;
            double read = celsius + random.nextDouble() - 0.5;
            Calibrated told = Calibrated.flask(rounded(empty), List.of(rounded(full)), 0.05, new Temperature(read));
            held += Math.abs(told.value() - truth) <= told.doubt() ? 1 : 0;
        }
        assertThat(held / (double) tries).as("seed %d", seed).isBetween(0.85, 0.95);
    }

    private static Mass rounded(double grams) {
        return new Mass(Math.rint(10.0 * grams) / 10.0);
    }
}
