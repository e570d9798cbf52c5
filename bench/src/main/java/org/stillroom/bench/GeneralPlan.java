package org.stillroom.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;

/**
 * The recipe of {@link TwelveLines} planned by a general-purpose library: the same Newton rounds about the volume, the linear
 * programme of each round handed to the library.
 *
 * <p>It does less than the planner: no amounts as typed, no misses, no second wish, no findings. So it is a hard yardstick.
 */
final class GeneralPlan {
    /** A linear programme: unknowns of zero or more, equations with the right side last, and what is to be least. */
    interface Library {
        double[] least(double[] cost, double[][] equations);
    }

    private static final int FREE = 4;
    private static final int WATER_LINE = 3;
    private static final int V = FREE;
    private static final double CONVERGED = 1e-12;

    private final double[][] perGram;
    private final double[] planned;
    private final double[][] balances = new double[4][FREE + 2];
    private final double[] cost = new double[FREE + 1];

    /**
     * @param perGram grams of each substance in a gram of each line
     * @param planned grams of each line of the plan; those of the free lines are not looked at
     */
    GeneralPlan(double[][] perGram, double[] planned) {
        this.perGram = perGram;
        this.planned = planned;
        Arrays.fill(cost, 0, WATER_LINE, 1.0);
        balances[0][V] = 1.0;
        balances[0][FREE + 1] = TwelveLines.MILLILITRES;
        balance(balances[1], TwelveLines.STRENGTH, Figure.STRENGTH);
        balance(balances[2], TwelveLines.SUGAR, Figure.SUGAR);
        balance(balances[3], TwelveLines.ACIDITY, Figure.ACIDITY);
    }

    private enum Figure {
        STRENGTH,
        SUGAR,
        ACIDITY
    }

    /** Lays out "figure × V = value × V", the figure of a liquid times its volume being linear in its grams. */
    private void balance(double[] row, double value, Figure figure) {
        row[V] = -value;
        for (int i = 0; i < perGram.length; i++) {
            double weight = timesVolume(figure, perGram[i]);
            if (i < FREE) {
                row[i] = weight;
            } else {
                row[FREE + 1] -= weight * planned[i];
            }
        }
    }

    private static double timesVolume(Figure figure, double[] grams) {
        Essentials essentials = Essentials.of(grams);
        double each = switch (figure) {
            case STRENGTH -> essentials.strength();
            case SUGAR -> essentials.sugar();
            case ACIDITY -> essentials.acidity();
        };
        return each * essentials.millilitres();
    }

    /** Returns the grams of the free lines. */
    double[] solve(Library library) {
        double[] partial = new double[Substance.COUNT];
        VolumeModel.partialVolumes(
                Contents.of(Substance.ETHANOL, 250)
                        .with(Substance.WATER, 600)
                        .with(Substance.SUCROSE, 150)
                        .toGrams(),
                partial);
        for (int round = 0; round < 20; round++) {
            double[][] equations = Arrays.copyOf(balances, balances.length + 1);
            equations[balances.length] = volumeRow(partial);
            double[] answer = library.least(cost, equations);
            double volume = VolumeModel.partialVolumes(total(answer), partial);
            if (Math.abs(volume - answer[V]) <= CONVERGED * volume) {
                return Arrays.copyOf(answer, FREE);
            }
        }
        throw new IllegalStateException("the library's plan does not settle");
    }

    private double[] volumeRow(double[] partial) {
        double[] row = new double[FREE + 2];
        row[V] = 1.0;
        for (int i = 0; i < perGram.length; i++) {
            double perGramOfIt = 0.0;
            for (int s = 0; s < partial.length; s++) {
                perGramOfIt += partial[s] * perGram[i][s];
            }
            if (i < FREE) {
                row[i] = -perGramOfIt;
            } else {
                row[FREE + 1] += perGramOfIt * planned[i];
            }
        }
        return row;
    }

    private double[] total(double[] answer) {
        double[] total = new double[Substance.COUNT];
        for (int i = 0; i < perGram.length; i++) {
            double grams = i < FREE ? answer[i] : planned[i];
            for (int s = 0; s < total.length; s++) {
                total[s] += grams * perGram[i][s];
            }
        }
        return total;
    }

    static double[] byHipparchus(double[] cost, double[][] equations) {
        List<LinearConstraint> constraints = new ArrayList<>();
        for (double[] row : equations) {
            constraints.add(new LinearConstraint(Arrays.copyOf(row, cost.length), Relationship.EQ, row[cost.length]));
        }
        return new SimplexSolver()
                .optimize(
                        new LinearObjectiveFunction(cost, 0),
                        new LinearConstraintSet(constraints),
                        new NonNegativeConstraint(true),
                        GoalType.MINIMIZE)
                .getPoint();
    }

    static double[] byOjAlgo(double[] cost, double[][] equations) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        for (int j = 0; j < cost.length; j++) {
            model.newVariable("x" + j).lower(0).weight(cost[j]);
        }
        for (int i = 0; i < equations.length; i++) {
            Expression row = model.newExpression("row" + i).level(equations[i][cost.length]);
            for (int j = 0; j < cost.length; j++) {
                row.set(j, equations[i][j]);
            }
        }
        return model.minimise().toRawCopy1D();
    }
}
