package org.stillroom.core.quantity;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Reads densities and specific gravities. */
final class DensityWords {
    private static final String EXAMPLE = "948.05 kg/m3, 1.0423 g/ml or SG 1.050";

    private DensityWords() {}

    static Density density(Phrase phrase) throws NotUnderstood {
        if (phrase.accept("SG") || phrase.accept("specific gravity")) {
            SpecificGravityBasis before = basis(phrase);
            TypedNumber number = phrase.number(EXAMPLE);
            SpecificGravityBasis basis = before != null ? before : basis(phrase);
            phrase.end(EXAMPLE);
            return fromSpecificGravity(number, basis, phrase);
        }
        TypedNumber number = phrase.number(EXAMPLE);
        if (phrase.isAtEnd()) {
            throw unitUnclear(number, phrase.text());
        }
        if (phrase.accept("SG") || phrase.accept("specific gravity")) {
            SpecificGravityBasis basis = basis(phrase);
            phrase.end(EXAMPLE);
            return fromSpecificGravity(number, basis, phrase);
        }
        return quotient(number, phrase);
    }

    private static Density quotient(TypedNumber number, Phrase phrase) throws NotUnderstood {
        Quotient quotient = Quotient.after(number, phrase, EXAMPLE);
        if (!quotient.isOf(Unit.Kind.MASS, Unit.Kind.VOLUME)) {
            throw NotUnderstood.because("a density is a mass per volume; write for instance " + EXAMPLE);
        }
        return NotUnderstood.possible(() -> new Density(quotient.perThousand()));
    }

    private static Density fromSpecificGravity(TypedNumber number, @Nullable SpecificGravityBasis said, Phrase phrase)
            throws NotUnderstood {
        SpecificGravityBasis basis = said != null ? said : SpecificGravityBasis.TWENTY_CELSIUS;
        phrase.assume("the specific gravity is taken as " + basis.label() + " in vacuum");
        double value = number.value();
        if (value > 30) {
            throw NotUnderstood.because("a specific gravity lies near 1, not " + QuantityWords.plain(value)
                    + "; write for instance SG 1.050");
        }
        return NotUnderstood.possible(() -> basis.density(value));
    }

    /** Takes the pair of temperatures, with its scale or without, or returns null where none is said. */
    private static @Nullable SpecificGravityBasis basis(Phrase phrase) throws NotUnderstood {
        for (SpecificGravityBasis basis : SpecificGravityBasis.values()) {
            if (phrase.accept(basis.label()) || phrase.accept(basis.label().replace(" ", ""))) {
                return basis;
            }
            if (phrase.accept(
                    basis.pair() + basis.label().substring(basis.label().length() - 1))) {
                return basis;
            }
        }
        for (SpecificGravityBasis basis : SpecificGravityBasis.values()) {
            if (phrase.accept(basis.pair())) {
                return basis;
            }
        }
        if (phrase.peek().toLowerCase(Locale.ROOT).matches("[0-9]+/[0-9]+.*")) {
            throw NotUnderstood.because("specific gravities are read as 20/20 °C or 60/60 °F, not "
                    + Phrase.shorten(phrase.peek()) + "; write the density in kg/m3 instead");
        }
        return null;
    }

    private static NotUnderstood unitUnclear(TypedNumber number, String text) {
        return number.value() < 30
                ? NotUnderstood.asking(
                        "the density has no unit; which is meant?",
                        text + " g/ml",
                        "SG " + text + " 20/20",
                        "SG " + text + " 60/60")
                : NotUnderstood.asking("the density has no unit; is kg/m3 meant?", text + " kg/m3");
    }
}
