package org.stillroom.core.quantity;

import java.util.List;
import java.util.Locale;

/**
 * A wanted sugar content taken apart: the figure, and the words at its end that say how sugar is counted.
 *
 * @param quantity the text without those words, such as "180 g/L"
 * @param basis "as invert", "as sucrose", "as dissolved", or empty where none is said
 */
public record SugarWords(String quantity, String basis) {
    private static final List<String> BASES = List.of("as invert", "as sucrose", "as dissolved");

    /** Takes the words off the end of a text; words that are none of these stay where they are. */
    public static SugarWords of(String text) {
        String alike = Phrase.alike(text);
        String lower = alike.toLowerCase(Locale.ROOT);
        for (String basis : BASES) {
            String ending = lower.endsWith(basis + " sugar") ? basis + " sugar" : basis;
            if (lower.endsWith(" " + ending) && lower.length() == alike.length()) {
                return new SugarWords(
                        alike.substring(0, alike.length() - ending.length()).strip(), basis);
            }
        }
        return new SugarWords(text, "");
    }
}
