package org.stillroom.core.plan;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Substance;

/**
 * Finds the amounts of a {@link Problem}.
 *
 * <p>All balances are linear in the grams and the volume; only the volume itself is not. Since it grows in proportion with the
 * grams, it is exactly the sum of the grams times their partial volumes, and with those held it is linear as well: one small
 * linear programme. Working out the partial volumes anew where that programme lands, and repeating, is Newton's method for the
 * one nonlinear equation.
 */
final class Solver {
    /** A mixture in the middle of the triangle to take the first partial volumes from, g in the order of the substances. */
    private static final double[] FIRST_GUESS = firstGuess();

    private static final int ROUNDS_BEFORE_KEEPING = 12;
    private static final int MOST_ROUNDS = 60;

    private Solver() {}

    /**
     * Returns the amounts that fulfil the problem best. A range is aimed at its middle where that can be reached and no aim is named
     * that would rather have its end.
     *
     * @throws ArithmeticException when the volume does not settle, or the programme has no answer
     */
    static Solution best(Problem problem, boolean withoutAim) {
        if (withoutAim && problem.asksForARange()) {
            Solution middle = solveOrNull(problem.aimingAtTheMiddle());
            if (middle != null && middle.reached()) {
                return middle;
            }
        }
        return solve(problem);
    }

    private static @Nullable Solution solveOrNull(Problem problem) {
        try {
            return solve(problem);
        } catch (ArithmeticException doesNotSettle) {
            return null;
        }
    }

    /** Returns the amounts that fulfil the problem at the least cost, or that miss its figures least, taken together. */
    static Solution solve(Problem problem) {
        return solve(problem, List.of(Set.of(Asked.values())));
    }

    /**
     * Returns the amounts that miss the asked figures least, those named first before those named later.
     *
     * <p>Where two corners cost nearly the same the programme may swing between them for ever; then each of the two is kept by
     * itself, and the better one is the answer.
     *
     * @throws ArithmeticException when the volume does not settle, or the programme has no answer
     */
    static Solution solve(Problem problem, List<Set<Asked>> order) {
        Equations equations = new Equations(problem, order);
        Newton free = new Newton(equations, equations.everything(), FIRST_GUESS);
        if (free.settles(ROUNDS_BEFORE_KEEPING)) {
            return free.solution();
        }
        Newton one = free.keepingTo(free.support());
        Newton other = free.keepingTo(free.supportBefore());
        boolean oneSettles = one.settles(MOST_ROUNDS);
        boolean otherSettles = other.settles(MOST_ROUNDS);
        if (!oneSettles && !otherSettles) {
            throw new ArithmeticException("the plan does not settle: the volume still moves by " + one.off() + " mL");
        }
        return !otherSettles || (oneSettles && one.isNoWorseThan(other)) ? one.solution() : other.solution();
    }

    private static double[] firstGuess() {
        double[] grams = new double[Substance.COUNT];
        grams[Substance.ETHANOL.ordinal()] = 0.25;
        grams[Substance.WATER.ordinal()] = 0.60;
        grams[Substance.SUCROSE.ordinal()] = 0.15;
        return grams;
    }
}
