package org.stillroom.core.quantity;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads densities and specific gravities. */
final class DensityWords {
    private static final String EXAMPLE = "948.05 kg/m3, 1.0423 g/ml or SG 1.050";
    private static final Pattern SPECIFIC_GRAVITY = Pattern.compile("(?i)(^|[^a-z])(sg|specific gravity)($|[^a-z])");
    private static final Pattern PAIR = Pattern.compile("(^| )([0-9]+/[0-9]+)( ?°? ?[CcFf])?( |$)");

    /** Above this a bare number can only be kg/m³, below it only a multiple of water's density. */
    private static final double HEAVIEST_GRAVITY = 30;

    private DensityWords() {}

    static Density density(Phrase phrase) throws NotUnderstood {
        Matcher gravity = SPECIFIC_GRAVITY.matcher(phrase.text());
        if (gravity.find()) {
            String before = phrase.text().substring(0, gravity.start(2));
            String after = phrase.text().substring(gravity.end(2));
            return specificGravity(phrase.aside(before.isEmpty() ? after.strip() : (before + after).strip()));
        }
        TypedNumber number = phrase.number(EXAMPLE);
        if (phrase.isAtEnd()) {
            throw unitUnclear(number, phrase.text());
        }
        Quotient quotient = Quotient.after(number, phrase, EXAMPLE);
        if (!quotient.isOf(Unit.Kind.MASS, Unit.Kind.VOLUME)) {
            throw NotUnderstood.because("a density is a mass per volume; write for instance " + EXAMPLE);
        }
        return NotUnderstood.possible(() -> new Density(quotient.perThousand()));
    }

    /** Reads a number with its pair of temperatures before or after it, or without. */
    private static Density specificGravity(Phrase phrase) throws NotUnderstood {
        SpecificGravityBasis basis = SpecificGravityBasis.TWENTY_CELSIUS;
        String number = phrase.text();
        Matcher pair = PAIR.matcher(number);
        if (pair.find()) {
            basis = basis(pair);
            number = (number.substring(0, pair.start()) + " " + number.substring(pair.end())).strip();
        }
        phrase.assume("the specific gravity is taken as " + basis.label() + " in vacuum");
        return density(phrase.aside(number), basis);
    }

    private static SpecificGravityBasis basis(Matcher pair) throws NotUnderstood {
        String scale = pair.group(3) == null ? "" : pair.group(3).toUpperCase(Locale.ROOT);
        for (SpecificGravityBasis basis : SpecificGravityBasis.values()) {
            boolean sameScale = scale.isEmpty() || basis.label().endsWith(scale.substring(scale.length() - 1));
            if (basis.pair().equals(pair.group(2)) && sameScale) {
                return basis;
            }
        }
        throw NotUnderstood.because("specific gravities are read as 20/20 °C or 60/60 °F, not "
                + Spelling.quoted(pair.group().strip()) + "; write the density in kg/m3 instead");
    }

    private static Density density(Phrase phrase, SpecificGravityBasis basis) throws NotUnderstood {
        double gravity = phrase.number("SG 1.050").value();
        phrase.end("SG 1.050");
        if (gravity > HEAVIEST_GRAVITY) {
            throw NotUnderstood.because("a specific gravity is a number near 1, not " + QuantityWords.plain(gravity)
                    + "; write for instance SG 1.050");
        }
        return NotUnderstood.possible(() -> basis.density(gravity));
    }

    private static NotUnderstood unitUnclear(TypedNumber number, String text) {
        return number.value() < HEAVIEST_GRAVITY
                ? NotUnderstood.asking(
                        "the density has no unit; which is meant?",
                        text + " g/ml",
                        "SG " + text + " 20/20",
                        "SG " + text + " 60/60")
                : NotUnderstood.asking("the density has no unit; is kg/m3 meant?", text + " kg/m3");
    }
}
