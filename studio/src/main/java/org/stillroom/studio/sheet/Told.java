package org.stillroom.studio.sheet;

import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Volume;

/** Figures as a sheet tells them: number and unit never torn apart at the end of a line. */
final class Told {
    private static final char NO_BREAK_SPACE = '\u00a0';

    private Told() {}

    static String kept(String figure) {
        return figure.replace(' ', NO_BREAK_SPACE);
    }

    /** Returns an amount to take, which may break between its parts and nowhere else. */
    static String amount(String words) {
        return kept(words)
                .replace("," + NO_BREAK_SPACE, ", ")
                .replace(NO_BREAK_SPACE + "+" + NO_BREAK_SPACE, " + ")
                .replace(NO_BREAK_SPACE + "(", " (");
    }

    static String figure(double value, int places, String unit) {
        return kept(QuantityWords.fixed(value, places) + " " + unit);
    }

    static String grams(double grams) {
        return kept(QuantityWords.metric(new Mass(grams)));
    }

    static String millilitres(double millilitres) {
        return kept(QuantityWords.metric(new Volume(millilitres)));
    }

    /** Returns a wanted value without its unit: one number, or "27 to 29". */
    static String wanted(Span span) {
        String low = QuantityWords.plain(round(span.low()));
        return span.isExact() ? low : kept(low + " to " + QuantityWords.plain(round(span.high())));
    }

    /** Takes off what binary fractions add behind the third place. */
    private static double round(double value) {
        return Math.rint(value * 1000) / 1000;
    }

    static String sentence(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
