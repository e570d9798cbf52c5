package org.stillroom.planner.drops;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A way to dose a single batch whose drops cannot be split: some oils are diluted in strong spirit first and then counted in drops of
 * the dilution.
 *
 * @param dilutions one per oil that is diluted
 * @param choice drops of each oil, or of its dilution, for one batch
 */
public record PreDilution(List<Dilution> dilutions, Choice choice) {
    /** One part of oil in so many: what is offered, 10 % and 1 %. */
    private static final int[] OFFERED = {10, 100};
    /** Half a drop of fewer is more than a tenth of them. Common practice, no source. */
    private static final int FEWEST = 5;
    /** More are hard to count. Common practice, no source. */
    private static final int MOST = 60;
    /** A dilution weighs at least so much, g, so that a pocket scale makes it to 2 %. Common practice, no source. */
    private static final double LEAST_GRAMS = 2.0;

    /**
     * One oil diluted.
     *
     * @param oil its place in what was asked
     * @param oneIn parts of the dilution to one of oil, by mass: 10 or 100
     * @param drops of neat oil that go into it, {@value #FEWEST} or more: its strength is no surer than these can be counted
     * @param spirit g of strong spirit that they are made up with
     */
    public record Dilution(int oil, int oneIn, int drops, double spirit) {
        /** Returns what all of it weighs, g. */
        public double total() {
            return spirit * oneIn / (oneIn - 1);
        }
    }

    public PreDilution {
        dilutions = List.copyOf(dilutions);
    }

    /**
     * Returns how one batch is dosed with dilutions, or null where whole drops do without, or where dilutions come no nearer.
     *
     * <p>Drops of a dilution are {@value #FEWEST} to {@value #MOST}. Where so many cannot keep the tolerance, the nearest is offered.
     *
     * @param spiritDrop what a drop of the dilution weighs, g
     */
    public static @Nullable PreDilution of(Essence essence, double spiritDrop) {
        List<OilDrop> oils = new ArrayList<>();
        List<Integer> oneIn = new ArrayList<>();
        for (OilDrop oil : essence.oils()) {
            int times = weakEnough(essence, oil, spiritDrop);
            oneIn.add(times);
            oils.add(times == 1 ? oil : oil.carrying(spiritDrop / times));
        }
        if (oneIn.stream().allMatch(times -> times == 1)) {
            return null;
        }
        List<Choice> choices = WholeDrops.choices(essence.of(oils), 1);
        if (choices.isEmpty() || !isBetter(essence, oneIn, choices.get(0))) {
            return null;
        }
        return new PreDilution(dilutions(essence, oneIn, choices.get(0), spiritDrop), choices.get(0));
    }

    private static boolean isBetter(Essence essence, List<Integer> oneIn, Choice choice) {
        for (int i = 0; i < oneIn.size(); i++) {
            if (oneIn.get(i) > 1 && !isCountable(choice.drops().get(i))) {
                return false;
            }
        }
        List<Choice> neat = WholeDrops.choices(essence.upTo(1), 1);
        return choice.toleranceKept()
                || neat.isEmpty()
                || choice.worstError() < neat.get(0).worstError();
    }

    private static boolean isCountable(double drops) {
        return drops >= FEWEST && drops <= MOST;
    }

    /** Returns 1 for an oil that is counted neat, else the dilution of it that comes nearest, the stronger where both keep the tolerance. */
    private static int weakEnough(Essence essence, OilDrop oil, double spiritDrop) {
        double grams = oil.part() * essence.gramsPerBatch();
        int nearest = 1;
        double least = error(grams, oil.gramsPerDrop());
        for (int times : OFFERED) {
            double perDrop = spiritDrop / times;
            if (least > 0.5 * essence.tolerance()
                    && isCountable(Math.rint(grams / perDrop))
                    && error(grams, perDrop) < least) {
                nearest = times;
                least = error(grams, perDrop);
            }
        }
        return nearest;
    }

    private static double error(double grams, double perDrop) {
        double drops = Math.max(1.0, Math.rint(grams / perDrop));
        return Math.abs(drops * perDrop / grams - 1.0);
    }

    private static List<Dilution> dilutions(Essence essence, List<Integer> oneIn, Choice choice, double spiritDrop) {
        List<Dilution> dilutions = new ArrayList<>();
        for (int i = 0; i < oneIn.size(); i++) {
            int times = oneIn.get(i);
            if (times > 1) {
                double drop = essence.oils().get(i).gramsPerDrop();
                double needed = Math.max(LEAST_GRAMS, choice.drops().get(i) * spiritDrop);
                int drops = Math.max(FEWEST, (int) Math.ceil(needed / times / drop - 1e-9));
                dilutions.add(new Dilution(i, times, drops, drops * drop * (times - 1)));
            }
        }
        return dilutions;
    }
}
