package org.stillroom.core.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How many of which bottles a liquid fills: as much as can be in full ones, then as few as can be, and what is left in a last one that is
 * short. A bottle that is short by a fiftieth of its size counts as full in that choice, and so does what would stay in the vessel anyhow.
 *
 * @param full how many of each size are filled, in the order in which they were offered
 * @param last the short one, or null when nothing is left or no bottle is
 * @param unfilled mL that no bottle takes
 */
public record BottlePlan(List<Event.Fill> full, @Nullable Last last, double unfilled) {
    /** Less than this is left in the vessel, mL. Our own choice. */
    private static final double DREGS = 5.0;

    /** Part of its size by which a bottle may be short and be as good as full. Our own choice. */
    private static final double NEARLY = 0.02;

    /** What is off by rounding alone, mL. */
    private static final double EXACT = 1e-6;

    /** The most that is planned at once, mL: larger ones in several goes. */
    public static final int MOST = 100_000;

    public BottlePlan {
        full = List.copyOf(full);
    }

    /**
     * The bottle that is not full.
     *
     * @param size of it, mL
     * @param millilitres in it
     */
    public record Last(double size, double millilitres) {}

    /**
     * Bottles of one size.
     *
     * @param millilitres that one holds, from 1 in whole mL
     * @param count at hand
     */
    public record Size(int millilitres, int count) {
        public Size {
            if (!(millilitres >= 1 && millilitres <= 100_000 && count >= 0 && count <= 100_000)) {
                throw new IllegalArgumentException("bottles hold 1 to 100000 mL, and there are 0 to 100000 of them");
            }
        }
    }

    /**
     * Returns the bottles for a volume.
     *
     * @param millilitres to bottle at 20 °C, up to 100 L
     */
    public static BottlePlan of(double millilitres, List<Size> sizes) {
        if (!(millilitres >= 0.0 && millilitres <= MOST)) {
            throw new IllegalArgumentException("0 to 100000 mL are bottled at once, not " + millilitres);
        }
        Ways ways = new Ways(millilitres, sizes);
        int holds = ways.best();
        int[] counts = ways.counts(holds);
        double short_ = holds - millilitres;
        Size nearly = short_ > EXACT ? ways.shortOne(holds) : null;
        if (nearly != null) {
            counts[sizes.indexOf(nearly)]--;
        }
        List<Event.Fill> full = new ArrayList<>();
        double left = millilitres;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                full.add(new Event.Fill(counts[i], sizes.get(i).millilitres()));
                left -= (double) counts[i] * sizes.get(i).millilitres();
            }
        }
        Size last = nearly != null ? nearly : left < DREGS ? null : smallestThatTakes(left, sizes, counts);
        return last == null
                ? new BottlePlan(full, null, Math.max(0.0, left))
                : new BottlePlan(full, new Last(last.millilitres(), left), 0.0);
    }

    /** The ways in which bottles hold each whole number of mL, each with as few of them as can be. */
    private static final class Ways {
        private final double volume;
        private final List<Size> sizes;
        private final int[] bottles; // fewest that hold just so much, -1 where none do
        private final int[][] used;

        Ways(double volume, List<Size> sizes) {
            this.volume = volume;
            this.sizes = sizes;
            int largest = sizes.stream().mapToInt(Size::millilitres).max().orElse(0);
            int room = (int) Math.floor(volume + EXACT + NEARLY * largest);
            this.bottles = new int[room + 1];
            this.used = new int[sizes.size()][room + 1];
            Arrays.fill(bottles, -1);
            bottles[0] = 0;
            for (int i = 0; i < sizes.size(); i++) {
                add(i);
            }
        }

        private void add(int i) {
            Size size = sizes.get(i);
            int[] before = bottles.clone();
            for (int holds = 0; holds < bottles.length; holds++) {
                for (int count = 1; count <= size.count() && count * (long) size.millilitres() <= holds; count++) {
                    int rest = before[holds - count * size.millilitres()];
                    if (rest >= 0 && (bottles[holds] < 0 || rest + count < bottles[holds])) {
                        bottles[holds] = rest + count;
                        used[i][holds] = count;
                    }
                }
            }
        }

        /** Returns what the chosen bottles hold together: all of it with fewest of them, or as much of it as can be. */
        int best() {
            int best = -1;
            for (int holds = bottles.length - 1; holds >= 0 && holds > volume - DREGS; holds--) {
                boolean takesAll = bottles[holds] >= 0 && (holds <= volume + EXACT || shortOne(holds) != null);
                if (takesAll && (best < 0 || isBetter(holds, best))) {
                    best = holds;
                }
            }
            if (best >= 0) {
                return best;
            }
            best = (int) Math.floor(volume + EXACT);
            while (bottles[best] < 0) {
                best--;
            }
            return best;
        }

        private boolean isBetter(int holds, int than) {
            return bottles[holds] < bottles[than]
                    || (bottles[holds] == bottles[than] && Math.abs(holds - volume) < Math.abs(than - volume));
        }

        /** Returns how many of each size hold just so much. */
        int[] counts(int holds) {
            int[] counts = new int[sizes.size()];
            int rest = holds;
            for (int i = sizes.size() - 1; i >= 0; i--) {
                counts[i] = used[i][rest];
                rest -= counts[i] * sizes.get(i).millilitres();
            }
            return counts;
        }

        /** Returns the smallest of the bottles that hold just so much which is nearly full when all others are, or null. */
        @Nullable
        Size shortOne(int holds) {
            int[] counts = counts(holds);
            Size smallest = null;
            for (int i = 0; i < counts.length; i++) {
                Size size = sizes.get(i);
                boolean nearly = counts[i] > 0 && holds - volume <= NEARLY * size.millilitres();
                if (nearly && (smallest == null || size.millilitres() < smallest.millilitres())) {
                    smallest = size;
                }
            }
            return smallest;
        }
    }

    private static @Nullable Size smallestThatTakes(double left, List<Size> sizes, int[] counts) {
        Size smallest = null;
        for (int i = 0; i < counts.length; i++) {
            Size size = sizes.get(i);
            boolean takes = size.count() > counts[i] && size.millilitres() >= left;
            if (takes && (smallest == null || size.millilitres() < smallest.millilitres())) {
                smallest = size;
            }
        }
        return smallest;
    }
}
