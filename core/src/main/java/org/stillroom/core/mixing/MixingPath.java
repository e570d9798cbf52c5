package org.stillroom.core.mixing;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Doubts;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.MixingStep;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Temperature;

/**
 * The liquid in the jar after each step of mixing, and how clear it is.
 *
 * <p>Only steps that add something are stops, and only from the first on after which there are both oil and something liquid.
 *
 * @param stops in the order of mixing
 */
public record MixingPath(List<Stop> stops) {
    /** More steps than this are not tried in every order. */
    private static final int MOST_TO_PERMUTE = 7;

    public MixingPath {
        stops = List.copyOf(stops);
    }

    /**
     * The liquid after a step.
     *
     * @param step what was done
     * @param liquid what is in the jar now
     * @param clarity how clear it is
     */
    public record Stop(MixingStep step, Contents liquid, Clarity clarity) {}

    /** Returns the path of a plan by its steps. */
    public static MixingPath of(Plan plan, List<MixingStep> steps, Temperature temperature) {
        Contents jar = Contents.NONE;
        List<Stop> stops = new ArrayList<>();
        for (MixingStep step : steps) {
            Contents added = added(plan, step);
            jar = jar.plus(added);
            if (added.total() > 0.0 && isLiquidWithOil(jar)) {
                stops.add(new Stop(step, jar, Clarity.of(jar, temperature, Doubts.NONE)));
            }
        }
        return new MixingPath(stops);
    }

    private static Contents added(Plan plan, MixingStep step) {
        Contents added = Contents.NONE;
        for (int index : step.lines()) {
            PlannedLine line = plan.lines().get(index);
            added = added.plus(line.ingredient().perGram().times(line.grams()));
        }
        return added;
    }

    private static boolean isLiquidWithOil(Contents jar) {
        boolean wet = jar.grams(Substance.ETHANOL) + jar.grams(Substance.WATER) > 0.0;
        return wet && jar.grams(Substance.OIL) > 0.0;
    }

    /** Returns the steps in the order that stays clear longest: fewest stops that are not clear, then the lowest peak of oil load. */
    public static List<MixingStep> clearest(Plan plan, List<MixingStep> steps, Temperature temperature) {
        List<MixingStep> adding = steps.stream()
                .filter(step -> added(plan, step).total() > 0.0)
                .toList();
        int first = firstWithOil(plan, adding);
        int last = adding.size() - 1;
        if (last - first < 2 || last - first > MOST_TO_PERMUTE) {
            return adding;
        }
        List<MixingStep> best = adding;
        double bestScore = score(of(plan, adding, temperature));
        for (List<MixingStep> order : orders(adding.subList(first + 1, last))) {
            List<MixingStep> whole = new ArrayList<>(adding.subList(0, first + 1));
            whole.addAll(order);
            whole.add(adding.get(last));
            double score = score(of(plan, whole, temperature));
            if (score < bestScore - 1e-9) {
                best = List.copyOf(whole);
                bestScore = score;
            }
        }
        return best;
    }

    private static int firstWithOil(Plan plan, List<MixingStep> adding) {
        Contents jar = Contents.NONE;
        for (int i = 0; i < adding.size(); i++) {
            jar = jar.plus(added(plan, adding.get(i)));
            if (isLiquidWithOil(jar)) {
                return i;
            }
        }
        return adding.size();
    }

    private static List<List<MixingStep>> orders(List<MixingStep> steps) {
        if (steps.isEmpty()) {
            return List.of(List.of());
        }
        List<List<MixingStep>> orders = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            List<MixingStep> others = new ArrayList<>(steps);
            MixingStep next = others.remove(i);
            for (List<MixingStep> rest : orders(others)) {
                List<MixingStep> order = new ArrayList<>(List.of(next));
                order.addAll(rest);
                orders.add(order);
            }
        }
        return orders;
    }

    /** Stops that are not clear weigh more than any load. */
    private static double score(MixingPath path) {
        double score = 0.0;
        double peak = 0.0;
        for (Stop stop : path.stops()) {
            score += stop.clarity().verdict() == Verdict.CLEAR ? 0.0 : 1e6;
            peak = Math.max(peak, stop.clarity().load());
        }
        return score + Math.min(peak, 9e5);
    }
}
