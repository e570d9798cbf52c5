package org.stillroom.core.quantity;

/**
 * Percentiles of many drawn numbers, found without putting all of them in order.
 *
 * <p>Between two numbers the percentile lies in proportion: definition 7 of R. J. Hyndman and Y. Fan, Sample quantiles in statistical
 * packages, The American Statistician 50, 1996. Selection: C. A. R. Hoare, Algorithm 65: Find, Communications of the ACM 4, 1961.
 */
public final class Percentile {
    private Percentile() {}

    /**
     * Returns the number below which a part of the numbers lies.
     *
     * @param numbers at least one; they are put into another order
     * @param part from 0, the least, to 1, the largest
     */
    public static double of(double[] numbers, double part) {
        double place = part * (numbers.length - 1);
        int below = (int) place;
        double low = find(numbers, below);
        if (below == numbers.length - 1) {
            return low;
        }
        // What lies behind the place that was found is not less; the next in order is the least of it.
        double next = numbers[below + 1];
        for (int i = below + 2; i < numbers.length; i++) {
            next = Math.min(next, numbers[i]);
        }
        return low + (place - below) * (next - low);
    }

    /** Moves into a place what stands there in order, with nothing larger before and nothing smaller behind; returns it. */
    private static double find(double[] numbers, int place) {
        int from = 0;
        int to = numbers.length - 1;
        while (from < to) {
            double pivot = numbers[place];
            int i = from;
            int j = to;
            while (i <= j) {
                while (numbers[i] < pivot) {
                    i++;
                }
                while (pivot < numbers[j]) {
                    j--;
                }
                if (i <= j) {
                    double held = numbers[i];
                    numbers[i] = numbers[j];
                    numbers[j] = held;
                    i++;
                    j--;
                }
            }
            if (j < place) {
                from = i;
            }
            if (place < i) {
                to = j;
            }
        }
        return numbers[place];
    }
}
