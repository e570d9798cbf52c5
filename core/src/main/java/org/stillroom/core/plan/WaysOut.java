package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Span;

/**
 * Finds the nearest that can be reached when a target cannot, and each single change that would make it reachable.
 *
 * <p>Widening a range, a limit or an amount only ever adds possibilities, so that the least change is found by halving between
 * what does not do and what does.
 */
final class WaysOut {
    private static final double PRECISION = 1e-7;
    /** A way out goes this part of itself past the edge, so that rounding does not leave it short. */
    static final double MARGIN = 1e-6;

    private static final int MOST_HALVINGS = 80;
    /** A way out that leaves less than this part of what was asked is none. */
    private static final double NOTHING_LEFT = 1e-3;

    private static final Set<Asked> COMPOSITION = EnumSet.of(Asked.STRENGTH, Asked.SUGAR, Asked.ACIDITY);

    private final Problem problem;

    WaysOut(Problem problem) {
        this.problem = problem;
    }

    /**
     * Returns the nearest to the target: the composition asked for at another volume where only the volume is in the way, else the
     * nearest composition at the volume asked for.
     */
    Solution nearest() {
        Span volume = problem.asked().get(Asked.VOLUME);
        if (volume == null) {
            return Solver.solve(problem);
        }
        Solution otherVolume = Solver.solve(problem, List.of(COMPOSITION, Set.of(Asked.VOLUME)));
        boolean somethingLeft = otherVolume.millilitres() > NOTHING_LEFT * volume.low();
        boolean onTarget = reachable(problem.asking(Asked.VOLUME, around(otherVolume.millilitres())));
        if (somethingLeft && onTarget) {
            return otherVolume;
        }
        return nearestKeepingVolume();
    }

    /** Returns the nearest composition at the volume asked for, or at the nearest to it. */
    Solution nearestKeepingVolume() {
        return Solver.solve(problem, List.of(Set.of(Asked.VOLUME), COMPOSITION));
    }

    private static Span around(double value) {
        return new Span(value * (1 - 1e-9), value * (1 + 1e-9));
    }

    /**
     * Returns the single changes that make the target reachable, targets first.
     *
     * @param stronger for each line what a gram of it brings at another strength, % vol at 20 °C; null where it has none
     * @param strengths the strength of each line as it stands; of no meaning where {@code stronger} is null
     */
    List<WayOut> find(List<@Nullable DoubleFunction<double[]>> stronger, List<Double> strengths) {
        List<WayOut> found = new ArrayList<>();
        for (Map.Entry<Asked, Span> each : problem.asked().entrySet()) {
            found.addAll(ofTarget(each.getKey(), each.getValue()));
        }
        for (int i = 0; i < problem.lines().length; i++) {
            DoubleFunction<double[]> atStrength = stronger.get(i);
            if (atStrength != null) {
                add(found, ofStrength(i, strengths.get(i), atStrength));
            }
            found.addAll(ofLine(i, problem.lines()[i]));
        }
        return found;
    }

    private List<WayOut> ofTarget(Asked what, Span span) {
        List<WayOut> found = new ArrayList<>();
        double low = span.low();
        if (low > 0.0) {
            Double to = least(low, 0.0, value -> reachable(problem.asking(what, new Span(value, span.high()))));
            if (to != null && to > NOTHING_LEFT * low) {
                found.add(new WayOut(WayOut.Kind.TARGET, -1, what, low, to));
            }
        }
        Double up =
                upwards(span.high(), most(what), value -> reachable(problem.asking(what, new Span(span.low(), value))));
        if (up != null) {
            found.add(new WayOut(WayOut.Kind.TARGET, -1, what, span.high(), up));
        }
        return found;
    }

    private static double most(Asked what) {
        return switch (what) {
            case VOLUME -> 1e9;
            case STRENGTH -> 100.0;
            case SUGAR -> 1600.0;
            case ACIDITY -> 1600.0;
        };
    }

    private @Nullable WayOut ofStrength(int line, double from, DoubleFunction<double[]> atStrength) {
        Problem.Line as = problem.lines()[line];
        Double to = least(
                from, 100.0, strength -> reachable(problem.withLine(line, as.bringing(atStrength.apply(strength)))));
        return to == null ? null : new WayOut(WayOut.Kind.STRENGTH_OF_INGREDIENT, line, Asked.VOLUME, from, to);
    }

    private List<WayOut> ofLine(int index, Problem.Line line) {
        List<WayOut> found = new ArrayList<>();
        if (line.canVary()) {
            double most = line.fixed() + line.room();
            if (most < Double.POSITIVE_INFINITY) {
                Double to = upwards(
                        most, 1e9, value -> reachable(problem.withLine(index, line.between(line.fixed(), value))));
                add(found, to == null ? null : new WayOut(WayOut.Kind.AT_HAND, index, Asked.VOLUME, most, to));
            }
        } else if (line.dose() > 0.0) {
            double dose = line.dose();
            Double less = least(dose, 0.0, value -> reachable(problem.withLine(index, line.dosedBetween(value, dose))));
            add(found, less == null ? null : new WayOut(WayOut.Kind.DOSE, index, Asked.VOLUME, dose, less));
            Double more =
                    upwards(dose, 1.0, value -> reachable(problem.withLine(index, line.dosedBetween(dose, value))));
            add(found, more == null ? null : new WayOut(WayOut.Kind.DOSE, index, Asked.VOLUME, dose, more));
        } else if (line.fixed() > 0.0) {
            double fixed = line.fixed();
            Double less = least(fixed, 0.0, value -> reachable(problem.withLine(index, line.between(value, fixed))));
            add(found, less == null ? null : new WayOut(WayOut.Kind.FIXED_AMOUNT, index, Asked.VOLUME, fixed, less));
            Double more = upwards(fixed, 1e9, value -> reachable(problem.withLine(index, line.between(fixed, value))));
            add(found, more == null ? null : new WayOut(WayOut.Kind.FIXED_AMOUNT, index, Asked.VOLUME, fixed, more));
        }
        return found;
    }

    private static void add(List<WayOut> found, @Nullable WayOut way) {
        if (way != null) {
            found.add(way);
        }
    }

    private static boolean reachable(Problem candidate) {
        try {
            return Solver.solve(candidate).reached();
        } catch (ArithmeticException doesNotSettle) {
            return false;
        }
    }

    /** Looks upwards in steps of doubling, so that a change is found near where it is needed. */
    private static @Nullable Double upwards(double from, double most, DoublePredicate does) {
        if (!(from < most)) {
            return null;
        }
        double start = from > 0.0 ? from : 1e-3 * most;
        for (double to = 2.0 * start; to < most; to *= 2.0) {
            if (does.test(to)) {
                return least(from, to, does);
            }
        }
        return least(from, most, does);
    }

    /** Returns the value nearest to {@code from}, where it does not do, towards {@code to}, at which it does; null when not even there. */
    private static @Nullable Double least(double from, double to, DoublePredicate does) {
        if (!does.test(to)) {
            return null;
        }
        double fails = from;
        double enough = to;
        for (int i = 0; i < MOST_HALVINGS && Math.abs(enough - fails) > PRECISION * Math.abs(enough - from); i++) {
            double middle = 0.5 * (fails + enough);
            if (does.test(middle)) {
                enough = middle;
            } else {
                fails = middle;
            }
        }
        double margin = MARGIN * (enough - from);
        double past = to > from ? Math.min(to, enough + margin) : Math.max(to, enough + margin);
        return does.test(past) ? past : Double.valueOf(enough);
    }
}
