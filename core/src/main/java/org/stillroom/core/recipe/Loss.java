package org.stillroom.core.recipe;

import org.stillroom.core.quantity.Amount;

/** What a stage loses before its result is used. */
public sealed interface Loss {
    /** A part of the liquid, 0 to 1: filter, transfer. */
    record Part(double fraction) implements Loss {
        public Part {
            if (!(fraction >= 0 && fraction < 1)) {
                throw new IllegalArgumentException("a loss lies from 0 to below 100 %, not " + 100 * fraction);
            }
        }
    }

    /** A fixed amount of the liquid. */
    record Fixed(Amount amount) implements Loss {}

    /** Liquid that the spent plant holds back, mL per gram of plant put in. */
    record HeldByMarc(double millilitresPerGram) implements Loss {
        public HeldByMarc {
            if (!(millilitresPerGram >= 0 && millilitresPerGram <= 20)) {
                throw new IllegalArgumentException(
                        "what the marc holds lies from 0 to 20 mL/g, not " + millilitresPerGram);
            }
        }
    }
}
