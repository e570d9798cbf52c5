package org.stillroom.core.quantity;

import org.stillroom.core.quantity.TypedNumber.Scale;

/** Reads how much of a substance a liquid holds: by mass, in degrees Brix, or per litre. */
final class ShareWords {
    private static final String EXAMPLE = "66 %, 24 °Bx or 180 g/L";
    private static final String PER_LITRE = "180 g/L or 18 g/100 ml";

    private ShareWords() {}

    static Share share(Phrase phrase) throws NotUnderstood {
        TypedNumber number = phrase.number(EXAMPLE);
        if (phrase.isAtEnd()) {
            throw NotUnderstood.asking(
                    "the content has no unit; which is meant?", phrase.text() + " %", phrase.text() + " g/L");
        }
        String words = phrase.peek();
        if (isBrix(words)) {
            return fraction(number);
        }
        return switch (PercentWords.of(words)) {
            case UNSAID, BY_MASS -> fraction(number);
            case MASS_PER_VOLUME -> perVolume(number);
            case BY_VOLUME ->
                throw NotUnderstood.because("the content is wanted by mass or per litre, not by volume; write for "
                        + "instance " + EXAMPLE);
            case UNKNOWN -> quotient(number, phrase);
        };
    }

    static Brix brix(Phrase phrase) throws NotUnderstood {
        TypedNumber number = phrase.number("66 °Bx");
        String words = phrase.rest();
        if (!(words.isEmpty() || isBrix(words) || PercentWords.of(words) == PercentWords.BY_MASS)) {
            throw NotUnderstood.because(Spelling.quoted(words) + " is not degrees Brix; write for instance 66 °Bx");
        }
        return NotUnderstood.possible(() -> new Brix(number.value()));
    }

    /** Reads a wanted content per volume, in g/L. */
    static double target(Phrase phrase) throws NotUnderstood {
        TypedNumber number = phrase.number(PER_LITRE);
        if (phrase.isAtEnd()) {
            throw NotUnderstood.asking(
                    "the content has no unit; is it per litre?", phrase.text() + " g/L", phrase.text() + " g/100 ml");
        }
        String words = phrase.peek();
        return switch (PercentWords.of(words)) {
            case UNSAID -> throw percentUnclear(number, words);
            case MASS_PER_VOLUME -> perVolume(number).gramsPerLitre();
            case BY_MASS, BY_VOLUME -> throw notPerLitre(words);
            case UNKNOWN -> perLitre(number, phrase, words);
        };
    }

    private static double perLitre(TypedNumber number, Phrase phrase, String words) throws NotUnderstood {
        if (isBrix(words)) {
            throw notPerLitre(words);
        }
        Quotient quotient = Quotient.after(number, phrase, PER_LITRE);
        quotient.refuseUnlessPerVolume(PER_LITRE);
        return concentration(quotient).gramsPerLitre();
    }

    private static NotUnderstood percentUnclear(TypedNumber number, String words) {
        String perLitre = QuantityWords.plain(number.in(Scale.tenTo(1))) + " g/L";
        return NotUnderstood.asking(
                Spelling.quoted(words)
                        + " may be by mass or per volume; the target is set per litre of finished liquid, is "
                        + perLitre + " meant?",
                perLitre);
    }

    private static NotUnderstood notPerLitre(String words) {
        return NotUnderstood.because(Spelling.quoted(words)
                + " is not per litre; the target is set per litre of finished liquid, write for instance " + PER_LITRE);
    }

    private static boolean isBrix(String words) {
        String key = Units.key(words).replace("°", "");
        return key.equals("bx") || key.equals("brix") || key.equals("degreesbrix") || key.equals("degbrix");
    }

    private static MassFraction fraction(TypedNumber percent) throws NotUnderstood {
        double fraction = percent.in(Scale.tenTo(-2));
        if (fraction > 1) {
            throw NotUnderstood.because(
                    "a content by mass lies from 0 to 100 %, not " + QuantityWords.plain(percent.value()) + " %");
        }
        return new MassFraction(fraction);
    }

    /** A percentage of mass per volume is grams per 100 mL. */
    private static MassConcentration perVolume(TypedNumber percent) throws NotUnderstood {
        return NotUnderstood.possible(() -> new MassConcentration(percent.in(Scale.tenTo(1))));
    }

    private static Share quotient(TypedNumber number, Phrase phrase) throws NotUnderstood {
        Quotient quotient = Quotient.after(number, phrase, EXAMPLE);
        if (quotient.isOf(Unit.Kind.MASS, Unit.Kind.MASS)) {
            return NotUnderstood.possible(() -> new MassFraction(quotient.value()));
        }
        quotient.refuseUnlessPerVolume(EXAMPLE);
        return concentration(quotient);
    }

    private static MassConcentration concentration(Quotient quotient) throws NotUnderstood {
        if (quotient.unit().kind() != Unit.Kind.MASS) {
            throw NotUnderstood.because("this is " + quotient.unit().kind().label()
                    + " per volume; a mass per volume is wanted, such as " + PER_LITRE);
        }
        return NotUnderstood.possible(() -> new MassConcentration(quotient.perThousand()));
    }
}
