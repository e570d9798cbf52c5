package org.stillroom.core.reference;

import java.util.Locale;

/** Names without accents and in small letters, so that "creme de cassis" and "Kuemmel" are understood as they are typed. */
public final class PlainLetters {
    private PlainLetters() {}

    /** Returns a text as it compares; an umlaut is its letter alone or with an e behind. */
    public static String of(String text) {
        StringBuilder bare = new StringBuilder();
        text.toLowerCase(Locale.ROOT).codePoints().forEach(letter -> bare.append(plain(letter)));
        return bare.toString()
                .replaceAll("\\p{M}+", "")
                .replaceAll("([aou])e", "$1")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    /** The letters of the languages of the EU that have a mark and are written without it where a keyboard has none. */
    private static String plain(int letter) {
        return switch (letter) {
            case 'à', 'á', 'â', 'ã', 'ä', 'å', 'ā', 'ă', 'ą' -> "a";
            case 'æ' -> "ae";
            case 'ç', 'č', 'ć' -> "c";
            case 'ď', 'đ' -> "d";
            case 'è', 'é', 'ê', 'ë', 'ě', 'ē', 'ė', 'ę' -> "e";
            case 'ì', 'í', 'î', 'ï', 'ī', 'į' -> "i";
            case 'ł', 'ľ', 'ĺ', 'ļ' -> "l";
            case 'ñ', 'ń', 'ň', 'ņ' -> "n";
            case 'ò', 'ó', 'ô', 'õ', 'ö', 'ø', 'ő' -> "o";
            case 'œ' -> "oe";
            case 'ŕ', 'ř' -> "r";
            case 'ś', 'š', 'ș', 'ş' -> "s";
            case 'ß' -> "ss";
            case 'ť', 'ț', 'ţ' -> "t";
            case 'ù', 'ú', 'û', 'ü', 'ů', 'ű', 'ū', 'ų' -> "u";
            case 'ý', 'ÿ' -> "y";
            case 'ź', 'ž', 'ż' -> "z";
            default -> Character.toString(letter);
        };
    }
}
