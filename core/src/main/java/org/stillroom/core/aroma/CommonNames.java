package org.stillroom.core.aroma;

import java.util.List;

/** The English common names by which every table knows a plant, whatever a person calls it: in German, or by its botanical name. */
public final class CommonNames {
    private CommonNames() {}

    /**
     * Returns a text with English common names in place of German and botanical ones, in each way in which it can be meant; the text
     * itself where it holds none.
     */
    public static List<String> readings(String text) {
        return BotanicalNames.readings(GermanNames.english(text));
    }

    /** Returns whether a text holds a botanical name. */
    public static boolean isBotanical(String text) {
        return !BotanicalNames.readings(text).equals(List.of(text));
    }
}
