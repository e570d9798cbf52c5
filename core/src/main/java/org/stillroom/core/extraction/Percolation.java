package org.stillroom.core.extraction;

/**
 * Solvent that runs slowly through a column of soaked plants and pushes what they hold before it.
 *
 * <p>The column is taken for so many equal cells, one after the other, each mixed in itself (tanks in series, from memory): one cell is
 * a jar that is stirred, many are a column in which nothing mixes. What comes later out of the plants themselves is not counted, so that
 * they must have given what they give before it runs.
 *
 * @param cells 1 to 200
 */
public record Percolation(int cells) {
    /** What a percolator at home does: own estimate between a stirred jar and a column. */
    public static final Percolation USUAL = new Percolation(5);
    /** The worst, a stirred jar, and about the best that a narrow column does; own estimate. */
    public static final Percolation WORST = new Percolation(1);

    public static final Percolation BEST = new Percolation(20);

    /** Up to here what leaves a cell can be summed without vanishing from the numbers. */
    private static final int MOST_CELLS = 200;

    public Percolation {
        if (cells < 1 || cells > MOST_CELLS) {
            throw new IllegalArgumentException("a column has 1 to " + MOST_CELLS + " cells, not " + cells);
        }
    }

    /**
     * Returns the part of what the marc held that it still holds, 0 to 1.
     *
     * @param through mL that run through
     * @param held mL that the marc holds
     */
    public double partThatStays(double through, double held) {
        if (held == 0.0) {
            return 0.0;
        }
        double times = cells * through / held; // what one cell is flushed by
        double term = Math.exp(-times);
        double upTo = 0.0;
        double sum = 0.0;
        for (int cell = 0; cell < cells; cell++) {
            upTo += term; // the part of this cell's first filling that has not left, and of those before it
            sum += upTo;
            term *= times / (cell + 1);
        }
        return Math.min(1.0, sum / cells);
    }
}
