package org.stillroom.core.quantity;

/** Makes alike what keyboards and word processors write differently, and quotes what was typed. */
final class Spelling {
    private static final int LONGEST_QUOTE = 40;

    private Spelling() {}

    /** Returns the text with one kind of space, minus, slash, apostrophe, degree and micro sign, and no needless space. */
    static String alike(String typed) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < typed.length(); i++) {
            String one = alike(typed.charAt(i));
            boolean spaceAgain = one.equals(" ") && (out.length() == 0 || out.charAt(out.length() - 1) == ' ');
            out.append(spaceAgain ? "" : one);
        }
        return out.toString().strip();
    }

    private static String alike(char c) {
        return switch (c) {
            case '\u00a0', '\u2007', '\u2008', '\u2009', '\u200a', '\u202f', '\t', '\n', '\r' -> " ";
            case '\u200b', '\ufeff' -> "";
            case '\u2212' -> "-";
            case '\u2044', '\u2215' -> "/";
            case '\u2019', '\u02bc' -> "'";
            case '\u03bc' -> "µ";
            case '\u00ba', '\u02da' -> "°";
            case '\u2103' -> "°C";
            case '\u2109' -> "°F";
            case '\u00b3' -> "3";
            case '\u2026' -> "..";
            default -> String.valueOf(c);
        };
    }

    static String shortened(String text) {
        return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
    }

    static String quoted(String text) {
        return "\"" + shortened(text) + "\"";
    }
}
