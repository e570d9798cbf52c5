package org.stillroom.core.clarity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;

class ChancesTest {
    private static Chances of(Map<String, Double> oils, double percent, Doubts doubts) {
        return Chances.of(
                Oils.of(oils),
                Medium.of(AlcoholByVolume.at20(percent), new MassConcentration(0), new Temperature(25)),
                doubts);
    }

    /** Of a single constituent only the solubility is in doubt: the load is log-normal, and the normal distribution tells the rest. */
    @Test
    void ofOneConstituentTheChancesAreThoseOfTheNormalDistribution() {
        Chances chances = of(Map.of("limonene", 1.0), 40, Doubts.NONE);
        double load = 1.136;
        double clear = normal((Math.log(0.7) - Math.log(load)) / Math.log(1.6));
        double cloudy = normal((Math.log(load) - Math.log(1.5)) / Math.log(1.6));
        assertThat(chances.clear()).isCloseTo(clear, within(0.03));
        assertThat(chances.cloudy()).isCloseTo(cloudy, within(0.03));
        assertThat(chances.clear() + chances.hazy() + chances.cloudy()).isCloseTo(1.0, within(1e-12));
        assertThat(chances.lowLoad()).isCloseTo(load / Math.pow(1.6, 1.645), within(0.04));
        assertThat(chances.highLoad()).isCloseTo(load * Math.pow(1.6, 1.645), within(0.15));
    }

    /** Abramowitz, Stegun: Handbook of Mathematical Functions, 26.2.17 (from memory), good to 1e-7. */
    private static double normal(double z) {
        double t = 1 / (1 + 0.2316419 * Math.abs(z));
        double tail = Math.exp(-z * z / 2)
                / Math.sqrt(2 * Math.PI)
                * t
                * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z > 0 ? 1 - tail : tail;
    }

    @Test
    void theSameLiquidGetsTheSameChances() {
        Map<String, Double> oils = Map.of("limonene", 0.4, "linalool", 0.3);
        assertThat(of(oils, 30, Doubts.NONE)).isEqualTo(of(oils, 30, Doubts.NONE));
    }

    @Test
    @Tag("property")
    void whateverElseIsInDoubtWidensTheLoad() {
        Map<String, Double> oils = Map.of("limonene", 0.4, "linalool", 0.3);
        Map<String, Double> guessed = Map.of("moon dust", 0.4, "linalool", 0.3);
        double width = width(of(oils, 30, Doubts.NONE));
        assertThat(width(of(oils, 30, new Doubts(4.0, 0.0)))).isGreaterThan(1.02 * width);
        assertThat(width(of(oils, 30, new Doubts(0.0, 0.4)))).isGreaterThan(1.02 * width);
        assertThat(width(of(guessed, 30, Doubts.NONE))).isGreaterThan(1.5 * width);
    }

    private static double width(Chances chances) {
        return Math.log(chances.highLoad() / chances.lowLoad());
    }

    @Test
    void whereNothingIsLeftItIsClear() {
        Oils none = Oils.of(Map.of("limonene", 1.0)).without(part -> true);
        Medium medium = Medium.of(AlcoholByVolume.at20(20), new MassConcentration(0), new Temperature(20));
        Clarity clarity = Clarity.of(none, medium, Doubts.NONE);
        assertThat(clarity.chances().clear()).isEqualTo(1.0);
        assertThat(clarity.chances().highLoad()).isZero();
        assertThat(clarity.separated()).isZero();
    }

    @Test
    void aTraceOfOilIsClearWhateverItsLoad() {
        assertThat(of(Map.of("valencene", 0.0015), 5, Doubts.NONE).clear()).isEqualTo(1.0);
    }
}
