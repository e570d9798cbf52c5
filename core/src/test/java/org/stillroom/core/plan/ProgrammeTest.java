package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;

/** The linear programme against two general libraries: ojAlgo 56.0.0 and Hipparchus 4.0.2. */
class ProgrammeTest {
    private static final int CASES = 200;

    /** A random programme that has an answer: the right sides come from amounts of zero or more. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Case(double[][] equations, double[] cost) {
        static Case of(long seed) {
            Random random = new Random(seed);
            int unknowns = 3 + random.nextInt(8);
            int rows = 1 + random.nextInt(Math.min(4, unknowns - 1));
            double[][] equations = new double[rows][unknowns + 1];
            for (double[] row : equations) {
                for (int j = 0; j < unknowns; j++) {
                    row[j] = random.nextInt(3) == 0 ? 0 : 2 * random.nextDouble() - 0.5;
                }
            }
            for (int j = 0; j < unknowns; j++) {
                double amount = random.nextBoolean() ? 5 * random.nextDouble() : 0;
                for (double[] row : equations) {
                    row[unknowns] += row[j] * amount;
                }
            }
            double[] cost = new double[unknowns];
            Arrays.setAll(cost, j -> 0.1 + random.nextDouble());
            return new Case(equations, cost);
        }

        int unknowns() {
            return cost.length;
        }

        double least() {
            boolean[] all = new boolean[unknowns()];
            Arrays.fill(all, true);
            Programme programme = new Programme(equations, new double[][] {cost}, all);
            double[] answer = programme.solve();
            assertThat(programme.unfulfilled()).isCloseTo(0, within(1e-9));
            return dot(answer, cost);
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    @Test
    @Tag("published")
    void theLeastCostIsThatOfHipparchus() {
        for (long seed = 0; seed < CASES; seed++) {
            Case each = Case.of(seed);
            List<LinearConstraint> constraints = new ArrayList<>();
            for (double[] row : each.equations()) {
                constraints.add(new LinearConstraint(
                        Arrays.copyOf(row, each.unknowns()), Relationship.EQ, row[each.unknowns()]));
            }
            double least = new SimplexSolver()
                    .optimize(
                            new LinearObjectiveFunction(each.cost(), 0),
                            new LinearConstraintSet(constraints),
                            new NonNegativeConstraint(true),
                            GoalType.MINIMIZE)
                    .getValue();
            assertThat(each.least()).as("seed %d", seed).isCloseTo(least, within(1e-6 * (1 + least)));
        }
    }

    @Test
    @Tag("published")
    void theLeastCostIsThatOfOjAlgo() {
        for (long seed = 0; seed < CASES; seed++) {
            Case each = Case.of(seed);
            ExpressionsBasedModel model = new ExpressionsBasedModel();
            for (int j = 0; j < each.unknowns(); j++) {
                model.newVariable("x" + j).lower(0).weight(each.cost()[j]);
            }
            int number = 0;
            for (double[] row : each.equations()) {
                Expression expression = model.newExpression("row" + number++).level(row[each.unknowns()]);
                for (int j = 0; j < each.unknowns(); j++) {
                    expression.set(j, row[j]);
                }
            }
            Optimisation.Result result = model.minimise();
            assertThat(result.getState().isOptimal()).as("seed %d", seed).isTrue();
            assertThat(each.least())
                    .as("seed %d", seed)
                    .isCloseTo(result.getValue(), within(1e-6 * (1 + result.getValue())));
        }
    }

    @Test
    @Tag("property")
    void anEarlierWishIsNotGivenUpForALaterOne() {
        for (long seed = 0; seed < CASES; seed++) {
            Case each = Case.of(seed);
            boolean[] all = new boolean[each.unknowns()];
            Arrays.fill(all, true);
            double[] opposite = new double[each.unknowns()];
            Arrays.setAll(opposite, j -> 1 / each.cost()[j]);
            double[] answer = new Programme(each.equations(), new double[][] {each.cost(), opposite}, all).solve();
            assertThat(dot(answer, each.cost())).as("seed %d", seed).isCloseTo(each.least(), within(1e-8));
        }
    }

    private static Programme two(double[][] equations, double[]... wishes) {
        boolean[] all = new boolean[equations[0].length - 1];
        Arrays.fill(all, true);
        return new Programme(equations, wishes, all);
    }

    @Test
    void theCheaperOfTwoIsTakenAndItAloneIsRestedOn() {
        Programme programme = two(new double[][] {{1, 2, 6}}, new double[] {1, 3});
        assertThat(programme.solve()).containsExactly(6, 0);
        assertThat(programme.support()).containsExactly(true, false);
        assertThat(programme.unfulfilled()).isZero();
    }

    @Test
    void aLaterWishDecidesWhereTheEarlierDoesNotCare() {
        double[][] equation = {{1, 1, 6}};
        assertThat(two(equation, new double[] {1, 1}, new double[] {1, 0}).solve())
                .containsExactly(0, 6);
        assertThat(two(equation, new double[] {1, 1}, new double[] {0, 1}).solve())
                .containsExactly(6, 0);
    }

    @Test
    void aWishThatEarlierOnesForbidIsLeft() {
        assertThat(two(new double[][] {{1, 1, 6}}, new double[] {1, 2}, new double[] {1, 0})
                        .solve())
                .containsExactly(6, 0);
    }

    @Test
    void whatIsNotAllowedStaysZero() {
        Programme programme =
                new Programme(new double[][] {{1, 2, 6}}, new double[][] {{1, 3}}, new boolean[] {false, true});
        assertThat(programme.solve()).containsExactly(0, 3);
        assertThat(programme.support()).containsExactly(false, true);
    }

    @Test
    void equationsAtOddsAreMissedByAsLittleAsCanBe() {
        // x = 2 and x = 5: each row scaled to a largest coefficient of one, they lie 3 apart
        Programme programme = two(new double[][] {{1, 2}, {2, 10}}, new double[] {1});
        programme.solve();
        assertThat(programme.unfulfilled()).isCloseTo(3, within(1e-12));
    }

    @Test
    void aNegativeRightSideIsTurnedRound() {
        assertThat(two(new double[][] {{-2, -6}}, new double[] {1}).solve()).containsExactly(3);
        Programme cannot = two(new double[][] {{2, -6}}, new double[] {1});
        assertThat(cannot.solve()).containsExactly(0);
        assertThat(cannot.unfulfilled()).isCloseTo(3, within(1e-12));
    }

    @Test
    void anEquationOfNothingIsMissedByAllOfIt() {
        Programme programme = two(new double[][] {{0, 0, 4}, {1, 1, 2}}, new double[] {1, 2});
        assertThat(programme.solve()).containsExactly(2, 0);
        assertThat(programme.unfulfilled()).isCloseTo(4, within(1e-12));
    }

    @Test
    void aWishWithoutALeastValueIsAnError() {
        Programme programme = two(new double[][] {{1, -1, 2}}, new double[] {-1, 0});
        assertThatThrownBy(programme::solve)
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("wish 1 has no least value");
    }

    /** E. M. L. Beale's example of 1955, on which the steepest rule alone goes round for ever; least value −1/20 (from memory). */
    @Test
    @Tag("published")
    void bealesCycleComesToAnEnd() {
        double[][] equations = {
            {0.25, -60, -0.04, 9, 1, 0, 0, 0},
            {0.5, -90, -0.02, 3, 0, 1, 0, 0},
            {0, 0, 1, 0, 0, 0, 1, 1}
        };
        double[] cost = {-0.75, 150, -0.02, 6, 0, 0, 0};
        assertThat(dot(two(equations, cost).solve(), cost)).isCloseTo(-0.05, within(1e-12));
    }
}
