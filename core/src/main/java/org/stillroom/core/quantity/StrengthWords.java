package org.stillroom.core.quantity;

/** Reads how strong a liquid is. */
final class StrengthWords {
    private static final String EXAMPLE = "28 % vol, 33.3 % mass or 56 proof";

    private StrengthWords() {}

    static Strength strength(Phrase phrase) throws NotUnderstood {
        TypedNumber number = phrase.number(EXAMPLE);
        if (phrase.isAtEnd()) {
            throw NotUnderstood.asking(
                    "the strength has no unit; which is meant?",
                    phrase.text() + " % vol",
                    phrase.text() + " % mass",
                    phrase.text() + " proof");
        }
        String words = phrase.wordsBeforeAt();
        if (isProof(words)) {
            refuseBasis(phrase, "US proof is always at 60 °F");
            return NotUnderstood.possible(() -> new Proof(number.value()));
        }
        return switch (PercentWords.of(words)) {
            case UNSAID, BY_VOLUME -> byVolume(number, phrase);
            case BY_MASS -> {
                refuseBasis(phrase, "a strength by mass does not depend on the temperature");
                yield NotUnderstood.possible(() -> new AlcoholByMass(number.value()));
            }
            case MASS_PER_VOLUME ->
                throw NotUnderstood.because(
                        "a strength in mass per volume is not read; write % vol or % mass, for instance " + EXAMPLE);
            case UNKNOWN -> throw unknown(words);
        };
    }

    /** Reads a wanted strength, which is by volume at 20 °C, in % vol. */
    static double target(Phrase phrase) throws NotUnderstood {
        // a figure on another basis would need the alcohol tables, which are a step further up
        Strength strength = strength(phrase);
        if (strength instanceof AlcoholByVolume byVolume && byVolume.basis() == VolumeBasis.AT_20C) {
            return byVolume.percent();
        }
        throw NotUnderstood.because("the wanted strength is by volume at 20 °C; write for instance 28 % vol");
    }

    private static AlcoholByVolume byVolume(TypedNumber number, Phrase phrase) throws NotUnderstood {
        VolumeBasis basis = phrase.acceptAt() ? basis(phrase) : VolumeBasis.AT_20C;
        return NotUnderstood.possible(() -> new AlcoholByVolume(number.value(), basis));
    }

    private static VolumeBasis basis(Phrase phrase) throws NotUnderstood {
        String words = phrase.rest();
        Temperature at = TemperatureWords.temperature(phrase.aside(words));
        for (VolumeBasis basis : VolumeBasis.values()) {
            if (basis.temperature().equals(at)) {
                return basis;
            }
        }
        throw NotUnderstood.because("strengths by volume are read at 20 °C, 15 °C or 60 °F, not at "
                + Spelling.quoted(words) + "; write for instance 40 % vol at 15 °C");
    }

    private static boolean isProof(String words) {
        String key = Units.key(words).replace("°", "");
        return key.equals("proof") || key.equals("usproof") || key.equals("proofus") || key.equals("proof(us)");
    }

    private static void refuseBasis(Phrase phrase, String reason) throws NotUnderstood {
        if (!phrase.isAtEnd()) {
            throw NotUnderstood.because(reason + "; leave " + Spelling.quoted(phrase.rest()) + " out");
        }
    }

    private static NotUnderstood unknown(String words) {
        String quoted = Spelling.quoted(words) + "";
        return Units.key(words).endsWith("proof")
                ? NotUnderstood.because(quoted + " is not read, only US proof is; write the strength in % vol")
                : NotUnderstood.because(quoted + " is not a unit of strength; write for instance " + EXAMPLE);
    }
}
