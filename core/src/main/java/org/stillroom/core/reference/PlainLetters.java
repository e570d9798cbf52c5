package org.stillroom.core.reference;

import java.text.Normalizer;
import java.util.Locale;

/** Names without accents and in small letters, so that "creme de cassis" and "Kuemmel" are understood as they are typed. */
public final class PlainLetters {
    private PlainLetters() {}

    /** Returns a text as it compares; an umlaut is its letter alone or with an e behind. */
    public static String of(String text) {
        String bare = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "");
        return bare.replaceAll("([aou])e", "$1")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }
}
