package org.stillroom.core.quantity;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads one number at a place in a text: "1.5", "1,5", ".5", "1 500", "1'500", "3/4", "1 1/2", "1½".
 *
 * <p>The point is the decimal sign of recipe files, so "1.500" is 1.5; a lone comma before three digits can be either
 * sign, which is left to {@link CommaQuestion}.
 */
final class NumberScan {
    /** More digits than any double or any maker needs; what is longer is a slip of the hand. */
    private static final int MOST_DIGITS = 30;

    private static final int MOST_DIGITS_IN_FRACTION = 9;
    private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final int[][] VULGAR_VALUES = {
        {1, 2}, {1, 3}, {2, 3}, {1, 4}, {3, 4}, {1, 5}, {2, 5}, {3, 5}, {4, 5}, {1, 6}, {5, 6}, {1, 8}, {3, 8}, {5, 8},
        {7, 8}
    };

    private final String text;
    private final int start;
    private final List<String> groups = new ArrayList<>();
    private final StringBuilder signs = new StringBuilder();
    private int at;

    NumberScan(String text, int start) {
        this.text = text;
        this.start = start;
        this.at = start;
        collect();
    }

    static boolean isDigit(String text, int at) {
        return at >= 0 && at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    static boolean startsNumber(String text, int at) {
        if (at >= text.length()) {
            return false;
        }
        char c = text.charAt(at);
        return isDigit(text, at) || VULGAR.indexOf(c) >= 0 || ((c == '.' || c == ',') && isDigit(text, at + 1));
    }

    /** Returns the place after the number. */
    int end() {
        return at;
    }

    /** Returns whether this is digits, one comma and three digits, where the comma may group or be the decimal sign. */
    boolean commaIsUnclear() {
        return signs.toString().equals(",")
                && groups.get(1).length() == 3
                && !groups.get(0).startsWith("0")
                && groupsOfThree(2);
    }

    TypedNumber number() throws NotUnderstood {
        if (text.substring(start, at).length() > 2 * MOST_DIGITS) {
            throw NotUnderstood.because("a number of so many digits is not read");
        }
        TypedNumber fraction = fractionAfterDigits();
        TypedNumber number = fraction != null ? fraction : decimal();
        refuseTail();
        return number;
    }

    private void collect() {
        groups.add(digits());
        while (at < text.length() && isSign(text.charAt(at)) && isDigit(text, at + 1)) {
            boolean space = text.charAt(at) == ' ';
            if (space && !(threeDigitsFollow() && groups.get(groups.size() - 1).length() <= 3)) {
                return;
            }
            signs.append(text.charAt(at));
            at++;
            groups.add(digits());
        }
    }

    private static boolean isSign(char c) {
        return c == '.' || c == ',' || c == '\'' || c == ' ';
    }

    private boolean threeDigitsFollow() {
        boolean three = isDigit(text, at + 1) && isDigit(text, at + 2) && isDigit(text, at + 3);
        return three && !isDigit(text, at + 4) && !(at + 4 < text.length() && text.charAt(at + 4) == '/');
    }

    private String digits() {
        int from = at;
        while (isDigit(text, at)) {
            at++;
        }
        return text.substring(from, at);
    }

    private boolean groupsOfThree(int count) {
        int first = groups.get(0).length();
        if (first < 1 || first > 3 || groups.get(0).startsWith("0")) {
            return false;
        }
        return groups.subList(1, count).stream().allMatch(group -> group.length() == 3);
    }

    private TypedNumber decimal() throws NotUnderstood {
        int count = signs.length();
        if (count == 0) {
            return TypedNumber.decimal(groups.get(0), "");
        }
        char last = signs.charAt(count - 1);
        boolean point = (last == '.' || last == ',') && signs.indexOf(String.valueOf(last)) == count - 1;
        int whole = point ? count : count + 1;
        if (point && count == 1) {
            return TypedNumber.decimal(groups.get(0), groups.get(1));
        }
        if (!groupsOfThree(whole) || !oneSign(whole - 1)) {
            throw malformed();
        }
        return TypedNumber.decimal(String.join("", groups.subList(0, whole)), point ? groups.get(count) : "");
    }

    private boolean oneSign(int count) {
        for (int i = 1; i < count; i++) {
            if (signs.charAt(i) != signs.charAt(0)) {
                return false;
            }
        }
        return true;
    }

    /** Returns the fraction, alone or after a whole number, or null where the digits go without one. */
    private @Nullable TypedNumber fractionAfterDigits() throws NotUnderstood {
        if (signs.length() > 0) {
            return null;
        }
        String first = groups.get(0);
        int gap = at < text.length() && text.charAt(at) == ' ' ? at + 1 : at;
        if (gap < text.length() && VULGAR.indexOf(text.charAt(gap)) >= 0) {
            at = gap + 1;
            int[] value = VULGAR_VALUES[VULGAR.indexOf(text.charAt(gap))];
            return TypedNumber.mixed(wholePart(first), new TypedNumber.Fraction(value[0], value[1]));
        }
        if (at < text.length() && text.charAt(at) == '/' && isDigit(text, at + 1)) {
            at++;
            return TypedNumber.mixed(0, fraction(first, digits()));
        }
        return gap > at && !first.isEmpty() ? mixedWithSlash(first, gap) : null;
    }

    private @Nullable TypedNumber mixedWithSlash(String whole, int from) throws NotUnderstood {
        int before = at;
        at = from;
        String above = digits();
        if (above.isEmpty() || at >= text.length() || text.charAt(at) != '/' || !isDigit(text, at + 1)) {
            at = before;
            return null;
        }
        at++;
        TypedNumber.Fraction fraction = fraction(above, digits());
        if (fraction.numerator() >= fraction.denominator()) {
            throw malformed();
        }
        return TypedNumber.mixed(wholePart(whole), fraction);
    }

    private TypedNumber.Fraction fraction(String above, String below) throws NotUnderstood {
        long denominator = wholePart(below);
        if (denominator == 0) {
            throw NotUnderstood.because("a fraction cannot have 0 below its line; write for instance 3/4");
        }
        return new TypedNumber.Fraction(wholePart(above), denominator);
    }

    private static long wholePart(String digits) throws NotUnderstood {
        if (digits.length() > MOST_DIGITS_IN_FRACTION) {
            throw NotUnderstood.because("a fraction of such large numbers is not read; write it as a decimal number");
        }
        return digits.isEmpty() ? 0 : Long.parseLong(digits);
    }

    private void refuseTail() throws NotUnderstood {
        if (at >= text.length()) {
            return;
        }
        char next = text.charAt(at);
        boolean exponent = (next == 'e' || next == 'E')
                && (isDigit(text, at + 1)
                        || (at + 1 < text.length() && "+-".indexOf(text.charAt(at + 1)) >= 0 && isDigit(text, at + 2)));
        if (exponent) {
            throw NotUnderstood.because("a number with an exponent is not read; write it out, 1500 in place of 1.5e3");
        }
        boolean runsOn =
                isDigit(text, at) || VULGAR.indexOf(next) >= 0 || (",./' ".indexOf(next) >= 0 && isDigit(text, at + 1));
        if (runsOn) {
            throw malformed();
        }
    }

    private NotUnderstood malformed() {
        int to = at;
        while (to < text.length() && (isDigit(text, to) || ",./' ".indexOf(text.charAt(to)) >= 0)) {
            to++;
        }
        String number = text.substring(start, to).strip();
        return NotUnderstood.because(
                "\"" + Phrase.shorten(number) + "\" is not a number; write for instance 1.5, 1,5, 1500, 3/4 or 1 1/2");
    }
}
