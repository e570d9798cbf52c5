package org.stillroom.core.quantity;

/** Writes quantities for people: decimal point, U+2212 for minus, no grouping, nothing that depends on a locale. */
public final class QuantityWords {
    /** Beyond this many places a double has none to show at the sizes met here. */
    private static final int MOST_PLACES = 12;

    /** A tenth that came of arithmetic is a tenth, in powers of ten. */
    private static final double A_HAIR = 1e-9;

    private static final double MILLILITRES_PER_CUP = 8 * Volume.MILLILITRES_PER_US_OUNCE;
    private static final double MILLILITRES_PER_TABLESPOON = Volume.MILLILITRES_PER_US_OUNCE / 2;
    private static final double MILLILITRES_PER_TEASPOON = Volume.MILLILITRES_PER_US_OUNCE / 6;
    private static final int OUNCES_IN_POUND = 16;

    private QuantityWords() {}

    /** Returns the number with just this many places, rounded half up on its shortest decimal form. */
    public static String fixed(double value, int places) {
        if (!(places >= 0 && places <= MOST_PLACES)) {
            throw new IllegalArgumentException("places lie from 0 to " + MOST_PLACES + ", not " + places);
        }
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return String.valueOf(value);
        }
        String digits = DecimalDigits.of(Math.abs(value)).rounded(places);
        boolean minus = value < 0 && digits.chars().anyMatch(c -> c >= '1' && c <= '9');
        return minus ? "−" + digits : digits;
    }

    /** Returns the number, zero or more, in about three figures. */
    public static String figures(double value) {
        return value == 0.0 ? "0" : fixed(value, places(value));
    }

    /** Returns the places in which a number above zero has about three figures, 0 to 6. */
    public static int places(double value) {
        return (int) Math.max(0, Math.min(6, 2 - Math.floor(Math.log10(value) + A_HAIR)));
    }

    /** Returns the number with as many places as it needs, never an exponent. */
    public static String plain(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return String.valueOf(value);
        }
        String digits = DecimalDigits.of(Math.abs(value)).plain();
        return value < 0 ? "−" + digits : digits;
    }

    /** Returns an amount in g, mL or drops, in kg or L from ten thousand on. */
    public static String metric(Amount amount) {
        if (amount instanceof Mass mass) {
            return metric(mass.grams(), " g", " kg");
        }
        if (amount instanceof Volume volume) {
            return metric(volume.millilitres(), " mL", " L");
        }
        return drops((Drops) amount);
    }

    /**
     * Returns an amount in United States measures: fluid ounces with the kitchen measure that is nearest, pounds and
     * ounces by weight, or drops.
     */
    public static String us(Amount amount) {
        if (amount instanceof Mass mass) {
            return poundsAndOunces(mass.grams() / Mass.GRAMS_PER_OUNCE);
        }
        if (amount instanceof Volume volume) {
            double millilitres = volume.millilitres();
            String ounces = finely(millilitres / Volume.MILLILITRES_PER_US_OUNCE) + " fl oz";
            String kitchen = kitchenMeasure(millilitres);
            return kitchen.isEmpty() ? ounces : ounces + " (" + kitchen + ")";
        }
        return drops((Drops) amount);
    }

    private static String metric(double value, String unit, String thousandUnits) {
        return value < 9_999.95 ? amount(value) + unit : fixed(value / 1000, 3) + thousandUnits;
    }

    /** Small amounts get more places: a tenth of a gram says little about half a gram. */
    private static String amount(double value) {
        return fixed(value, value == 0 || value >= 9.995 ? 1 : value >= 0.9995 ? 2 : 3);
    }

    private static String finely(double ounces) {
        return fixed(ounces, ounces == 0 || ounces >= 0.9995 ? 2 : 3);
    }

    private static String drops(Drops drops) {
        String count = plain(Math.rint(drops.count() * 10) / 10);
        return count + (count.equals("1") ? " drop" : " drops");
    }

    private static String poundsAndOunces(double ounces) {
        if (ounces < OUNCES_IN_POUND - 0.005) {
            return finely(ounces) + " oz wt";
        }
        double hundredths = Math.rint(ounces * 100);
        double pounds = Math.floor(hundredths / (100 * OUNCES_IN_POUND));
        return fixed(pounds, 0) + " lb " + fixed((hundredths - pounds * 100 * OUNCES_IN_POUND) / 100, 2) + " oz wt";
    }

    /** Returns cups, tablespoons or teaspoons in the fractions that kitchens have, or nothing below 1/8 teaspoon. */
    private static String kitchenMeasure(double millilitres) {
        if (millilitres >= 0.97 * MILLILITRES_PER_CUP / 4) {
            return nearest(millilitres, MILLILITRES_PER_CUP, " cup", 4, 3);
        }
        if (millilitres >= 0.97 * MILLILITRES_PER_TABLESPOON) {
            return nearest(millilitres, MILLILITRES_PER_TABLESPOON, " tbsp", 2);
        }
        if (millilitres >= 0.97 * MILLILITRES_PER_TEASPOON / 8) {
            return nearest(millilitres, MILLILITRES_PER_TEASPOON, " tsp", 8);
        }
        return "";
    }

    private static String nearest(double millilitres, double unit, String name, int... parts) {
        double value = millilitres / unit;
        int best = parts[0];
        for (int part : parts) {
            if (distance(value, part) < distance(value, best) - 1e-9) {
                best = part;
            }
        }
        long count = Math.round(value * best);
        String about = distance(value, best) > 0.005 * value ? "about " : "";
        boolean several = count > best && name.equals(" cup");
        return about + mixed(count, best) + name + (several ? "s" : "");
    }

    private static double distance(double value, int parts) {
        return Math.abs(Math.rint(value * parts) / parts - value);
    }

    private static String mixed(long count, int parts) {
        long whole = count / parts;
        long above = count % parts;
        long below = parts;
        while (above > 0 && above % 2 == 0 && below % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        String fraction = above == 0 ? "" : above + "/" + below;
        String gap = whole > 0 && above > 0 ? " " : "";
        return (whole > 0 || above == 0 ? Long.toString(whole) : "") + gap + fraction;
    }
}
