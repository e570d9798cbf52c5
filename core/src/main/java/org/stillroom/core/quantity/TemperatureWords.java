package org.stillroom.core.quantity;

import org.stillroom.core.quantity.TypedNumber.Scale;

/** Reads temperatures, the one quantity that may be below zero. */
final class TemperatureWords {
    private static final String EXAMPLE = "20 °C or 68 °F";

    private TemperatureWords() {}

    static Temperature temperature(Phrase phrase) throws NotUnderstood {
        boolean minus = phrase.accept("-");
        boolean plus = !minus && phrase.accept("+");
        TypedNumber number = phrase.number(EXAMPLE);
        String sign = minus ? "-" : plus ? "+" : "";
        String scale = phrase.rest();
        double size = number.value();
        double value = minus ? 0.0 - size : size;
        return switch (key(scale)) {
            case "c", "celsius", "centigrade" -> NotUnderstood.possible(() -> new Temperature(value));
            case "f", "fahrenheit" -> NotUnderstood.possible(() -> Temperature.fahrenheit(value));
            case "k", "kelvin" -> kelvin(minus, number);
            case "" -> throw scaleUnclear(sign, phrase.text(), scale);
            default ->
                throw NotUnderstood.because(
                        Spelling.quoted(scale) + " is not a temperature scale; write for instance " + EXAMPLE);
        };
    }

    private static String key(String scale) {
        String key = Units.key(scale).replace("°", "");
        for (String word : new String[] {"degrees", "degree", "degs", "deg"}) {
            if (key.startsWith(word)) {
                return key.substring(word.length());
            }
        }
        return key;
    }

    private static NotUnderstood scaleUnclear(String sign, String text, String scale) {
        String number = text.substring(0, text.length() - scale.length()).strip();
        String bare = sign.equals("-") ? "−" + number.substring(1).strip() : number;
        return NotUnderstood.asking("the temperature has no scale; which is meant?", bare + " °C", bare + " °F");
    }

    /** Counts in units of 1e-9 K where the number has no more places, so that 293.15 K is 20 °C and not nearly so. */
    private static Temperature kelvin(boolean minus, TypedNumber number) throws NotUnderstood {
        double nano = number.in(Scale.tenTo(9));
        double celsius = nano < 1e15 && nano == Math.rint(nano) ? (nano - 273.15e9) / 1e9 : number.value() - 273.15;
        if (minus) {
            throw NotUnderstood.because("kelvin start at 0 K; write for instance 293.15 K or " + EXAMPLE);
        }
        return NotUnderstood.possible(() -> new Temperature(celsius));
    }
}
