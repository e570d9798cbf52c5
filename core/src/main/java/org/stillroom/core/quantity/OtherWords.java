package org.stillroom.core.quantity;

import org.stillroom.core.quantity.TypedNumber.Scale;

/** Reads waits, percentages and ratios. */
final class OtherWords {
    private static final String WAIT = "14 days, 2 weeks or 36 h";
    private static final String PERCENT = "0.3 %";
    private static final String RATIO = "1:5";
    private static final String NUMBER = "1.045";
    private static final String PH = "3.4";
    /** No drink and no fruit is more sour: lemon juice has about 2.2. From memory. */
    private static final double LEAST_PH = 1.5;
    /** No drink is more alkaline: hard mineral water has about 8. From memory. */
    private static final double MOST_PH = 9.0;

    private OtherWords() {}

    static Wait wait(Phrase phrase) throws NotUnderstood {
        TypedNumber number = phrase.number(WAIT);
        String words = phrase.rest();
        return switch (Units.key(words)) {
            case "minute", "minutes", "min", "mins", "minuten" -> days(number, 24 * 60, 1);
            case "hour", "hours", "h", "hr", "hrs", "stunde", "stunden", "std" -> days(number, 24, 1);
            case "day", "days", "d", "tag", "tage", "tagen" -> days(number, 1, 1);
            case "week", "weeks", "wk", "wks", "w", "woche", "wochen" -> days(number, 1, 7);
            case "month", "months", "monat", "monate", "monaten" -> {
                phrase.assume("a month is taken as 30 days");
                yield days(number, 1, 30);
            }
            case "year", "years", "jahr", "jahre", "jahren" -> {
                phrase.assume("a year is taken as 365 days");
                yield days(number, 1, 365);
            }
            case "" -> throw NotUnderstood.because("the unit is missing; write for instance " + WAIT);
            default ->
                throw NotUnderstood.because(
                        Spelling.quoted(words) + " is not a length of time; write for instance " + WAIT);
        };
    }

    private static Wait days(TypedNumber number, int inDay, int days) throws NotUnderstood {
        return NotUnderstood.possible(() -> new Wait(number.in(new Scale(0, days)) / inDay));
    }

    static Double percent(Phrase phrase) throws NotUnderstood {
        if (!phrase.accept("±")) {
            phrase.accept("+/-");
        }
        TypedNumber number = phrase.number(PERCENT);
        String words = phrase.rest();
        PercentWords of = PercentWords.of(words);
        if (!words.isEmpty() && of != PercentWords.UNSAID && of != PercentWords.BY_VOLUME) {
            throw NotUnderstood.because(
                    Spelling.quoted(words) + " is not a plain percentage; write for instance " + PERCENT);
        }
        if (!(number.value() <= 100)) {
            throw NotUnderstood.because(
                    "a percentage lies from 0 to 100 %, not " + QuantityWords.plain(number.value()) + " %");
        }
        return number.value();
    }

    static Double number(Phrase phrase) throws NotUnderstood {
        TypedNumber number = phrase.number(NUMBER);
        phrase.end(NUMBER);
        return number.value();
    }

    static Double ph(Phrase phrase) throws NotUnderstood {
        if (!phrase.accept("pH")) {
            phrase.accept("ph");
        }
        TypedNumber number = phrase.number(PH);
        phrase.end(PH);
        if (!(number.value() >= LEAST_PH && number.value() <= MOST_PH)) {
            throw NotUnderstood.because("a drink has a pH from 1.5 to 9, not " + QuantityWords.plain(number.value()));
        }
        return number.value();
    }

    static Ratio ratio(Phrase phrase) throws NotUnderstood {
        TypedNumber left = phrase.number(RATIO);
        if (!phrase.accept(":")) {
            throw NotUnderstood.because(
                    Spelling.quoted(phrase.text()) + " is not a ratio; write for instance " + RATIO);
        }
        TypedNumber right = phrase.number(RATIO);
        phrase.end(RATIO);
        return NotUnderstood.possible(() -> new Ratio(left.value(), right.value()));
    }
}
