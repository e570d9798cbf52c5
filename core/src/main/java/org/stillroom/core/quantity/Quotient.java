package org.stillroom.core.quantity;

/** So much of one unit per so much of another, as typed: "0.1 ml per 100 ml", "5 ml per litre", "948.05kg/m3". */
record Quotient(TypedNumber above, Unit unit, TypedNumber below, Unit per) {

    /** Reads what follows a number: the unit, "/" or "per", a number if it is not one, and the unit of that. */
    static Quotient after(TypedNumber number, Phrase phrase, String example) throws NotUnderstood {
        Unit unit = phrase.unit(example);
        if (!phrase.acceptPer()) {
            throw NotUnderstood.because(
                    Spelling.quoted(phrase.text()) + " does not say per how much; write for instance " + example);
        }
        TypedNumber below = phrase.atNumber() ? phrase.number(example) : TypedNumber.ONE;
        if (below.isZero()) {
            throw NotUnderstood.because("nothing can be counted per 0; write for instance " + example);
        }
        Unit per = phrase.unit(example);
        phrase.end(example);
        return new Quotient(number, unit, below, per);
    }

    /** Returns the quotient in grams, millilitres or drops per gram or millilitre. */
    double value() {
        return above.per(below, unit.scale(), per.scale());
    }

    /** Returns the quotient per litre or per kilogram. */
    double perThousand() {
        return above.per(below, unit.scale().times(TypedNumber.Scale.tenTo(3)), per.scale());
    }

    boolean isOf(Unit.Kind wanted, Unit.Kind wantedPer) {
        return unit.kind() == wanted && per.kind() == wantedPer;
    }

    /** Refuses where the lower unit is no volume. */
    void refuseUnlessPerVolume(String example) throws NotUnderstood {
        if (per.kind() != Unit.Kind.VOLUME) {
            throw NotUnderstood.because("this is per " + per.kind().label().substring(2)
                    + "; it is wanted per volume of the liquid, such as " + example);
        }
    }
}
