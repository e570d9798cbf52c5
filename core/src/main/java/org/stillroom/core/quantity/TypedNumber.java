package org.stillroom.core.quantity;

/**
 * A number as it was typed, kept in decimal until its unit is known and rounded once: 948.05 g/L comes out as the double
 * nearest 948.05, 0.1 mL per 100 mL as 1 mL/L, and two imperial fluid ounces as 56.826125 mL.
 *
 * @param digits decimal digits of the numerator, without leading or trailing zeros ("0" for nothing)
 * @param exponent power of ten by which {@code digits} is multiplied
 * @param denominator 1 for a decimal number, else that of the fraction
 */
record TypedNumber(String digits, int exponent, long denominator) {
    static final TypedNumber ONE = new TypedNumber("1", 0, 1);

    /** Returns the decimal number that these digits, before and after the point, stand for. */
    static TypedNumber decimal(String whole, String part) {
        String all = whole + part;
        int first = 0;
        while (first < all.length() && all.charAt(first) == '0') {
            first++;
        }
        int last = all.length();
        while (last > first && all.charAt(last - 1) == '0') {
            last--;
        }
        if (first == last) {
            return new TypedNumber("0", 0, 1);
        }
        return new TypedNumber(all.substring(first, last), all.length() - last - part.length(), 1);
    }

    /** Returns a whole number and a fraction, such as 1 1/2. */
    static TypedNumber mixed(long whole, Fraction fraction) {
        String numerator = Long.toString(whole * fraction.denominator() + fraction.numerator());
        TypedNumber above = decimal(numerator, "");
        return new TypedNumber(above.digits, above.exponent, fraction.denominator());
    }

    /** A fraction as typed; both numbers below a billion, so that a long holds the numerator of a mixed number. */
    record Fraction(long numerator, long denominator) {}

    /** How many base units a unit holds, in decimal: {@code factor · 10^power}. */
    record Scale(int power, long factor) {
        static final Scale UNIT = new Scale(0, 1);

        static Scale tenTo(int power) {
            return new Scale(power, 1);
        }

        /** Returns the decimal number that a constant was written as. */
        static Scale of(double constant) {
            DecimalDigits written = DecimalDigits.of(constant);
            return new Scale(written.exponent(), Long.parseLong(written.digits()));
        }

        Scale times(Scale other) {
            return new Scale(power + other.power, factor * other.factor);
        }
    }

    double value() {
        return in(Scale.UNIT);
    }

    /** Returns the number of base units in this many of the given unit. */
    double in(Scale unit) {
        return product(digits, unit.factor, exponent + unit.power) / denominator;
    }

    /** Returns this many of one unit per so many of another, in base units per base unit. */
    double per(TypedNumber other, Scale above, Scale below) {
        int power = exponent + above.power - other.exponent - below.power;
        double numerator = product(digits, above.factor, power) * other.denominator;
        return numerator / (product(other.digits, below.factor, 0) * denominator);
    }

    /** Multiplies in whole numbers where a long can hold the product, so that only reading it as a double rounds. */
    private static double product(String digits, long factor, int power) {
        boolean fits = digits.length() + Long.toString(factor).length() <= 18;
        return fits
                ? Double.parseDouble(Long.parseLong(digits) * factor + "E" + power)
                : Double.parseDouble(digits + "E" + power) * factor;
    }

    boolean isZero() {
        return digits.equals("0");
    }

    boolean isWhole() {
        return denominator == 1 && exponent >= 0;
    }
}
