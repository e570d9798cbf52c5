package org.stillroom.core.quantity;

/** Reads amounts: a mass, a volume, drops, a dose per litre, bottles. */
final class AmountWords {
    private static final String DOSE = "24 drops/L or 0.4 g/L";
    private static final String COUNTED = "20 x 0.6 g";
    private static final String BOTTLES = "3 x 350 ml";

    private AmountWords() {}

    static Mass mass(Phrase phrase) throws NotUnderstood {
        TypedNumber number = phrase.number(Unit.Kind.MASS.example());
        Unit unit = phrase.unit(Unit.Kind.MASS);
        phrase.end(Unit.Kind.MASS.example());
        return NotUnderstood.possible(() -> new Mass(number.in(unit.scale())));
    }

    static Volume volume(Phrase phrase) throws NotUnderstood {
        TypedNumber number = phrase.number(Unit.Kind.VOLUME.example());
        Unit unit = phrase.unit(Unit.Kind.VOLUME);
        phrase.end(Unit.Kind.VOLUME.example());
        return NotUnderstood.possible(() -> new Volume(number.in(unit.scale())));
    }

    static Amount amount(Phrase phrase) throws NotUnderstood {
        String example = "300 g, 330 ml or 15 drops";
        TypedNumber number = phrase.number(example);
        if (phrase.accept("x") || phrase.accept("×") || phrase.accept("*")) {
            return times(number, phrase);
        }
        if (phrase.isAtEnd()) {
            throw NotUnderstood.asking(
                    "the unit is missing; which is meant?", phrase.text() + " g", phrase.text() + " ml");
        }
        Unit unit = phrase.unit(example);
        phrase.end(example);
        return NotUnderstood.possible(() -> unit.amount(number.in(unit.scale())));
    }

    /** Reads what one of several weighs or holds: "20 x 0.6 g". */
    private static Amount times(TypedNumber count, Phrase phrase) throws NotUnderstood {
        TypedNumber each = phrase.number(COUNTED);
        Unit unit = phrase.unit(COUNTED);
        phrase.end(COUNTED);
        return NotUnderstood.possible(() -> unit.amount(count.value() * each.in(unit.scale())));
    }

    static Dose dose(Phrase phrase) throws NotUnderstood {
        Quotient quotient = Quotient.after(phrase.number(DOSE), phrase, DOSE);
        quotient.refuseUnlessPerVolume(DOSE);
        return NotUnderstood.possible(() -> new Dose(quotient.unit().amount(quotient.perThousand())));
    }

    static Bottles bottles(Phrase phrase) throws NotUnderstood {
        TypedNumber count = phrase.number(BOTTLES);
        boolean named = phrase.accept("bottles") || phrase.accept("bottle");
        boolean times = phrase.accept("x") || phrase.accept("×") || phrase.accept("*");
        boolean of = phrase.accept("of");
        if (!(named || times || of)) {
            throw NotUnderstood.because(
                    "the number of bottles and their size are wanted; write for instance " + BOTTLES);
        }
        if (!count.isWhole() || count.value() > Integer.MAX_VALUE) {
            throw NotUnderstood.because(
                    QuantityWords.plain(count.value()) + " is no number of bottles; write for instance " + BOTTLES);
        }
        Volume each = volume(phrase);
        return NotUnderstood.possible(() -> new Bottles((int) count.value(), each));
    }
}
