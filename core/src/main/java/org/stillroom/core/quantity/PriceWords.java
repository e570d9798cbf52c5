package org.stillroom.core.quantity;

import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads prices: money, and the amount that it buys. */
final class PriceWords {
    private static final String EXAMPLE = "22 EUR/L, or 18.50 EUR for a pack";
    private static final Map<String, String> SIGNS =
            Map.of("€", "EUR", "euro", "EUR", "euros", "EUR", "£", "GBP", "US$", "USD", "$", "$", "¥", "¥");

    private PriceWords() {}

    static Price price(Phrase phrase) throws NotUnderstood {
        String before = currency(phrase);
        TypedNumber number = phrase.numberBeforeSlash(EXAMPLE);
        String currency = before != null ? before : currency(phrase);
        if (currency == null) {
            throw noCurrency(phrase);
        }
        Amount per = per(phrase);
        return NotUnderstood.possible(() -> new Price(number.value(), currency, per));
    }

    private static NotUnderstood noCurrency(Phrase phrase) {
        String words = phrase.words();
        return words.isEmpty()
                ? NotUnderstood.because("the currency is missing; write for instance " + EXAMPLE)
                : NotUnderstood.because(Spelling.quoted(words) + " is not a currency; write for instance " + EXAMPLE);
    }

    /** Takes a sign or a three-letter code, or returns null where none comes next. */
    private static @Nullable String currency(Phrase phrase) {
        for (Map.Entry<String, String> sign : SIGNS.entrySet()) {
            if (phrase.accept(sign.getKey())) {
                return sign.getValue();
            }
        }
        String next = phrase.peek();
        String code = next.length() < 3 ? "" : next.substring(0, 3).toUpperCase(Locale.ROOT);
        return isCode(code) && phrase.accept(code) ? code : null;
    }

    private static boolean isCode(String code) {
        return Currency.getAvailableCurrencies().stream()
                .anyMatch(currency -> currency.getCurrencyCode().equals(code));
    }

    private static @Nullable Amount per(Phrase phrase) throws NotUnderstood {
        if (phrase.isAtEnd()) {
            return null;
        }
        if (phrase.accept("each") || phrase.accept("a pack") || phrase.accept("a bottle")) {
            phrase.end(EXAMPLE);
            return null;
        }
        if (!(phrase.acceptPer() || phrase.accept("for"))) {
            phrase.end(EXAMPLE);
        }
        if (phrase.accept("pack") || phrase.accept("bottle") || phrase.accept("a pack") || phrase.accept("a bottle")) {
            phrase.end(EXAMPLE);
            return null;
        }
        TypedNumber number = phrase.atNumber() ? phrase.number(EXAMPLE) : TypedNumber.ONE;
        if (number.isZero()) {
            throw NotUnderstood.because("a price is not for nothing; write for instance " + EXAMPLE);
        }
        Unit unit = phrase.unit(EXAMPLE);
        phrase.end(EXAMPLE);
        return NotUnderstood.possible(() -> unit.amount(number.in(unit.scale())));
    }
}
