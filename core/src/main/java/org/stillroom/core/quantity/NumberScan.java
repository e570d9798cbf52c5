package org.stillroom.core.quantity;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads one number at a place in a text: "1.5", "1,5", ".5", "1 500", "1'500", "1,500.5", "3/4", "1 1/2", "1½".
 *
 * <p>The point is the decimal sign of recipe files, so "1.500" is 1.5; a lone comma before three digits can be either
 * sign, which is left to {@link CommaQuestion}.
 */
final class NumberScan {
    /** More digits than any double has or any maker needs; what is longer is a slip of the hand. */
    private static final int MOST_DIGITS = 30;

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
        return at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    static int endOfDigits(String text, int from) {
        int at = from;
        while (isDigit(text, at)) {
            at++;
        }
        return at;
    }

    static boolean startsNumber(String text, int at) {
        if (at >= text.length()) {
            return false;
        }
        char c = text.charAt(at);
        boolean point = (c == '.' || c == ',') && isDigit(text, at + 1);
        return isDigit(text, at) || FractionScan.isVulgar(text, at) || point;
    }

    /** Returns the place after the number, or so far as it has been read. */
    int end() {
        return at;
    }

    /** Returns whether this is digits, one comma and three digits, where the comma may group or be the decimal sign. */
    boolean commaIsUnclear() {
        return signs.toString().equals(",") && groupsOfThree(2);
    }

    TypedNumber number() throws NotUnderstood {
        TypedNumber fraction = fraction();
        TypedNumber number = fraction != null ? fraction : decimal();
        refuseTail(true);
        return number;
    }

    /** Reads a number after which a slash is no line of a fraction: "12" of "$12/750 ml". */
    TypedNumber numberBeforeSlash() throws NotUnderstood {
        TypedNumber number = decimal();
        refuseTail(false);
        return number;
    }

    private void collect() {
        groups.add(digits());
        while (at < text.length() && ".,' ".indexOf(text.charAt(at)) >= 0 && isDigit(text, at + 1)) {
            if (text.charAt(at) == ' ' && !groupFollows()) {
                return;
            }
            signs.append(text.charAt(at));
            at++;
            groups.add(digits());
        }
    }

    /** A space groups only before just three digits that are no numerator. */
    private boolean groupFollows() {
        int end = endOfDigits(text, at + 1);
        boolean numerator = end < text.length() && text.charAt(end) == '/';
        return end == at + 4 && !numerator && groups.get(groups.size() - 1).length() <= 3;
    }

    private String digits() {
        int from = at;
        at = endOfDigits(text, at);
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
        if (String.join("", groups).length() > MOST_DIGITS) {
            throw NotUnderstood.because(
                    "a number of more than " + MOST_DIGITS + " digits is not read; write one of fewer");
        }
        int count = signs.length();
        if (count == 0) {
            return TypedNumber.decimal(groups.get(0), "");
        }
        char last = signs.charAt(count - 1);
        boolean point = (last == '.' || last == ',') && signs.indexOf(String.valueOf(last)) == count - 1;
        if (point && count == 1) {
            return TypedNumber.decimal(groups.get(0), groups.get(1));
        }
        int whole = point ? count : count + 1;
        if (!groupsOfThree(whole) || !oneSign(whole - 1)) {
            throw malformed();
        }
        return TypedNumber.decimal(String.join("", groups.subList(0, whole)), point ? groups.get(count) : "");
    }

    private boolean oneSign(int count) {
        return signs.chars().limit(count).allMatch(sign -> sign == signs.charAt(0));
    }

    private @Nullable TypedNumber fraction() throws NotUnderstood {
        if (signs.length() > 0) {
            return null;
        }
        FractionScan scan = new FractionScan(text, at);
        TypedNumber fraction = scan.after(groups.get(0));
        at = scan.end();
        return fraction;
    }

    private void refuseTail(boolean slash) throws NotUnderstood {
        if (at >= text.length()) {
            return;
        }
        char next = text.charAt(at);
        boolean signed = at + 1 < text.length() && "+-".indexOf(text.charAt(at + 1)) >= 0 && isDigit(text, at + 2);
        if ((next == 'e' || next == 'E') && (isDigit(text, at + 1) || signed)) {
            throw NotUnderstood.because("a number with an exponent is not read; write it out, 1500 in place of 1.5e3");
        }
        String signsBeforeDigits = slash ? "/' " : "' ";
        boolean runsOn = signsBeforeDigits.indexOf(next) >= 0 && isDigit(text, at + 1);
        if (next == '.' || next == ',' || runsOn || isDigit(text, at) || FractionScan.isVulgar(text, at)) {
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
                Spelling.quoted(number) + " is not a number; write for instance 1.5, 1,5, 1500, 3/4 or 1 1/2");
    }
}
