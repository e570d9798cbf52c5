package org.stillroom.core.quantity;

/** How far two words are from each other in writing. */
public final class LetterSlips {
    private LetterSlips() {}

    /**
     * Returns the least number of letters to add, drop, change or swap with their neighbour that turns one text into the other
     * (Levenshtein's distance with swaps, no letter touched twice), as they are written.
     */
    public static int between(String one, String other) {
        int[][] least = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                least[i][j] = slips(one, other, least, i, j);
            }
        }
        return least[one.length()][other.length()];
    }

    private static int slips(String one, String other, int[][] least, int i, int j) {
        if (i == 0 || j == 0) {
            return i + j;
        }
        int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        int fewest = Math.min(least[i - 1][j - 1] + change, Math.min(least[i - 1][j], least[i][j - 1]) + 1);
        boolean swapped =
                i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
        return swapped ? Math.min(fewest, least[i - 2][j - 2] + 1) : fewest;
    }
}
