package org.stillroom.planner.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

class MatchingTest {
    /** The same problem put to a general library as a quadratic programme; its squares must not be less than ours. */
    @Test
    @Tag("property")
    void aGeneralLibraryFindsNothingNearer() {
        long seed = 4711L;
        Random random = new Random(seed);
        for (int run = 0; run < 200; run++) {
            int rows = 3 + random.nextInt(15);
            int count = 1 + random.nextInt(10);
            double[][] columns = new double[count][];
            for (int j = 0; j < count; j++) {
                columns[j] = random.doubles(rows, -0.5, 1.0)
                        .map(v -> Math.max(0.0, v))
                        .toArray();
            }
            double[] b =
                    random.doubles(rows, -0.3, 1.0).map(v -> Math.max(0.0, v)).toArray();
            double[] ours = NonNegative.leastSquares(columns, b);
            double[] theirs = byLibrary(columns, b, List.of());
            String where = "seed " + seed + ", run " + run;
            for (double each : ours) {
                assertThat(each).as(where).isGreaterThanOrEqualTo(0.0);
            }
            assertThat(squares(columns, b, ours)).as(where).isLessThanOrEqualTo(squares(columns, b, theirs) + 1e-9);
            assertThat(squares(columns, b, ours)).as(where).isCloseTo(squares(columns, b, theirs), within(1e-4));
        }
    }

    /** The same with bounds on sums: no bound is passed, and a general library finds nothing nearer within them. */
    @Test
    @Tag("property")
    void withinBoundsAGeneralLibraryFindsNothingNearer() {
        long seed = 815L;
        Random random = new Random(seed);
        int heldBack = 0;
        for (int run = 0; run < 300; run++) {
            int rows = 3 + random.nextInt(12);
            int count = 1 + random.nextInt(8);
            double[][] columns = new double[count][];
            for (int j = 0; j < count; j++) {
                columns[j] = random.doubles(rows, -0.5, 1.0)
                        .map(v -> Math.max(0.0, v))
                        .toArray();
            }
            double[] b =
                    random.doubles(rows, 0.0, 1.0).map(v -> Math.max(0.0, v)).toArray();
            List<Matching.Bound> bounds = new ArrayList<>();
            for (int k = random.nextInt(4); k >= 0; k--) {
                List<Double> perUnit = random.doubles(count, -0.4, 1.0)
                        .map(v -> Math.max(0.0, v))
                        .boxed()
                        .toList();
                bounds.add(new Matching.Bound(perUnit, 0.05 + random.nextDouble()));
            }
            double[] ours = Bounded.leastSquares(columns, b, bounds);
            double[] theirs = byLibrary(columns, b, bounds);
            String where = "seed " + seed + ", run " + run;
            for (Matching.Bound bound : bounds) {
                double sum = 0.0;
                for (int j = 0; j < count; j++) {
                    assertThat(ours[j]).as(where).isGreaterThanOrEqualTo(0.0);
                    sum += bound.perUnit().get(j) * ours[j];
                }
                assertThat(sum).as(where).isLessThanOrEqualTo(bound.most() * (1 + 1e-12));
            }
            assertThat(squares(columns, b, ours)).as(where).isLessThanOrEqualTo(squares(columns, b, theirs) + 1e-6);
            heldBack += squares(columns, b, ours) > squares(columns, b, NonNegative.leastSquares(columns, b)) + 1e-6
                    ? 1
                    : 0;
        }
        assertThat(heldBack).isGreaterThan(100);
    }

    @Test
    void aBoundOfNothingLeavesAnOilOut() {
        List<Matching.OnShelf> shelf = List.of(
                new Matching.OnShelf("one", Map.of("a", 1.0)), new Matching.OnShelf("two", Map.of("a", 0.5, "b", 0.5)));
        Matching matching =
                Matching.of(Map.of("a", 10.0), shelf, Map.of(), List.of(new Matching.Bound(List.of(1.0, 0.0), 0.0)));
        assertThat(matching.amounts().get(0)).isZero();
        assertThat(matching.amounts().get(1)).isCloseTo(10.0, within(1e-9)); // half of it is a, as much b comes besides
    }

    private static double[] byLibrary(double[][] columns, double[] b, List<Matching.Bound> bounds) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Expression squares = model.newExpression("squares").weight(1.0);
        Variable[] variables = new Variable[columns.length];
        for (int j = 0; j < columns.length; j++) {
            variables[j] = model.newVariable("x" + j).lower(0.0);
        }
        for (int j = 0; j < columns.length; j++) {
            squares.set(variables[j], -2.0 * NonNegative.dot(columns[j], b));
            for (int k = 0; k < columns.length; k++) {
                squares.set(variables[j], variables[k], NonNegative.dot(columns[j], columns[k]));
            }
        }
        for (Matching.Bound bound : bounds) {
            Expression sum =
                    model.newExpression("bound " + bounds.indexOf(bound)).upper(bound.most());
            for (int j = 0; j < columns.length; j++) {
                sum.set(variables[j], bound.perUnit().get(j));
            }
        }
        Optimisation.Result result = model.minimise();
        double[] x = new double[columns.length];
        for (int j = 0; j < x.length; j++) {
            x[j] = Math.max(0.0, result.doubleValue(j));
        }
        return x;
    }

    private static double squares(double[][] columns, double[] b, double[] x) {
        double[] off = b.clone();
        for (int j = 0; j < x.length; j++) {
            for (int i = 0; i < off.length; i++) {
                off[i] -= columns[j][i] * x[j];
            }
        }
        return NonNegative.dot(off, off);
    }

    @Test
    void whatIsOnTheShelfIsFoundAgain() {
        List<Matching.OnShelf> shelf = List.of(
                new Matching.OnShelf("one", Map.of("a", 0.9, "b", 0.1)),
                new Matching.OnShelf("two", Map.of("b", 0.5, "c", 0.5)),
                new Matching.OnShelf("three", Map.of("d", 1.0)));
        Matching matching = Matching.of(Map.of("a", 90.0, "b", 35.0, "c", 25.0), shelf, Map.of(), List.of());
        assertThat(matching.amounts().get(0)).isCloseTo(100.0, within(1e-9));
        assertThat(matching.amounts().get(1)).isCloseTo(50.0, within(1e-9));
        assertThat(matching.amounts().get(2)).isEqualTo(0.0);
        assertThat(matching.missed()).isCloseTo(0.0, within(1e-9));
    }

    @Test
    void whatNoOilHasIsMissed() {
        List<Matching.OnShelf> shelf = List.of(new Matching.OnShelf("one", Map.of("a", 1.0)));
        Matching matching = Matching.of(Map.of("a", 3.0, "z", 4.0), shelf, Map.of(), List.of());
        assertThat(matching.amounts()).containsExactly(3.0);
        assertThat(matching.missed()).isCloseTo(0.8, within(1e-9)); // 4 of the root of 9 and 16
        assertThat(matching.compared()).contains(new Matching.Compared("z", 4.0, 0.0));
        assertThat(Matching.of(Map.of("a", 3.0, "z", 4.0), shelf, Map.of("z", 0.0), List.of())
                        .missed())
                .isCloseTo(0.0, within(1e-9));
    }

    @Test
    void oilsThatAreAlikeDoNotUpsetIt() {
        double[][] columns = {{1, 0.5}, {1, 0.5 + 1e-9}, {1, 0.5}};
        double[] x = NonNegative.leastSquares(columns, new double[] {2, 1});
        assertThat(squares(columns, new double[] {2, 1}, x)).isLessThan(1e-12);
    }
}
