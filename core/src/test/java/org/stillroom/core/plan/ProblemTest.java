package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.SugarBasis;

/** Recipes in numbers whose answers follow by hand: strengths in proportion, one volume asked for. */
class ProblemTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;
    private static final Offset<Double> CLOSE = within(1e-6);
    private static final double[] WATER = Contents.of(Substance.WATER, 1).toGrams();
    private static final double[] CITRIC = Contents.of(Substance.CITRIC, 1).toGrams();

    private static double[] spirit(double percent) {
        return WaysOutTest.spirit(percent);
    }

    private static double millilitresPerGram(double[] perGram) {
        return VolumeModel.atTwenty().millilitres(perGram);
    }

    private static Problem.Line free(double[] perGram, double cost) {
        return new Problem.Line(perGram, 0, 0, INFINITE, 0, cost);
    }

    private static Problem problem(Map<Asked, Span> asked, Problem.Line... lines) {
        Map<Asked, double[]> weights = new EnumMap<>(Asked.class);
        for (Asked each : Asked.values()) {
            weights.put(each, each.weights(SugarBasis.AS_DISSOLVED));
        }
        return new Problem(lines, asked, weights);
    }

    private static List<WayOut> ways(Problem problem) {
        List<@Nullable DoubleFunction<double[]>> none =
                new ArrayList<>(Collections.nCopies(problem.lines().length, null));
        return new WaysOut(problem).find(none, Collections.nCopies(problem.lines().length, 0.0));
    }

    private static WayOut way(Problem problem, WayOut.Kind kind) {
        List<WayOut> found =
                ways(problem).stream().filter(each -> each.kind() == kind).toList();
        assertThat(found).as("%s", ways(problem)).hasSize(1);
        return found.get(0);
    }

    @Test
    void aRangeFreeAtItsUpperEndIsMetAtTheLeastCost() {
        Problem problem = problem(
                Map.of(Asked.VOLUME, new Span(500, 5000), Asked.STRENGTH, Span.exactly(20)),
                free(spirit(40), 1),
                free(WATER, 0));
        Solution solution = Solver.solve(problem);
        assertThat(solution.reached()).isTrue();
        assertThat(solution.millilitres()).isCloseTo(500, CLOSE);
    }

    @Test
    void anAmountPerMillilitreMayBeTakenUpToItsMost() {
        Problem.Line acid = new Problem.Line(CITRIC, 0, 0.002, 0, 0.003, 1);
        for (double grams : new double[] {2, 3.5, 5}) {
            Solution solution = Solver.solve(problem(
                    Map.of(Asked.VOLUME, Span.exactly(1000), Asked.ACIDITY, Span.exactly(grams)),
                    free(WATER, 0),
                    acid));
            assertThat(solution.reached()).as("%s g/L", grams).isTrue();
            assertThat(solution.grams()[1]).isCloseTo(grams, CLOSE);
        }
        for (double grams : new double[] {1.9, 5.1}) {
            Solution solution = Solver.solve(problem(
                    Map.of(Asked.VOLUME, Span.exactly(1000), Asked.ACIDITY, Span.exactly(grams)),
                    free(WATER, 0),
                    acid));
            assertThat(solution.reached()).as("%s g/L", grams).isFalse();
            // 0.1 g/L away, as a part of what was asked
            assertThat(solution.missed()).isCloseTo(0.1 / grams, CLOSE);
        }
    }

    @Test
    void whatIsMissedCountsAsAPartOfWhatWasAsked() {
        Solution strength = Solver.solve(problem(
                Map.of(Asked.VOLUME, Span.exactly(1000), Asked.STRENGTH, Span.exactly(50)), free(spirit(40), 1)));
        assertThat(strength.missed()).isCloseTo(0.2, CLOSE);
        // below 1 % vol the miss counts as a part of 1 % vol
        Solution weak = Solver.solve(
                problem(Map.of(Asked.VOLUME, Span.exactly(1000), Asked.STRENGTH, Span.exactly(0.5)), free(WATER, 1)));
        assertThat(weak.missed()).isCloseTo(0.5, CLOSE);
    }

    @Test
    void theFigureNamedFirstIsMissedLeast() {
        Problem problem = problem(
                Map.of(Asked.VOLUME, Span.exactly(1000), Asked.STRENGTH, Span.exactly(20)),
                new Problem.Line(spirit(40), 300 / millilitresPerGram(spirit(40)), 0, 0, 0, 1),
                free(WATER, 1));
        Solution volume = Solver.solve(problem, List.of(Set.of(Asked.VOLUME), Set.of(Asked.STRENGTH)));
        assertThat(volume.millilitres()).isCloseTo(1000, CLOSE);
        Solution strength = Solver.solve(problem, List.of(Set.of(Asked.STRENGTH), Set.of(Asked.VOLUME)));
        assertThat(strength.millilitres()).isCloseTo(600, CLOSE);
    }

    @Test
    void fixedAndDosedLinesAreCountedIn() {
        double perGram = millilitresPerGram(spirit(40));
        Problem problem = problem(
                Map.of(Asked.VOLUME, Span.exactly(1000), Asked.STRENGTH, Span.exactly(30)),
                new Problem.Line(spirit(40), 250 / perGram, 0, 0, 0, 1),
                new Problem.Line(spirit(40), 0, 0.25 / perGram, 0, 0, 1),
                free(spirit(40), 1),
                free(WATER, 0));
        Solution solution = Solver.solve(problem);
        assertThat(solution.reached()).isTrue();
        for (int i = 0; i < 3; i++) {
            assertThat(solution.grams()[i] * perGram).isCloseTo(250, CLOSE);
        }
    }

    @Test
    void aDoseThatCostsLessVolumeCostsLess() {
        Problem problem = problem(
                Map.of(Asked.VOLUME, new Span(500, 900)), new Problem.Line(CITRIC, 0, 0.01, 0, 0, 5), free(WATER, 0));
        assertThat(Solver.solve(problem).millilitres()).isCloseTo(500, CLOSE);
        Problem paid = problem(
                Map.of(Asked.VOLUME, new Span(500, 900)), new Problem.Line(CITRIC, 0, 0.01, 0, 0, -5), free(WATER, 0));
        assertThat(Solver.solve(paid).millilitres()).isCloseTo(900, CLOSE);
    }

    @Test
    void ofAmountsThatCostTheSameTheFewestGramsAreTaken() {
        Problem problem = problem(
                Map.of(Asked.VOLUME, Span.exactly(1000), Asked.STRENGTH, new Span(20, 40)),
                free(spirit(40), 0),
                free(WATER, 0));
        // the strongest is the lightest
        assertThat(Solver.solve(problem).grams()[1]).isCloseTo(0, CLOSE);
    }

    @Test
    void theLeastWaysOutOfADoseAndAFixedAmount() {
        Map<Asked, Span> sour = Map.of(Asked.VOLUME, Span.exactly(1000), Asked.ACIDITY, Span.exactly(4));
        WayOut less = way(problem(sour, free(WATER, 1), new Problem.Line(CITRIC, 0, 0.005, 0, 0, 1)), WayOut.Kind.DOSE);
        assertThat(less.from()).isEqualTo(0.005);
        assertThat(less.to()).isCloseTo(0.004, within(1e-8)).isLessThan(0.004);
        assertThat(less.line()).isEqualTo(1);
        WayOut more = way(problem(sour, free(WATER, 1), new Problem.Line(CITRIC, 0, 0.001, 0, 0, 1)), WayOut.Kind.DOSE);
        assertThat(more.to()).isCloseTo(0.004, within(1e-8)).isGreaterThanOrEqualTo(0.004);
        WayOut fixedLess =
                way(problem(sour, free(WATER, 1), new Problem.Line(CITRIC, 5, 0, 0, 0, 1)), WayOut.Kind.FIXED_AMOUNT);
        assertThat(fixedLess.to()).isCloseTo(4, within(1e-5)).isLessThan(4);
        WayOut fixedMore =
                way(problem(sour, free(WATER, 1), new Problem.Line(CITRIC, 0.5, 0, 0, 0, 1)), WayOut.Kind.FIXED_AMOUNT);
        assertThat(fixedMore.to()).isCloseTo(4, within(1e-5)).isGreaterThanOrEqualTo(4);
    }

    @Test
    void theLeastToHaveAtHandMayBeFarMoreThanThereIs() {
        Map<Asked, Span> sour = Map.of(Asked.VOLUME, Span.exactly(1000), Asked.ACIDITY, Span.exactly(400));
        WayOut more = way(problem(sour, free(WATER, 1), new Problem.Line(CITRIC, 1, 0, 2, 0, 1)), WayOut.Kind.AT_HAND);
        assertThat(more.from()).isEqualTo(3);
        assertThat(more.to()).isCloseTo(400, within(1e-3)).isGreaterThan(400);
    }

    @Test
    void aTargetOfZeroIsWidenedUpwards() {
        Map<Asked, Span> dry = Map.of(Asked.VOLUME, Span.exactly(1000), Asked.ACIDITY, Span.exactly(0));
        WayOut up = way(problem(dry, free(WATER, 1), new Problem.Line(CITRIC, 0, 0.005, 0, 0, 1)), WayOut.Kind.TARGET);
        assertThat(up.asked()).isEqualTo(Asked.ACIDITY);
        assertThat(up.from()).isZero();
        assertThat(up.to()).isCloseTo(5, within(1e-4)).isGreaterThan(5);
    }

    @Test
    void whenOnlyTheVolumeIsInTheWayTheCompositionIsKept() {
        Problem problem = problem(
                Map.of(Asked.VOLUME, Span.exactly(1000), Asked.STRENGTH, Span.exactly(20)),
                new Problem.Line(spirit(40), 0, 0, 200 / millilitresPerGram(spirit(40)), 0, 1),
                free(WATER, 1));
        Solution nearest = new WaysOut(problem).nearest();
        assertThat(nearest.millilitres()).isCloseTo(400, CLOSE);
        Problem weak = problem(
                Map.of(Asked.VOLUME, Span.exactly(1000), Asked.STRENGTH, Span.exactly(50)), free(spirit(40), 1));
        assertThat(new WaysOut(weak).nearest().millilitres()).isCloseTo(1000, CLOSE);
        Problem open = problem(Map.of(Asked.STRENGTH, Span.exactly(50)), new Problem.Line(spirit(40), 100, 0, 0, 0, 1));
        assertThat(new WaysOut(open).nearest().grams()).containsExactly(100);
    }

    @Test
    void aRangeAndItsMiddle() {
        Problem problem = problem(
                Map.of(Asked.VOLUME, Span.exactly(1000), Asked.STRENGTH, new Span(20, 30)), free(spirit(40), 1));
        assertThat(problem.asksForARange()).isTrue();
        assertThat(problem.aimingAtTheMiddle().asksForARange()).isFalse();
        assertThat(problem.aimingAtTheMiddle().asked())
                .containsEntry(Asked.STRENGTH, Span.exactly(25))
                .containsEntry(Asked.VOLUME, Span.exactly(1000));
    }
}
