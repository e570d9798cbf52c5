package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.quantity.Temperature;

/** Laws that hold for any liquid, on seeded random ones; the seed stands in the failure. */
@Tag("property")
class LiquidLawsTest {
    private static final List<Substance> FOUR_WITHOUT_SUCROSE =
            List.of(Substance.GLUCOSE, Substance.GLYCEROL, Substance.CITRIC, Substance.MALTOSE);

    private static Contents random(Random random) {
        Contents contents = Contents.of(Substance.ETHANOL, 1 + 400 * random.nextDouble())
                .with(Substance.WATER, 200 + 700 * random.nextDouble());
        for (Substance substance : Substance.values()) {
            if (substance.ordinal() > Substance.WATER.ordinal() && random.nextInt(4) == 0) {
                contents = contents.with(substance, 60 * random.nextDouble());
            }
        }
        return contents;
    }

    private static Contents four(Random random) {
        Contents contents = Contents.of(Substance.ETHANOL, 1 + 300 * random.nextDouble())
                .with(Substance.WATER, 300 + 500 * random.nextDouble());
        for (Substance substance : FOUR_WITHOUT_SUCROSE) {
            contents = contents.with(substance, 1 + 100 * random.nextDouble());
        }
        return contents;
    }

    private static double mass(Contents contents, double celsius) {
        Figures figures = Liquid.figures(contents, new Temperature(celsius));
        return figures.value(Figure.DENSITY) * figures.value(Figure.VOLUME) / 1000;
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 20, 31})
    void massIsConservedAndOrderIrrelevant(double celsius) {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Contents a = random(random);
            Contents b = four(random);
            Contents c = random(random);
            Contents together = a.plus(b).plus(c);
            assertThat(mass(together, celsius))
                    .as("seed %d", seed)
                    .isCloseTo(a.total() + b.total() + c.total(), within(1e-9 * together.total()));
            Figures one = Liquid.figures(together, new Temperature(celsius));
            Figures other = Liquid.figures(c.plus(a.plus(b)), new Temperature(celsius));
            one.all()
                    .forEach((figure, estimate) -> assertThat(other.value(figure))
                            .as(figure.key())
                            .isCloseTo(estimate.value(), within(1e-9 * (1 + Math.abs(estimate.value())))));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 20})
    void twiceTheLiquidIsTheSameLiquid(double celsius) {
        for (int seed = 0; seed < 60; seed++) {
            Contents contents = four(new Random(seed));
            Figures once = Liquid.figures(contents, new Temperature(celsius));
            Figures twice = Liquid.figures(contents.times(2), new Temperature(celsius));
            for (Figure figure : once.all().keySet()) {
                boolean grows = figure == Figure.MASS || figure == Figure.VOLUME || figure == Figure.VOLUME_20C;
                double wanted = once.value(figure) * (grows ? 2 : 1);
                assertThat(twice.value(figure))
                        .as("seed %d, %s", seed, figure.key())
                        .isCloseTo(wanted, within(1e-9 * (1 + Math.abs(wanted))));
                assertThat(twice.doubt(figure))
                        .as("seed %d, doubt of %s", seed, figure.key())
                        .isCloseTo(once.doubt(figure) * (grows ? 2 : 1), within(1e-6 * (1 + Math.abs(wanted))));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 20})
    void waterLowersStrengthSugarAcidityAndRaisesTheFreezingPoint(double celsius) {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Contents contents = random.nextBoolean() ? random(random) : four(random);
            Contents more = contents.plus(Contents.of(Substance.WATER, 50));
            Figures before = Liquid.figures(contents, new Temperature(celsius));
            Figures after = Liquid.figures(more, new Temperature(celsius));
            for (Figure figure :
                    List.of(Figure.STRENGTH, Figure.STRENGTH_BY_MASS, Figure.PROOF_US, Figure.STRENGTH_15C)) {
                assertThat(after.value(figure))
                        .as("seed %d, %s", seed, figure.key())
                        .isLessThan(before.value(figure));
            }
            assertThat(after.value(Figure.SUGAR)).as("seed %d", seed).isLessThanOrEqualTo(before.value(Figure.SUGAR));
            assertThat(after.value(Figure.ACIDITY))
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(before.value(Figure.ACIDITY));
            assertThat(after.value(Figure.VOLUME)).as("seed %d", seed).isGreaterThan(before.value(Figure.VOLUME));
            assertThat(after.value(Figure.FREEZING_POINT))
                    .as("seed %d", seed)
                    .isGreaterThanOrEqualTo(before.value(Figure.FREEZING_POINT));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, 0, 5, 20, 40})
    void nothingLeavesItsRange(double celsius) {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Figures figures =
                    Liquid.figures(random.nextBoolean() ? random(random) : four(random), new Temperature(celsius));
            figures.all().forEach((figure, estimate) -> {
                assertThat(estimate.value()).as(figure.key()).isFinite();
                assertThat(estimate.doubt()).as(figure.key()).isNotNegative().isFinite();
            });
            assertThat(figures.value(Figure.STRENGTH)).as("seed %d", seed).isBetween(0.0, 100.0);
            assertThat(figures.value(Figure.DENSITY)).as("seed %d", seed).isBetween(770.0, 1600.0);
            assertThat(figures.value(Figure.REFRACTIVE_INDEX))
                    .as("seed %d", seed)
                    .isBetween(1.33, 1.56);
            assertThat(figures.value(Figure.FREEZING_POINT)).as("seed %d", seed).isNotPositive();
        }
    }
}
