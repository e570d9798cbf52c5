package org.stillroom.core.quantity;

import org.jspecify.annotations.Nullable;

/** Reads the fraction that digits begin or are followed by: "3/4", " 1/2", "½". */
final class FractionScan {
    private static final int MOST_DIGITS = 9;
    private static final String SIGNS = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final String NUMERATORS = "112131234151357";
    private static final String DENOMINATORS = "233445555668888";

    private final String text;
    private int at;

    FractionScan(String text, int at) {
        this.text = text;
        this.at = at;
    }

    static boolean isVulgar(String text, int at) {
        return at < text.length() && SIGNS.indexOf(text.charAt(at)) >= 0;
    }

    int end() {
        return at;
    }

    /** Returns the number that these digits make with the fraction at this place, or null where there is none. */
    @Nullable
    TypedNumber after(String digits) throws NotUnderstood {
        int gap = at < text.length() && text.charAt(at) == ' ' ? at + 1 : at;
        if (isVulgar(text, gap)) {
            int sign = SIGNS.indexOf(text.charAt(gap));
            at = gap + 1;
            return TypedNumber.mixed(
                    number(digits),
                    new TypedNumber.Fraction(NUMERATORS.charAt(sign) - '0', DENOMINATORS.charAt(sign) - '0'));
        }
        if (slashAt(at)) {
            return TypedNumber.mixed(0, over(digits, at + 1));
        }
        int slash = NumberScan.endOfDigits(text, gap);
        return slash > gap && gap > at && slashAt(slash) ? mixed(digits, text.substring(gap, slash), slash) : null;
    }

    private TypedNumber mixed(String whole, String numerator, int slash) throws NotUnderstood {
        TypedNumber.Fraction fraction = over(numerator, slash + 1);
        if (fraction.numerator() >= fraction.denominator()) {
            throw NotUnderstood.because("after a whole number, " + numerator + "/" + fraction.denominator()
                    + " should be below 1; write for instance 1 1/2");
        }
        return TypedNumber.mixed(number(whole), fraction);
    }

    private boolean slashAt(int place) {
        return place < text.length() && text.charAt(place) == '/' && NumberScan.isDigit(text, place + 1);
    }

    private TypedNumber.Fraction over(String numerator, int from) throws NotUnderstood {
        at = NumberScan.endOfDigits(text, from);
        long denominator = number(text.substring(from, at));
        if (denominator == 0) {
            throw NotUnderstood.because("a fraction cannot have 0 below its line; write for instance 3/4");
        }
        return new TypedNumber.Fraction(number(numerator), denominator);
    }

    private static long number(String digits) throws NotUnderstood {
        if (digits.length() > MOST_DIGITS) {
            throw NotUnderstood.because("a fraction of such large numbers is not read; write it as a decimal number");
        }
        return digits.isEmpty() ? 0 : Long.parseLong(digits);
    }
}
