package org.stillroom.core.batch;

/**
 * Numbers of bottles of a batch, the ends included.
 *
 * @param first from 1
 * @param last not below the first
 */
public record BottleNumbers(int first, int last) {
    public BottleNumbers {
        if (!(first >= 1 && last >= first)) {
            throw new IllegalArgumentException("bottles are numbered from 1 up, not " + first + " to " + last);
        }
    }

    /** Returns how many they are. */
    public int count() {
        return last - first + 1;
    }
}
