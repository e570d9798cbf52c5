package org.stillroom.core.clarity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Span;
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

    /** The spread of a thousand batches beside the first order that the answer tells of each doubt. */
    @Test
    @Tag("property")
    void whatTheDoubtComesFromAddsUpToTheSpread() {
        Map<String, Double> oils = Map.of("limonene", 0.4, "linalool", 0.3, "moon dust", 0.02);
        Doubts doubts = new Doubts(2.0, 0.2, Map.of("5989-27-5", new Span(0.7, 1.2)));
        Chances chances = of(oils, 30, doubts);
        double together = 0.0;
        for (Chances.From each : chances.from()) {
            together = Math.hypot(together, Math.log(each.factor()));
        }
        double spread = Math.log(chances.highLoad() / chances.lowLoad()) / 2 / 1.645;
        assertThat(together).isCloseTo(spread, within(0.06 * spread));
        assertThat(chances.from()).extracting(Chances.From::what).startsWith(DoubtFrom.SOLUBILITY);
        assertThat(chances.from()).hasSize(DoubtFrom.values().length);
    }

    @Test
    void aPublishedRangeTakesThePlaceOfOurEstimate() {
        Map<String, Double> oils = Map.of("limonene", 0.4, "linalool", 0.3);
        Doubts wide = new Doubts(0, 0, Map.of("5989-27-5", new Span(0.2, 2.0)));
        Doubts none = new Doubts(0, 0, Map.of("5989-27-5", Span.exactly(1), "78-70-6", Span.exactly(1)));
        double usual = width(of(oils, 30, Doubts.NONE));
        assertThat(width(of(oils, 30, wide))).isGreaterThan(1.1 * usual);
        assertThat(width(of(oils, 30, none))).isLessThan(usual);
        assertThat(of(oils, 30, none).from()).contains(new Chances.From(DoubtFrom.COMPOSITION, 1.0));
    }

    /** The group of figures that is computed with says 60 to 80 % or the like; the table of materials holds the digits. */
    @Test
    void rangesOfAnOilAreThoseOfOneGroupOfFigures() {
        EssentialOil lemon = Objects.requireNonNull(EssentialOils.find("lemon"));
        Material.Analysis group = Objects.requireNonNull(
                Objects.requireNonNull(Materials.find("lemon")).analysis());
        CompositionDoubt doubt = new CompositionDoubt();
        doubt.add(lemon, 2.0);
        Material.Range limonene = Objects.requireNonNull(group.percent().get("5989-27-5"));
        double typical = Objects.requireNonNull(lemon.shares().get("5989-27-5"));
        Span span = Objects.requireNonNull(doubt.spans().get("5989-27-5"));
        assertThat(span.low()).isCloseTo(Math.min(typical, limonene.low() / 100) / typical, within(1e-12));
        assertThat(span.high()).isCloseTo(Math.max(typical, limonene.high() / 100) / typical, within(1e-12));
        assertThat(doubt.from())
                .singleElement()
                .asString()
                .contains("lemon", group.group(), group.standing().label());
    }

    @Test
    void aConstituentThatWasWeighedIsNotInDoubt() {
        CompositionDoubt doubt = new CompositionDoubt();
        doubt.add("limonene", 1.0);
        assertThat(doubt.spans()).containsExactly(Map.entry("5989-27-5", Span.exactly(1.0)));
        assertThat(doubt.from()).isEmpty();
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
        assertThat(width(of(oils, 30, new Doubts(4.0, 0.0, Map.of())))).isGreaterThan(1.02 * width);
        assertThat(width(of(oils, 30, new Doubts(0.0, 0.4, Map.of())))).isGreaterThan(1.02 * width);
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
