package org.stillroom.core.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How many of which bottles a liquid fills: as much as can be in full ones, then as few as can be, and what is left in a last one that is
 * short.
 *
 * @param full how many of each size are filled, in the order in which they were offered
 * @param last the short one, or null when nothing is left or no bottle is
 * @param unfilled mL that no bottle takes
 */
public record BottlePlan(List<Event.Fill> full, @Nullable Last last, double unfilled) {
    /** Less than this is left in the vessel, mL. Our own choice. */
    private static final double DREGS = 5.0;

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
        int[] counts = fullest((int) Math.floor(millilitres + 1e-6), sizes);
        List<Event.Fill> full = new ArrayList<>();
        double left = millilitres;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                full.add(new Event.Fill(counts[i], sizes.get(i).millilitres()));
                left -= (double) counts[i] * sizes.get(i).millilitres();
            }
        }
        Size last = left < DREGS ? null : smallestThatTakes(left, sizes, counts);
        return last == null
                ? new BottlePlan(full, null, Math.max(0.0, left))
                : new BottlePlan(full, new Last(last.millilitres(), left), 0.0);
    }

    /** Returns how many of each size hold the most within a volume, and of those ways the one with the fewest bottles. */
    private static int[] fullest(int room, List<Size> sizes) {
        int[] bottles = new int[room + 1]; // fewest that hold just so much, -1 where none do
        Arrays.fill(bottles, -1);
        bottles[0] = 0;
        int[][] used = new int[sizes.size()][room + 1];
        for (int i = 0; i < sizes.size(); i++) {
            Size size = sizes.get(i);
            int[] before = bottles.clone();
            for (int volume = 0; volume <= room; volume++) {
                for (int count = 1; count <= size.count() && count * (long) size.millilitres() <= volume; count++) {
                    int rest = before[volume - count * size.millilitres()];
                    if (rest >= 0 && (bottles[volume] < 0 || rest + count < bottles[volume])) {
                        bottles[volume] = rest + count;
                        used[i][volume] = count;
                    }
                }
            }
        }
        int best = room;
        while (bottles[best] < 0) {
            best--;
        }
        int[] counts = new int[sizes.size()];
        for (int i = sizes.size() - 1; i >= 0; i--) {
            counts[i] = used[i][best];
            best -= counts[i] * sizes.get(i).millilitres();
        }
        return counts;
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
