package org.stillroom.core.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * How many of which bottles a liquid fills: where full ones take all of it, the fewest that do; else the fewest that take all of it with one
 * that is short, and of those the ones that leave least air in it; and where there are too few bottles, as much as can be. A bottle that
 * is short by a fiftieth of its size counts as full, and what would stay in the vessel anyhow is not filled.
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

    /** Part of its size that the short one holds at least, where another can be short instead. Our own choice. */
    private static final double FAIR = 0.5;

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
        Size last = short_ > EXACT ? ways.shortOne(holds) : null;
        if (last != null) {
            counts[sizes.indexOf(last)]--;
        }
        List<Event.Fill> full = new ArrayList<>();
        double left = millilitres;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                full.add(new Event.Fill(counts[i], sizes.get(i).millilitres()));
                left -= (double) counts[i] * sizes.get(i).millilitres();
            }
        }
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
            int room = (int) Math.ceil(volume) + largest;
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

        /** Returns what the chosen bottles hold together. */
        int best() {
            int full = holdingAll((int) Math.floor(volume - DREGS) + 1, this::isFull);
            if (full >= 0) {
                return full;
            }
            int oneShort = holdingAll((int) Math.ceil(volume - EXACT), holds -> true);
            if (oneShort >= 0) {
                return oneShort;
            }
            int most = (int) Math.floor(volume + EXACT);
            while (bottles[most] < 0) {
                most--;
            }
            return most;
        }

        private boolean isFull(int holds) {
            return holds <= volume + EXACT || holds - volume <= NEARLY * largestOf(holds);
        }

        private int holdingAll(int from, IntPredicate suits) {
            int best = -1;
            for (int holds = Math.max(0, from); holds < bottles.length; holds++) {
                if (bottles[holds] >= 0 && suits.test(holds) && (best < 0 || isBetter(holds, best))) {
                    best = holds;
                }
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

        private int largestOf(int holds) {
            return used(holds).stream().mapToInt(Size::millilitres).max().orElse(0);
        }

        /** Returns which of the bottles that hold just so much is the short one: the smallest that is nearly full, else at least half full, when all others are full; else the largest. */
        Size shortOne(int holds) {
            List<Size> used = used(holds);
            double air = holds - volume;
            return used.stream()
                    .filter(size -> air <= NEARLY * size.millilitres())
                    .findFirst()
                    .or(() -> used.stream()
                            .filter(size -> air <= (1.0 - FAIR) * size.millilitres())
                            .findFirst())
                    .orElse(used.get(used.size() - 1));
        }

        /** Returns the sizes of the bottles that hold just so much, the smallest first. */
        private List<Size> used(int holds) {
            int[] counts = counts(holds);
            return IntStream.range(0, counts.length)
                    .filter(i -> counts[i] > 0)
                    .mapToObj(sizes::get)
                    .sorted(Comparator.comparingInt(Size::millilitres))
                    .toList();
        }
    }
}
