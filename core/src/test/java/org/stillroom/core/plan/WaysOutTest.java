package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.SugarBasis;

@Tag("property")
class WaysOutTest {
    private static final int INFEASIBLE_RECIPES = Integer.getInteger("stillroom.infeasible", 1000);
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    /** A random recipe in numbers: one or two spirits, crystals or syrup, acid, perhaps water, perhaps doses. */
    static final class RandomRecipe {
        final List<Problem.Line> lines = new ArrayList<>();
        final List<@Nullable DoubleFunction<double[]>> stronger = new ArrayList<>();
        final List<Double> strengths = new ArrayList<>();
        final Problem problem;

        RandomRecipe(long seed) {
            Random random = new Random(seed);
            int spirits = 1 + random.nextInt(2);
            for (int i = 0; i < spirits; i++) {
                double percent = 37.5 + 58.5 * random.nextDouble();
                double atHand = random.nextInt(3) == 0 ? 100 + 900 * random.nextDouble() : INFINITE;
                add(spirit(percent), 0, atHand, WaysOutTest::spirit, percent);
            }
            boolean syrup = random.nextBoolean();
            add(sweet(syrup ? 0.5 + 0.17 * random.nextDouble() : 1.0), 0, INFINITE, null, 0);
            if (random.nextInt(3) > 0) {
                add(only(Substance.WATER), 0, INFINITE, null, 0);
            }
            if (random.nextBoolean()) {
                add(only(Substance.CITRIC), 0, INFINITE, null, 0);
            }
            if (random.nextInt(3) == 0) {
                add(only(Substance.GLYCEROL), 0.02 * random.nextDouble(), 0, null, 0);
            }
            Map<Asked, Span> asked = new EnumMap<>(Asked.class);
            Map<Asked, double[]> weights = new EnumMap<>(Asked.class);
            for (Asked each : Asked.values()) {
                weights.put(each, each.weights(SugarBasis.AS_DISSOLVED));
            }
            asked.put(Asked.VOLUME, Span.exactly(200 + 3000 * random.nextDouble()));
            asked.put(Asked.STRENGTH, span(random, 10 + 50 * random.nextDouble(), 2));
            asked.put(Asked.SUGAR, span(random, 20 + 480 * random.nextDouble(), 30));
            if (random.nextBoolean()) {
                asked.put(Asked.ACIDITY, Span.exactly(8 * random.nextDouble()));
            }
            problem = new Problem(lines.toArray(new Problem.Line[0]), asked, weights);
        }

        private static Span span(Random random, double value, double width) {
            return random.nextInt(3) == 0 ? new Span(value, value + width * random.nextDouble()) : Span.exactly(value);
        }

        private void add(
                double[] perGram,
                double dose,
                double room,
                @Nullable DoubleFunction<double[]> atStrength,
                double strength) {
            lines.add(new Problem.Line(perGram, 0, dose, dose > 0 ? 0 : room, 0, 1));
            stronger.add(atStrength);
            strengths.add(strength);
        }
    }

    static double[] spirit(double percent) {
        MassFraction p = Strengths.massFraction(AlcoholByVolume.at20(percent));
        return Contents.of(Substance.ETHANOL, p.fraction())
                .with(Substance.WATER, 1 - p.fraction())
                .toGrams();
    }

    private static double[] sweet(double sugar) {
        return Contents.of(Substance.SUCROSE, sugar)
                .with(Substance.WATER, 1 - sugar)
                .toGrams();
    }

    private static double[] only(Substance substance) {
        return Contents.of(substance, 1).toGrams();
    }

    /** Applies a way out by so much of its step, 1 being all of it. */
    private static Problem applied(RandomRecipe recipe, WayOut way, double part) {
        Problem problem = recipe.problem;
        double to = way.from() + part * (way.to() - way.from());
        Problem.Line line = way.line() < 0 ? null : problem.lines()[way.line()];
        if (line == null) {
            Span span = Objects.requireNonNull(problem.asked().get(way.asked()));
            return problem.asking(way.asked(), to < way.from() ? new Span(to, span.high()) : new Span(span.low(), to));
        }
        return switch (way.kind()) {
            case TARGET -> throw new AssertionError();
            case STRENGTH_OF_INGREDIENT ->
                problem.withLine(
                        way.line(),
                        line.bringing(recipe.stronger.get(way.line()).apply(to)));
            case AT_HAND -> problem.withLine(way.line(), line.between(line.fixed(), to));
            case FIXED_AMOUNT ->
                problem.withLine(way.line(), line.between(Math.min(to, way.from()), Math.max(to, way.from())));
            case DOSE ->
                problem.withLine(way.line(), line.dosedBetween(Math.min(to, way.from()), Math.max(to, way.from())));
        };
    }

    @Test
    void eachWayOutIsEnoughAndOnePerCentLessIsNot() {
        int infeasible = 0;
        int ways = 0;
        for (long seed = 0; infeasible < INFEASIBLE_RECIPES; seed++) {
            RandomRecipe recipe = new RandomRecipe(seed);
            if (Solver.solve(recipe.problem).reached()) {
                continue;
            }
            infeasible++;
            for (WayOut way : new WaysOut(recipe.problem).find(recipe.stronger, recipe.strengths)) {
                ways++;
                assertThat(Solver.solve(applied(recipe, way, 1.0)).reached())
                        .as("seed %d: %s does", seed, way)
                        .isTrue();
                assertThat(Solver.solve(applied(recipe, way, 0.99)).reached())
                        .as("seed %d: 1 %% less than %s does not", seed, way)
                        .isFalse();
            }
        }
        assertThat(ways).isGreaterThan(INFEASIBLE_RECIPES);
    }

    @Test
    void plansThatReachTheirTargetDoSoToOneInABillion() {
        int feasible = 0;
        for (long seed = 0; feasible < 1000; seed++) {
            RandomRecipe recipe = new RandomRecipe(seed);
            Solution solution = Solver.solve(recipe.problem);
            if (!solution.reached()) {
                continue;
            }
            feasible++;
            double[] grams = new double[Substance.COUNT];
            for (int i = 0; i < solution.grams().length; i++) {
                assertThat(solution.grams()[i]).isGreaterThanOrEqualTo(0);
                for (int s = 0; s < grams.length; s++) {
                    grams[s] += solution.grams()[i] * recipe.problem.lines()[i].perGram()[s];
                }
            }
            double volume = org.stillroom.core.liquid.VolumeModel.atTwenty().millilitres(grams);
            for (Map.Entry<Asked, Span> each : recipe.problem.asked().entrySet()) {
                double figure =
                        each.getKey() == Asked.VOLUME ? volume : figure(recipe.problem, each.getKey(), grams) / volume;
                assertThat(figure)
                        .as("seed %d: %s", seed, each)
                        .isBetween(
                                each.getValue().low() * (1 - 1e-9),
                                each.getValue().high() * (1 + 1e-9));
            }
        }
    }

    private static double figure(Problem problem, Asked asked, double[] grams) {
        double[] weights = Objects.requireNonNull(problem.weights().get(asked));
        double sum = 0;
        for (int s = 0; s < grams.length; s++) {
            sum += grams[s] * weights[s];
        }
        return sum;
    }
}
