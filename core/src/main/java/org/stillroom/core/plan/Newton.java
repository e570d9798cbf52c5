package org.stillroom.core.plan;

import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;

/** One course of Newton's method for the volume, each round a linear programme over the unknowns that may differ from zero. */
final class Newton {
    /** Settled when the volume that the programme counts on is that of its amounts within this part of it. */
    private static final double CONVERGED = 1e-13;
    /** Rounding of the volume model: when the volume stops coming nearer within this part of it, it has settled as well. */
    private static final double ROUNDING = 1e-11;

    private final Equations equations;
    private final boolean[] allowed;
    private final double[] partial = new double[Substance.COUNT];
    private Solution solution = new Solution(new double[0], 0.0, Double.POSITIVE_INFINITY);
    private boolean[] support;
    private boolean[] supportBefore;
    private double cost;
    private double off = Double.POSITIVE_INFINITY;

    /**
     * @param allowed which unknowns may differ from zero
     * @param near grams of each substance in a liquid to take the first partial volumes from
     */
    Newton(Equations equations, boolean[] allowed, double[] near) {
        this.equations = equations;
        this.allowed = allowed;
        this.support = allowed;
        this.supportBefore = allowed;
        VolumeModel.partialVolumes(near, partial);
    }

    /** Returns a course that starts where this one stands and keeps to the given unknowns. */
    Newton keepingTo(boolean[] unknowns) {
        return new Newton(equations, unknowns, equations.total(solution.grams()));
    }

    /** Goes on until the volume settles; returns whether it does within so many rounds. */
    boolean settles(int mostRounds) {
        for (int round = 0; round < mostRounds; round++) {
            step();
            double volume = VolumeModel.partialVolumes(equations.total(solution.grams()), partial);
            double change = Math.abs(volume - solution.millilitres());
            boolean settled = change <= CONVERGED * Math.max(volume, 1e-3 * equations.scale())
                    || (change >= off && change <= ROUNDING * volume);
            off = change;
            if (settled) {
                return true;
            }
        }
        return false;
    }

    private void step() {
        Programme programme = equations.programme(partial, allowed);
        double[] answer = programme.solve();
        supportBefore = support;
        support = programme.support();
        cost = equations.cost(answer);
        solution = equations.solution(answer, programme.unfulfilled());
    }

    /** Returns whether it misses less than the other, or as much at no more cost. */
    boolean isNoWorseThan(Newton other) {
        double difference = solution.missed() - other.solution.missed();
        return Math.abs(difference) > 1e-12 ? difference < 0.0 : cost <= other.cost;
    }

    Solution solution() {
        return solution;
    }

    /** Returns the unknowns that the last corner rests on. */
    boolean[] support() {
        return support;
    }

    /** Returns the unknowns that the corner before the last rested on. */
    boolean[] supportBefore() {
        return supportBefore;
    }

    /** Returns by how much the volume still moved in the last round, mL. */
    double off() {
        return off;
    }
}
