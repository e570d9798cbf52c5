package org.stillroom.core.quantity;

/** Reads wanted values, one ("28 %") or from low to high ("27..29 %", "27 % – 29 %", "27 to 29 %"). */
final class SpanWords {
    /** Reads one value of a span in the unit that the span is kept in. */
    interface Value {
        double read(Phrase phrase) throws NotUnderstood;
    }

    private static final String[] SEPARATORS = {"..", "–", "—", " to ", "-"};

    private SpanWords() {}

    static Span span(Phrase phrase, Value value) throws NotUnderstood {
        String text = phrase.text();
        for (String separator : SEPARATORS) {
            int at = text.indexOf(separator);
            if (at > 0) {
                String low = text.substring(0, at).strip();
                String high = text.substring(at + separator.length()).strip();
                return between(phrase, value, low, high);
            }
        }
        double only = value.read(phrase);
        return NotUnderstood.possible(() -> Span.exactly(only));
    }

    private static Span between(Phrase phrase, Value value, String low, String high) throws NotUnderstood {
        double to = end(phrase, value, high, low + "..", "");
        double from = end(phrase, value, low + unitOf(phrase, low, high), "", ".." + high);
        if (from > to) {
            throw NotUnderstood.because("a range runs from low to high; write " + Spelling.quoted(high) + " first");
        }
        return NotUnderstood.possible(() -> new Span(from, to));
    }

    /** Reads one end; where that asks something, the choices are written with the other end. */
    private static double end(Phrase phrase, Value value, String text, String before, String after)
            throws NotUnderstood {
        try {
            return value.read(phrase.aside(text));
        } catch (NotUnderstood one) {
            throw one.within(before, after);
        }
    }

    /** Returns the unit of the high end where the low end is a bare number, else nothing. */
    private static String unitOf(Phrase phrase, String low, String high) throws NotUnderstood {
        Phrase first = phrase.aside(low);
        first.number("27..29 %");
        if (!first.isAtEnd()) {
            return "";
        }
        Phrase second = phrase.aside(high);
        second.number("27..29 %");
        return " " + second.rest();
    }
}
