package org.stillroom.planner.marks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Rounds all lines together: of the amounts next to the exact ones, takes those whose result lies closest to the plan's.
 *
 * <p>Every combination is weighed by the plan's Jacobian (branch and bound, so that most need no look), and the best few are
 * judged by the real forward model, among them the combination in which each line is rounded by itself. Method and limits:
 * docs/how-it-works/measures.md.
 */
final class Rounding {
    /** Combinations that are looked at; where there are more, lines that matter least are rounded by themselves. */
    private static final long MOST_COMBINATIONS = 1L << 18;

    /** How many of the best by the Jacobian are judged by the forward model. */
    private static final int JUDGED = 64;

    private final Batch batch;
    private final List<Choice> choices;
    private final List<List<Take>> candidates;
    private final double[][][] moves;
    private final double[][] least;
    private final double[][] most;
    private final PriorityQueue<Combination> best = new PriorityQueue<>(
            Comparator.comparingDouble(Combination::distance).reversed());

    /**
     * A line to be rounded.
     *
     * @param line its index in the plan
     * @param portion what it takes
     * @param instrument with what
     * @param reach how many marks to either side are worth a look
     */
    record Choice(int line, Portion portion, Instrument instrument, int reach) {}

    /** Which candidate of each line, and how far the result lies from the plan's by the Jacobian. */
    @SuppressWarnings("ArrayRecordComponent") // counts of the search, never compared, never leaving the class
    private record Combination(int[] picks, double distance) {}

    private Rounding(Batch batch, List<Choice> choices) {
        this.batch = batch;
        double[][] jacobian = new double[choices.size()][];
        for (int i = 0; i < choices.size(); i++) {
            jacobian[i] = slope(batch, choices.get(i));
        }
        Integer[] order = byInfluence(choices, jacobian);
        this.choices = Arrays.stream(order).map(choices::get).toList();
        this.candidates = candidates(this.choices);
        this.moves = new double[choices.size()][][];
        int figures = choices.isEmpty() ? 0 : jacobian[0].length;
        this.least = new double[choices.size() + 1][figures];
        this.most = new double[choices.size() + 1][figures];
        for (int i = choices.size() - 1; i >= 0; i--) {
            moves[i] = moves(candidates.get(i), this.choices.get(i), jacobian[order[i]]);
            addRange(i);
        }
    }

    /**
     * Returns the amount to take for each choice, in their order.
     *
     * @param choices lines to be rounded
     */
    static List<Take> together(Batch batch, List<Choice> choices) {
        if (choices.isEmpty()) {
            return List.of();
        }
        Rounding rounding = new Rounding(batch, choices);
        rounding.search(0, new int[choices.size()], new double[rounding.least[0].length]);
        List<Take> inOrderOfInfluence = rounding.judged();
        List<Take> takes = new ArrayList<>();
        for (Choice choice : choices) {
            takes.add(inOrderOfInfluence.get(rounding.choices.indexOf(choice)));
        }
        return takes;
    }

    /** Returns the candidates of each line, as many as can be combined. */
    static List<List<Take>> candidates(List<Choice> byInfluence) {
        List<List<Take>> candidates = new ArrayList<>();
        long combinations = 1;
        for (Choice choice : byInfluence) {
            List<Take> near = choice.instrument().near(choice.portion(), 1);
            boolean affordable = combinations * near.size() <= MOST_COMBINATIONS;
            candidates.add(affordable ? near : List.of(choice.instrument().nearest(choice.portion())));
            combinations *= candidates.get(candidates.size() - 1).size();
        }
        for (int i = byInfluence.size() - 1; i >= 0; i--) {
            Choice choice = byInfluence.get(i);
            List<Take> wide = choice.instrument().near(choice.portion(), choice.reach());
            long wider = combinations / candidates.get(i).size() * wide.size();
            if (candidates.get(i).size() > 1 && wider <= MOST_COMBINATIONS) {
                candidates.set(i, wide);
                combinations = wider;
            }
        }
        return candidates;
    }

    /** Returns how the deviations change with a gram of the line. */
    private static double[] slope(Batch batch, Choice choice) {
        double exact = batch.exactGrams()[choice.line()];
        double half = Math.min(choice.instrument().nearest(choice.portion()).halfMarkGrams(), 0.5 * exact);
        double[] above = batch.exactGrams();
        above[choice.line()] = exact + half;
        double[] below = batch.exactGrams();
        below[choice.line()] = exact - half;
        double[] high = batch.deviations(above);
        double[] low = batch.deviations(below);
        for (int i = 0; i < high.length; i++) {
            high[i] = (high[i] - low[i]) / (2.0 * half);
        }
        return high;
    }

    private static Integer[] byInfluence(List<Choice> choices, double[][] jacobian) {
        double[] influence = new double[choices.size()];
        Integer[] order = new Integer[choices.size()];
        for (int i = 0; i < order.length; i++) {
            Choice choice = choices.get(i);
            double mark = choice.instrument().nearest(choice.portion()).halfMarkGrams();
            influence[i] = mark * mark * Batch.squared(jacobian[i]);
            order[i] = i;
        }
        Arrays.sort(order, Comparator.comparingDouble(i -> -influence[i]));
        return order;
    }

    private static double[][] moves(List<Take> takes, Choice choice, double[] slope) {
        double[][] moves = new double[takes.size()][slope.length];
        for (int t = 0; t < moves.length; t++) {
            double grams = takes.get(t).grams() - choice.portion().grams();
            for (int f = 0; f < slope.length; f++) {
                moves[t][f] = grams * slope[f];
            }
        }
        return moves;
    }

    /** Notes how far the lines from this one on can move each figure at least and at most. */
    private void addRange(int line) {
        for (int f = 0; f < least[line].length; f++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double[] move : moves[line]) {
                low = Math.min(low, move[f]);
                high = Math.max(high, move[f]);
            }
            least[line][f] = least[line + 1][f] + low;
            most[line][f] = most[line + 1][f] + high;
        }
    }

    private void search(int line, int[] picks, double[] off) {
        if (best.size() == JUDGED && bound(line, off) >= best.element().distance()) {
            return;
        }
        if (line == picks.length) {
            best.add(new Combination(picks.clone(), Batch.squared(off)));
            if (best.size() > JUDGED) {
                best.remove();
            }
            return;
        }
        for (int t = 0; t < moves[line].length; t++) {
            picks[line] = t;
            double[] moved = off.clone();
            for (int f = 0; f < moved.length; f++) {
                moved[f] += moves[line][t][f];
            }
            search(line + 1, picks, moved);
        }
    }

    /** Returns what remains at least, whatever the lines from this one on take. */
    private double bound(int line, double[] off) {
        double sum = 0.0;
        for (int f = 0; f < off.length; f++) {
            double low = off[f] + least[line][f];
            double high = off[f] + most[line][f];
            double nearest = low > 0.0 ? low : Math.min(high, 0.0);
            sum += nearest * nearest;
        }
        return sum;
    }

    private List<Take> judged() {
        List<Take> closest = choices.stream()
                .map(choice -> choice.instrument().nearest(choice.portion()))
                .toList();
        double distance = distance(closest);
        List<Combination> few = new ArrayList<>(best);
        few.sort(Comparator.comparingDouble(Combination::distance));
        for (Combination each : few) {
            List<Take> takes = new ArrayList<>();
            for (int i = 0; i < each.picks().length; i++) {
                takes.add(candidates.get(i).get(each.picks()[i]));
            }
            double other = distance(takes);
            if (other < distance) {
                closest = takes;
                distance = other;
            }
        }
        return closest;
    }

    private double distance(List<Take> takes) {
        double[] grams = batch.exactGrams();
        for (int i = 0; i < takes.size(); i++) {
            grams[choices.get(i).line()] = takes.get(i).grams();
        }
        return batch.distance(grams);
    }
}
