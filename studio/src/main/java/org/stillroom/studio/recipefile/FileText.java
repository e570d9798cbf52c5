package org.stillroom.studio.recipefile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The text of a file: UTF-8, with or without a byte order mark, of a size that a recipe can have. */
final class FileText {
    /** The largest file that is read, bytes; a long recipe has a few thousand. */
    static final int MOST_BYTES = 1_000_000;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private FileText() {}

    /** Returns the text of the bytes. */
    static String of(byte[] bytes) throws Unreadable {
        refuseLarge(bytes.length);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer left = ByteBuffer.wrap(bytes);
        try {
            return checked(decoder.decode(left).toString());
        } catch (CharacterCodingException e) {
            throw new Unreadable(
                    "file-encoding",
                    new Place(lineOf(bytes, left.position()), 1),
                    "The file is not UTF-8 text: from here on some bytes mean no character.",
                    "Save the file as UTF-8 (editors offer it under “Save with encoding”).");
        }
    }

    /** Returns the text without its byte order mark, once it holds nothing but characters that can be seen. */
    static String checked(String text) throws Unreadable {
        refuseLarge(text.length());
        String plain = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        int line = 1;
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (c == '\n') {
                line++;
            } else if (!isVisible(plain, i)) {
                throw new Unreadable(
                        "file-characters",
                        new Place(line, 1),
                        "There is a character that cannot be seen (" + code(c) + ").",
                        "Delete it, or type the line anew; a recipe file is plain text.");
            }
        }
        return plain;
    }

    /** Refuses what is too large to be a recipe, before it is read. */
    static void refuseLarge(long bytes) throws Unreadable {
        if (bytes > MOST_BYTES) {
            throw new Unreadable(
                    "file-too-large",
                    Place.WHOLE_FILE,
                    "The file has " + inMegabytes(bytes)
                            + " MB; a recipe file has at most 1 MB, so nothing of it was read.",
                    "Check that this is the file you meant; keep long notes and pictures elsewhere.");
        }
    }

    private static String code(char c) {
        String digits = Integer.toHexString(c).toUpperCase(Locale.ROOT);
        return "U+" + "0".repeat(4 - digits.length()) + digits;
    }

    private static String inMegabytes(long bytes) {
        long tenths = Math.floorDiv(bytes * 10 + MOST_BYTES / 2, (long) MOST_BYTES);
        return tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }

    private static boolean isVisible(String text, int at) {
        char c = text.charAt(at);
        if (Character.isSurrogate(c)) {
            return Character.isHighSurrogate(c)
                    ? at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1))
                    : at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
        }
        boolean control = Character.isISOControl(c) && c != '\t' && c != '\r';
        return !control && c != BYTE_ORDER_MARK && c != '\u2028' && c != '\u2029' && c < '\uFFFE';
    }

    private static int lineOf(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return line;
    }
}
