package org.stillroom.studio.usecase;

import java.util.regex.Pattern;

/** A number typed where the unit stands beside the field already. */
public final class BareNumber {
    private static final Pattern BARE = Pattern.compile("[\\d.,\\s/½¼¾⅓⅔]*\\d[\\d.,\\s/½¼¾⅓⅔]*|[½¼¾⅓⅔]");

    private BareNumber() {}

    /** Returns what was typed, with the unit behind it if it was a number alone. */
    public static String withUnit(String typed, String unit) {
        String text = typed.strip();
        return BARE.matcher(text).matches() ? text + " " + unit : text;
    }
}
