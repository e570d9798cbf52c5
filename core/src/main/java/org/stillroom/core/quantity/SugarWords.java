package org.stillroom.core.quantity;

import java.util.List;

/**
 * A wanted sugar content taken apart: the figure, and the words at its end that say how sugar is counted.
 *
 * @param quantity the text without those words, such as "180 g/L"
 * @param basis "as invert", "as sucrose", "as dissolved", or empty where none is said
 */
public record SugarWords(String quantity, String basis) {
    private static final List<String> BASES = List.of("as invert", "as sucrose", "as dissolved");

    /** Takes the words off the end of a text; a text that ends in none of them stays as it is. */
    public static SugarWords of(String text) {
        String alike = Spelling.alike(text);
        for (String basis : BASES) {
            for (String ending : List.of(" " + basis, " " + basis + " sugar")) {
                int at = alike.length() - ending.length();
                if (alike.regionMatches(true, at, ending, 0, ending.length())) {
                    return new SugarWords(alike.substring(0, at), basis);
                }
            }
        }
        return new SugarWords(text, "");
    }
}
