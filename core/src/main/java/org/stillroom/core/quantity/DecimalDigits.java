package org.stillroom.core.quantity;

/**
 * The decimal digits of a double, zero or more, as its shortest text has them: {@code digits · 10^exponent}.
 *
 * <p>Rounding works on these digits, so that 0.145 to two places is 0.15 as a person expects, although the double lies
 * a hair below.
 */
record DecimalDigits(String digits, int exponent) {

    static DecimalDigits of(double value) {
        String text = Double.toString(value);
        int mark = text.indexOf('E');
        String mantissa = mark < 0 ? text : text.substring(0, mark);
        int power = mark < 0 ? 0 : Integer.parseInt(text.substring(mark + 1));
        int point = mantissa.indexOf('.');
        TypedNumber number = TypedNumber.decimal(mantissa.substring(0, point), mantissa.substring(point + 1));
        return new DecimalDigits(number.digits(), number.isZero() ? 0 : number.exponent() + power);
    }

    /** Returns all digits, without an exponent. */
    String plain() {
        return placed(digits, exponent);
    }

    /** Returns the number rounded half up to just this many places. */
    String rounded(int places) {
        int drop = -places - exponent;
        if (drop <= 0) {
            return placed(digits + "0".repeat(-drop), -places);
        }
        if (drop > digits.length()) {
            return placed("0", -places);
        }
        String kept = digits.substring(0, digits.length() - drop);
        boolean up = digits.charAt(digits.length() - drop) >= '5';
        return placed(up ? plusOne(kept) : kept, -places);
    }

    private static String plusOne(String digits) {
        char[] all = ("0" + digits).toCharArray();
        int at = all.length - 1;
        while (all[at] == '9') {
            all[at--] = '0';
        }
        all[at]++;
        return String.valueOf(all);
    }

    private static String placed(String digits, int exponent) {
        if (exponent >= 0) {
            return trimmed(digits + "0".repeat(exponent));
        }
        String padded = "0".repeat(Math.max(0, 1 - exponent - digits.length())) + digits;
        int point = padded.length() + exponent;
        return trimmed(padded.substring(0, point)) + "." + padded.substring(point);
    }

    private static String trimmed(String whole) {
        int first = 0;
        while (first < whole.length() - 1 && whole.charAt(first) == '0') {
            first++;
        }
        return whole.isEmpty() ? "0" : whole.substring(first);
    }
}
