package org.stillroom.planner.drops;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the essences of several oils in which each oil is a whole number of drops: all of them are looked at, and what cannot be
 * among the best is cut off.
 *
 * <p>With n drops of an oil of drop mass m and part r, all oils together weigh from n·m/(r·(1+t)) to n·m/(r·(1−t)) when the
 * tolerance t is kept. Each oil so narrows what the others may be; the oil of fewest drops goes first because it narrows most.
 * What is left over only grows with the mass, so that the least mass that is still possible bounds it.
 */
public final class WholeDrops {
    private static final double ROUNDING = 1e-9;
    private static final double WIDEN = 1.25;
    private static final double WIDEST = 0.9;

    private final Essence essence;
    private final int wanted;
    private final Comparator<Choice> order;
    private final Integer[] byDrops;
    /** Part of the mass of the oils from each place in that order to its end. */
    private final double[] rest;

    private final List<Choice> best = new ArrayList<>();
    private final int[] drops;

    private WholeDrops(Essence essence, int wanted, Comparator<Choice> order) {
        this.essence = essence;
        this.wanted = wanted;
        this.order = order;
        int count = essence.oils().size();
        this.drops = new int[count];
        this.byDrops = new Integer[count];
        for (int i = 0; i < count; i++) {
            byDrops[i] = i;
        }
        Arrays.sort(byDrops, Comparator.comparing(essence.dropsPerBatch()::get));
        this.rest = new double[count + 1];
        for (int k = count - 1; k >= 0; k--) {
            rest[k] = rest[k + 1] + oil(k).part();
        }
    }

    /**
     * Returns the best choices, best first: those that keep the tolerance by what is left over, then by size; where there is none,
     * those nearest to the tolerance, marked so.
     *
     * @param wanted how many at most
     */
    public static List<Choice> choices(Essence essence, int wanted) {
        List<Choice> kept = new WholeDrops(essence, wanted, Choice.BETTER_FIRST).search();
        double tolerance = Math.max(essence.tolerance(), 0.01);
        while (kept.isEmpty() && tolerance < WIDEST) {
            tolerance = Math.min(WIDEST, tolerance * WIDEN);
            kept = new WholeDrops(essence.within(tolerance), wanted, Choice.NEARER_FIRST).search();
        }
        return kept.stream().map(choice -> Choice.of(essence, choice.drops())).toList();
    }

    /**
     * Returns the essence for the fewest batches that keeps the tolerance, of those the best; null where none up to the most
     * batches does.
     */
    public static @Nullable Choice smallest(Essence essence) {
        for (int batches = 1; batches <= essence.mostBatches(); batches++) {
            List<Choice> kept = new WholeDrops(essence.upTo(batches), 1, Choice.BETTER_FIRST).search();
            if (!kept.isEmpty()) {
                return Choice.of(essence, kept.get(0).drops());
            }
        }
        return null;
    }

    private OilDrop oil(int place) {
        return essence.oils().get(byDrops[place]);
    }

    private List<Choice> search() {
        for (int batches = 1; batches <= essence.mostBatches(); batches++) {
            double least = batches * essence.gramsPerBatch();
            if (cannotBeat(0, batches)) {
                break;
            }
            descend(0, 0.0, least * (1.0 - ROUNDING), least + essence.gramsPerBatch(), batches);
        }
        return List.copyOf(best);
    }

    /** Chooses the drops of the oil at a place; low and high bound the mass of all oils together. */
    private void descend(int place, double sum, double low, double high, int batches) {
        if (place == drops.length) {
            take(sum, low, high);
            return;
        }
        double t = essence.tolerance();
        double least = Math.max(low, sum / (1.0 - (1.0 - t) * rest[place]));
        double most = (1.0 + t) * rest[place] < 1.0 ? Math.min(high, sum / (1.0 - (1.0 + t) * rest[place])) : high;
        if (place == 0) {
            least = low;
            most = high;
        }
        double over = Math.max(0.0, least / essence.gramsPerBatch() - batches) * essence.dose();
        if (least > most * (1.0 + ROUNDING) || cannotBeat(Choice.steps(essence, over * (1.0 - ROUNDING)), batches)) {
            return;
        }
        OilDrop oil = oil(place);
        double perDrop = oil.gramsPerDrop() / oil.part();
        long from = Math.max(1, (long) Math.ceil(least * (1.0 - t) / perDrop - ROUNDING));
        long to = (long) Math.floor(most * (1.0 + t) / perDrop + ROUNDING);
        for (long n = from; n <= to; n++) {
            drops[byDrops[place]] = Math.toIntExact(n);
            double narrowLow = Math.max(least, n * perDrop / (1.0 + t));
            double narrowHigh = Math.min(most, n * perDrop / (1.0 - t));
            descend(place + 1, sum + n * oil.gramsPerDrop(), narrowLow, narrowHigh, batches);
        }
    }

    private void take(double sum, double low, double high) {
        double serves = sum / essence.gramsPerBatch();
        int batches = (int) Math.floor(serves + ROUNDING);
        double over = Math.max(0.0, serves - batches) * essence.dose();
        boolean within = sum >= low * (1.0 - ROUNDING) && sum <= high * (1.0 + ROUNDING);
        if (!within || cannotBeat(Choice.steps(essence, over), batches)) {
            return;
        }
        List<Integer> chosen = new ArrayList<>();
        for (int each : drops) {
            chosen.add(each);
        }
        Choice choice = Choice.of(essence, chosen);
        boolean fits = choice.batches() >= 1 && choice.batches() <= essence.mostBatches();
        if (choice.toleranceKept()
                && fits
                && best.stream().noneMatch(other -> other.drops().equals(chosen))) {
            best.add(choice);
            best.sort(order);
            if (best.size() > wanted) {
                best.remove(wanted);
            }
        }
    }

    /** Returns whether the list is full of better ones than any of so much left over and so many batches. */
    private boolean cannotBeat(long leftOverSteps, int batches) {
        if (best.size() < wanted || order != Choice.BETTER_FIRST) {
            return false;
        }
        Choice last = best.get(best.size() - 1);
        return leftOverSteps > last.leftOverSteps()
                || (leftOverSteps == last.leftOverSteps() && batches > last.batches());
    }
}
