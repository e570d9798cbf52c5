package org.stillroom.studio.recipefile;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Writes texts so that YAML gives back exactly what was typed. */
final class YamlText {
    /** Starts with a letter or digit and holds nothing that means something to YAML in braces. */
    private static final Pattern BARE_IN_BRACES =
            Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} .%°/+()'’&;=·×–—…\\-]|:(?=[\\p{L}\\p{N}]))*");

    /** The same outside of braces, where a comma is a comma. */
    private static final Pattern BARE = Pattern.compile(BARE_IN_BRACES.pattern().replace("(?:[", "(?:[,"));

    /** Bare words and numbers that other programs take for something else than text. */
    private static final Pattern NUMBER = Pattern.compile(
            "[0-9][0-9_]*(\\.[0-9_]*)?([eE][+-]?[0-9]+)?|0[xo][0-9a-fA-F]+|[0-9:.]+|[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}.*");

    private static final Set<String> WORDS = Set.of("null", "true", "false", "yes", "no", "on", "off", "y", "n");

    private YamlText() {}

    /** Returns a text for one line in braces or brackets: bare where that is safe, else in double quotes. */
    static String inBraces(String text) {
        return isBare(text, BARE_IN_BRACES) ? text : quoted(text);
    }

    /** Returns a text for the rest of a line after its key. */
    static String onItsOwn(String text) {
        return isBare(text, BARE) ? text : quoted(text);
    }

    private static boolean isBare(String text, Pattern safe) {
        return safe.matcher(text).matches()
                && !text.endsWith(" ")
                && !NUMBER.matcher(text).matches()
                && !WORDS.contains(text.toLowerCase(Locale.ROOT));
    }

    /** Returns whether the text reads better as lines of its own than in quotes. */
    static boolean isBlock(String text) {
        return text.contains("\n")
                && !Character.isWhitespace(text.charAt(0))
                && !text.endsWith("\n\n")
                && text.chars().allMatch(c -> c == '\n' || isPlain((char) c));
    }

    /** Returns a text of several lines as a block under its key, each line after the given indent. */
    static String block(String text, String indent) {
        boolean ended = text.endsWith("\n");
        StringBuilder block = new StringBuilder(ended ? "|" : "|-");
        for (String line : (ended ? text.substring(0, text.length() - 1) : text).split("\n", -1)) {
            block.append('\n').append(line.isEmpty() ? "" : indent + line);
        }
        return block.toString();
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\r' -> quoted.append("\\r");
                case '\t' -> quoted.append("\\t");
                default -> quoted.append(isPlain(c) || isPair(text, i) ? String.valueOf(c) : escaped(c));
            }
        }
        return quoted.append('"').toString();
    }

    private static boolean isPlain(char c) {
        return c >= ' '
                && c != 0x7F
                && !(c >= 0x80 && c <= 0xA0)
                && !Character.isSurrogate(c)
                && c != '\u2028'
                && c != '\u2029'
                && c != '\uFEFF'
                && c < '\uFFFE';
    }

    private static boolean isPair(String text, int at) {
        boolean first = at + 1 < text.length() && Character.isSurrogatePair(text.charAt(at), text.charAt(at + 1));
        return first || (at > 0 && Character.isSurrogatePair(text.charAt(at - 1), text.charAt(at)));
    }

    private static String escaped(char c) {
        String digits = Integer.toHexString(c);
        return "\\u" + "0".repeat(4 - digits.length()) + digits;
    }
}
