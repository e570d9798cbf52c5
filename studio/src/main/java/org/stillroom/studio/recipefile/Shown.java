package org.stillroom.studio.recipefile;

import java.util.List;

/** How words from a file are shown in a message. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    /** Returns a text in quotation marks, on one line and cut where it is long. */
    static String quoted(String text) {
        String line = text.replaceAll("\\s+", " ");
        if (line.codePointCount(0, line.length()) > LONGEST) {
            line = line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "…";
        }
        return "“" + line + "”";
    }

    /** Returns "a, b or c". */
    static String either(List<String> texts) {
        if (texts.size() < 2) {
            return String.join("", texts);
        }
        return String.join(", ", texts.subList(0, texts.size() - 1)) + " or " + texts.get(texts.size() - 1);
    }
}
